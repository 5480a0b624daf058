import type { IncomingHttpHeaders } from "node:http";
import { Metadata } from "@tus/utils";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const malformed = (at: string, reason: string) =>
  new ProblemError("malformed-request", "The upload is not announced as tus 1.0 has it.", {
    problems: [{ at: `header/${at}`, reason }],
  });

/** A key without a value says nothing, as an empty text does. */
function readMetadata(header: string): Record<string, string> {
  try {
    const entries = Object.entries(Metadata.parse(header));
    return Object.fromEntries(entries.map(([key, value]) => [key, value ?? ""]));
  } catch {
    throw malformed("upload-metadata", "keys with their values in base64, joined by commas");
  }
}

/** What the headers of tus's creation say of a file, not yet held against anything. */
export function readAnnounced(headers: IncomingHttpHeaders): Record<string, unknown> {
  const [length, metadata] = [headers["upload-length"], headers["upload-metadata"]];
  if (typeof length !== "string" || !/^\d{1,15}$/.test(length))
    throw malformed("upload-length", "the number of bytes of the whole file");
  if (typeof metadata !== "string" || metadata.length > 8_000)
    throw malformed("upload-metadata", "filename and sha256 at least, in no more than 8,000 characters");
  return { ...readMetadata(metadata), length: Number(length) };
}
