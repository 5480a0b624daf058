import type { Readable } from "node:stream";
import { z } from "zod";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const Bytes = z.instanceof(Uint8Array);

/** A body whose size nobody knows beforehand. @throws ProblemError `body-too-large` once it is larger than `most` bytes */
export async function readWhole(body: Readable, most: number): Promise<Buffer> {
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
