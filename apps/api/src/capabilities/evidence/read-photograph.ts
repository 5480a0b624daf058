import { Readable } from "node:stream";
import { MOST_BYTES } from "@evenhand/evidence/evidence-limits";
import { z } from "zod";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const Bytes = z.instanceof(Uint8Array);
const wanted = "the bytes of one photograph, as application/octet-stream";

/** The body of a request that is one photograph, before a byte of it is read. @throws ProblemError `malformed-request` for any other body */
export function photographIn(body: unknown): Readable {
  if (body instanceof Readable) return body;
  throw new ProblemError("malformed-request", `Send ${wanted}.`, {
    problems: [{ at: "header/content-type", reason: wanted }],
  });
}

/** A photograph whose size nobody knows beforehand. @throws ProblemError `body-too-large` once it is larger than any may be */
export async function readPhotograph(body: Readable): Promise<Buffer> {
  const most = MOST_BYTES.jpeg;
  const parts: Uint8Array[] = [];
  let size = 0;
  for await (const part of body) {
    const bytes = Bytes.parse(part);
    size += bytes.length;
    if (size > most)
      throw new ProblemError(
        "body-too-large",
        `A photograph has at most ${most / 1024 / 1024} MiB. Send it smaller.`,
      );
    parts.push(bytes);
  }
  return Buffer.concat(parts);
}
