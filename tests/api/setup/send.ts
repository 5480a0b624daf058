import { Agent, request } from "node:http";

export type Sent = {
  readonly method: string;
  readonly path: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body?: string;
};
export type Got = {
  readonly status: number;
  readonly type: string;
  readonly text: string;
  readonly bytes: Uint8Array;
};

const agent = new Agent({ keepAlive: true, maxSockets: 16 });

/** Sends the request just as it is: the address is not put right on the way, as browsers and their like would. */
export const send = (url: string, { method, path, headers, body }: Sent): Promise<Got> =>
  new Promise((resolve, reject) => {
    const length = body === undefined ? {} : { "content-length": String(Buffer.byteLength(body)) };
    const sending = request(url, { method, path, agent, headers: { ...headers, ...length } }, (response) => {
      const parts: Buffer[] = [];
      response.on("data", (part: Buffer) => parts.push(part));
      response.on("error", reject);
      response.on("end", () => {
        const bytes = Buffer.concat(parts);
        resolve({
          status: response.statusCode ?? 0,
          type: response.headers["content-type"] ?? "",
          text: bytes.toString("utf8"),
          bytes,
        });
      });
    });
    sending.on("error", reject);
    sending.end(body);
  });
