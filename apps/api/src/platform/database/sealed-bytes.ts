import { sealHolds } from "@evenhand/record/seal";
import { sha256Hex } from "../auth/secret.ts";

/**
 * The bytes of a sealed document as they are stored, held against their seal: what does not hold any more is neither shown nor
 * compared.
 *
 * @throws Error where the stored bytes are not those that were sealed
 */
export function sealedBytes(document: Uint8Array, seal: string): Uint8Array {
  if (sealHolds(Buffer.from(document).toString("utf8"), seal, sha256Hex)) return document;
  throw new Error(`The document stored under the seal ${seal} is not the one that was sealed.`);
}
