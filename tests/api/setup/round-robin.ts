import {
  createServer,
  request as ask,
  type IncomingMessage,
  type Server,
  type ServerResponse,
} from "node:http";

/** A proxy that gives each request to the next replica, and to the one after where that does not answer. */
export async function roundRobin(replicas: readonly string[]): Promise<{ server: Server; url: string }> {
  let turn = 0;
  const give = (asked: IncomingMessage, body: Buffer, reply: ServerResponse, tries: number): void => {
    const replica = replicas[turn++ % replicas.length] ?? "";
    const headers = { ...asked.headers, "x-forwarded-for": asked.socket.remoteAddress ?? "" };
    const passed = ask(new URL(asked.url ?? "/", replica), { method: asked.method, headers }, (answer) => {
      reply.writeHead(answer.statusCode ?? 502, { ...answer.headers, "x-replica": replica });
      answer.pipe(reply);
    });
    passed.on("error", () => {
      if (tries > 1) give(asked, body, reply, tries - 1);
      else reply.writeHead(502).end();
    });
    passed.end(body);
  };
  const server = createServer((asked, reply) => {
    const parts: Buffer[] = [];
    asked.on("data", (part: Buffer) => parts.push(part));
    asked.on("end", () => give(asked, Buffer.concat(parts), reply, replicas.length));
  });
  await new Promise<void>((resolve) => void server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The proxy listens at no port.");
  return { server, url: `http://127.0.0.1:${address.port}` };
}
