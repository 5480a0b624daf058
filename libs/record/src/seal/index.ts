import type { Sha256 } from "@evenhand/shared/identifier";
import { canonicalJson } from "@evenhand/record/canonical-json";

/** SHA-256 of a text's UTF-8 bytes, in lower-case hexadecimal. Passed in: every place that runs this has its own fast one. */
export type HashText = (text: string) => Sha256;

/** `text` is what is stored and passed on, byte for byte; `seal` is its hash. */
export type SealedText = { readonly text: string; readonly seal: Sha256 };

/**
 * Seals a document: writes it canonically (RFC 8785) and hashes that.
 *
 * @throws {TypeError} for what JSON cannot say
 * @example sealDocument({ b: 1, a: 2 }, sha256).text // '{"a":2,"b":1}'
 */
export const sealDocument = (document: unknown, sha256: HashText): SealedText => {
  const text = canonicalJson(document);
  return { text, seal: sha256(text) };
};

/**
 * Is this text what was sealed? One changed byte, or another way to write the same value, is not.
 *
 * @example sealHolds('{"a":2}', seal, sha256)
 */
export const sealHolds = (text: string, seal: Sha256, sha256: HashText): boolean => sha256(text) === seal;
