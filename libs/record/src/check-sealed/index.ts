import type { PublishedKey, SealedFile } from "@evenhand/shared/chain";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { type HashText, sealHolds } from "@evenhand/record/seal";
import { type ReceiptFault, receiptFault, type VerifyText } from "@evenhand/record/signed-root";

export type SealedFault = "not-json" | "not-canonical" | "not-as-sealed" | ReceiptFault;

const isCanonical = (text: string): boolean => {
  const value: unknown = JSON.parse(text);
  return canonicalJson(value) === text;
};

function textFault(text: string): SealedFault | null {
  try {
    return isCanonical(text) ? null : "not-canonical";
  } catch {
    return "not-json";
  }
}

/**
 * Checks a sealed report or summary with nothing but the file and the service's public keys: that its text is canonical JSON
 * (RFC 8785), that its SHA-256 is the one that was sealed, and that the service signed that (Ed25519, RFC 8032).
 *
 * @param keys from elsewhere than the file, where one has them; those in the file prove only that the file holds together
 * @returns `null` where everything holds
 */
export function checkSealed(
  { document, receipt }: Pick<SealedFile, "document" | "receipt">,
  keys: readonly PublishedKey[],
  given: { readonly sha256: HashText; readonly verify: VerifyText },
): SealedFault | null {
  const fault = textFault(document);
  if (fault !== null) return fault;
  if (!sealHolds(document, receipt.seal, given.sha256)) return "not-as-sealed";
  return receiptFault(receipt, keys, given.verify);
}
