import { createHash } from "node:crypto";

/** SHA-256 over parts one after the other, a text as its UTF-8 bytes. */
export const sha256Bytes = (...parts: readonly (Uint8Array | string)[]): Uint8Array =>
  parts.reduce((hash, part) => hash.update(part), createHash("sha256")).digest();
