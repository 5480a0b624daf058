import type { PublishedKey, SealedFile, SealReceipt } from "@evenhand/shared/chain";

/** The answer is not what the receipt is of, such as a statement that is withheld by now. No file is made of it. */
export class NotAsSealed extends Error {
  override readonly name = "NotAsSealed";
}

/**
 * SHA-256 of a text in UTF-8, in hexadecimal.
 *
 * @returns `null` where the browser gives no hash: it does so over a secure connection only
 * @example await sha256Hex("abc") // "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad", FIPS 180-4
 */
export const sha256Hex = async (text: string): Promise<string | null> => {
  if (!("subtle" in crypto)) return null;
  const hash = await crypto.subtle.digest("SHA-256", new TextEncoder().encode(text));
  return Array.from(new Uint8Array(hash), (byte) => byte.toString(16).padStart(2, "0")).join("");
};

/**
 * What a sealed report or summary is taken away as, for `npm run record -- check`: see `docs/record.md`.
 *
 * @param document the very text that the service answered with, not parsed and written anew
 * @throws NotAsSealed where that text is not the one that was sealed, so that nobody is later told that it was changed
 */
export const makeSealedFile = async (
  receipt: SealReceipt,
  keys: readonly PublishedKey[],
  document: string,
): Promise<SealedFile> => {
  const hash = await sha256Hex(document);
  if (hash !== null && hash !== receipt.seal)
    throw new NotAsSealed(`what came is not what was sealed as ${receipt.seal}`);
  return { format: "evenhand-sealed-1", receipt, keys: [...keys], document };
};
