import assert from "node:assert/strict";
import { createHash } from "node:crypto";
import { request } from "node:http";
import type { Asked, Person } from "./person.ts";

export const hashOf = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

export type Announced = {
  readonly filename?: string;
  readonly sha256?: string;
  readonly item?: string;
  readonly position?: string;
  readonly caption?: string;
};

const tus = { "tus-resumable": "1.0.0" };

/** What tus's creation says of a file. */
export const announcement = (report: string, bytes: Uint8Array, more: Announced = {}): Asked => {
  const metadata = { filename: "photograph.jpg", sha256: hashOf(bytes), ...more };
  const header = Object.entries(metadata)
    .map(([key, value]) => `${key} ${Buffer.from(value).toString("base64")}`)
    .join(",");
  return {
    path: { id: report },
    headers: { ...tus, "upload-length": String(bytes.length), "upload-metadata": header },
  };
};

/** Announces a file and gives the upload's id. */
export async function announce(
  person: Person,
  report: string,
  bytes: Uint8Array,
  more: Announced = {},
): Promise<string> {
  const { status, text, headers } = await person.ask("uploads.create", announcement(report, bytes, more));
  assert.equal(status, 201, text);
  return String(headers["location"]).split("/").at(-1) ?? "";
}

/** Where the upload stands, as a program asks that goes on with it. */
export async function whereIs(person: Person, id: string): Promise<number> {
  const answer = await fetch(`${person.url}/api/v1/uploads/${id}`, {
    method: "HEAD",
    headers: { ...person.credentials, ...tus },
  });
  assert.equal(answer.status, 200);
  return Number(answer.headers.get("upload-offset"));
}

const toSend = (person: Person, id: string, offset: number) => ({
  path: { id },
  headers: {
    ...tus,
    ...person.credentials,
    origin: person.url,
    "content-type": "application/offset+octet-stream",
    "upload-offset": String(offset),
  },
});

/** Sends bytes from an offset on, and cuts the connection after so many of them where that is asked for. */
export function sendPart(
  person: Person,
  id: string,
  { bytes, from, cutAfter }: { bytes: Uint8Array; from: number; cutAfter?: number },
): Promise<number> {
  const { headers } = toSend(person, id, from);
  return new Promise((resolve, reject) => {
    const rest = bytes.subarray(from);
    const sending = request(
      `${person.url}/api/v1/uploads/${id}`,
      { method: "PATCH", headers: { ...headers, "content-length": rest.length }, agent: false },
      (answer) => {
        answer.resume().on("end", () => resolve(answer.statusCode ?? 0));
      },
    );
    sending.on("error", (error) => (cutAfter === undefined ? reject(error) : resolve(0)));
    if (cutAfter === undefined) return void sending.end(rest);
    sending.write(rest.subarray(0, cutAfter), () => sending.destroy());
  });
}

/** Announces a file and sends all of it. */
export async function send(
  person: Person,
  report: string,
  bytes: Uint8Array,
  more: Announced = {},
): Promise<string> {
  const id = await announce(person, report, bytes, more);
  assert.equal(await sendPart(person, id, { bytes, from: 0 }), 204);
  return id;
}
