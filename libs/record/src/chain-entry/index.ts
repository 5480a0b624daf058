import type { ChainEntry, Opening } from "@evenhand/shared/chain";
import type { Sha256 } from "@evenhand/shared/identifier";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { type HashBytes, leafHash } from "@evenhand/record/merkle-tree";

/** What stands as the entry before the first. */
export const beforeFirst: Sha256 = "0".repeat(64);

const digits = Array.from({ length: 256 }, (_, byte) => byte.toString(16).padStart(2, "0"));

/**
 * Bytes in lower-case hexadecimal.
 *
 * @example toHex(new Uint8Array([1, 255])) // "01ff"
 */
export const toHex = (bytes: Uint8Array): string => Array.from(bytes, (byte) => digits[byte]).join("");

/**
 * The bytes of hexadecimal text.
 *
 * @throws {RangeError} for what is none
 * @example toHex(fromHex("01ff")) // "01ff"
 */
export function fromHex(text: string): Uint8Array {
  if (!/^([0-9a-f]{2})*$/.test(text)) throw new RangeError("This is not lower-case hexadecimal.");
  return Uint8Array.from({ length: text.length / 2 }, (_, at) =>
    Number.parseInt(text.slice(2 * at, 2 * at + 2), 16),
  );
}

/**
 * The hash of an entry, which the next one names: that of a leaf of RFC 6962 whose data is the entry's canonical JSON. So the chain
 * and the tree over it are made of the same hashes.
 */
export const entryHash = (entry: ChainEntry, sha256: HashBytes): Sha256 =>
  toHex(leafHash(canonicalJson(entry), sha256));

/**
 * Commitment to a value, `SHA-256(salt ‖ canonical JSON)`: it says nothing of the value to who has not the salt, since a short
 * one, such as a name or a number of a car, could otherwise be guessed and tried.
 *
 * @param opening the salt, 32 bytes of chance in hexadecimal, and the canonical JSON of the value
 */
export const commitment = ({ salt, text }: Opening, sha256: HashBytes): Sha256 =>
  toHex(sha256(fromHex(salt), text));
