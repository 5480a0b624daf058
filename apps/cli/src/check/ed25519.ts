import { createPublicKey, verify } from "node:crypto";

/** What stands before the 32 bytes of a public key in SPKI (RFC 8410). */
const publicPrefix = Buffer.from("302a300506032b6570032100", "hex");

/**
 * Ed25519 (RFC 8032): does the signature belong to this text and this public key, both in base64? What is no key at all verifies
 * nothing.
 */
export function verifyText(text: string, signature: string, publicKey: string): boolean {
  const bytes = Buffer.from(publicKey, "base64");
  if (bytes.length !== 32) return false;
  const key = createPublicKey({ key: Buffer.concat([publicPrefix, bytes]), format: "der", type: "spki" });
  return verify(null, Buffer.from(text, "utf8"), key, Buffer.from(signature, "base64"));
}
