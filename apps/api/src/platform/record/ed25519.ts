import { createHash, createPrivateKey, createPublicKey, type KeyObject, sign, verify } from "node:crypto";

/** What stands before the 32 bytes of a seed in PKCS #8, and of a public key in SPKI (RFC 8410). */
const seedPrefix = Buffer.from("302e020100300506032b657004220420", "hex");
const publicPrefix = Buffer.from("302a300506032b6570032100", "hex");

/**
 * A private key of Ed25519 (RFC 8032), from PEM or from its seed of 32 bytes in base64.
 *
 * @throws Error for what is neither
 */
export function readPrivateKey(text: string): KeyObject {
  if (text.includes("-----BEGIN")) {
    const key = createPrivateKey(text);
    if (key.asymmetricKeyType === "ed25519") return key;
    throw new Error("It is a key of another kind than Ed25519.");
  }
  const seed = Buffer.from(text, "base64");
  if (seed.length !== 32) throw new Error("A seed has 32 bytes.");
  return createPrivateKey({ key: Buffer.concat([seedPrefix, seed]), format: "der", type: "pkcs8" });
}

/** The 32 bytes of the public key. */
export const publicBytes = (key: KeyObject): Buffer =>
  createPublicKey(key).export({ format: "der", type: "spki" }).subarray(publicPrefix.length);

/** The name of a key: the first 16 hexadecimal digits of the SHA-256 of its public bytes. */
export const keyIdOf = (bytes: Uint8Array): string =>
  createHash("sha256").update(bytes).digest("hex").slice(0, 16);

/** Signature of a text's UTF-8 bytes, in base64. The same text gives the same signature. */
export const signText = (text: string, key: KeyObject): string =>
  sign(null, Buffer.from(text, "utf8"), key).toString("base64");

/** Does the signature belong to this text and this public key, both in base64? */
export function verifyText(text: string, signature: string, publicKey: string): boolean {
  const key = Buffer.concat([publicPrefix, Buffer.from(publicKey, "base64")]);
  const spki = createPublicKey({ key, format: "der", type: "spki" });
  return verify(null, Buffer.from(text, "utf8"), spki, Buffer.from(signature, "base64"));
}
