import { createHash, randomBytes } from "node:crypto";

/** An opaque token: 256 random bits. Only its hash is stored. */
export const newSecret = (): string => randomBytes(32).toString("base64url");

/** What is stored of a token. It is random and long, so a plain hash cannot be guessed back. */
export const hashSecret = (secret: string): Uint8Array<ArrayBuffer> =>
  new Uint8Array(createHash("sha256").update(secret, "utf8").digest());

export const sha256Hex = (text: string | Uint8Array): string =>
  createHash("sha256").update(text).digest("hex");
