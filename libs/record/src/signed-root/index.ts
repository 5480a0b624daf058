import type { PublishedKey, Receipt, SealReceipt, SignedRoot } from "@evenhand/shared/chain";
import { canonicalJson } from "@evenhand/record/canonical-json";

type Unsigned = Omit<SignedRoot, "signature"> | Omit<SealReceipt, "signature">;

/**
 * The text a receipt's signature stands for: the canonical JSON of everything else it says. `what` is in it, so that a signature
 * of one kind is none of the other.
 */
export function signedText(receipt: Unsigned | Receipt): string {
  const { signature: _, ...said } = { signature: "", ...receipt };
  return canonicalJson(said);
}

/** Ed25519 (RFC 8032): does the signature, in base64, belong to this text and this public key of 32 bytes in base64? */
export type VerifyText = (text: string, signature: string, publicKey: string) => boolean;

export type ReceiptFault = "unknown-key" | "key-not-in-force" | "wrong-signature";

const isInForce = ({ from, until }: PublishedKey, at: string): boolean =>
  Date.parse(from) <= Date.parse(at) && (until === null || Date.parse(at) < Date.parse(until));

/**
 * What is wrong with a receipt, held against the keys that one has from elsewhere.
 *
 * @returns `null` where nothing is
 */
export function receiptFault(
  receipt: Receipt,
  keys: readonly PublishedKey[],
  verify: VerifyText,
): ReceiptFault | null {
  const known = keys.filter(({ id }) => id === receipt.key);
  if (known.length === 0) return "unknown-key";
  const signed = known.filter((key) => verify(signedText(receipt), receipt.signature, key.publicKey));
  if (signed.length === 0) return "wrong-signature";
  return signed.some((key) => isInForce(key, receipt.at)) ? null : "key-not-in-force";
}
