import { type FileRefused, refusalWords } from "@evenhand/evidence/refusal-words";
import { FileRefusal } from "@evenhand/shared/evidence";
import { z } from "zod";

const count = z.number().optional();

/** A reason as it is stored, with the figures of its sentence. */
export const StoredRefusal = z.strictObject({
  reason: FileRefusal,
  most: count,
  found: count,
  width: count,
  height: count,
  least: count,
});
export type StoredRefusal = z.infer<typeof StoredRefusal>;

const figures = { most: 0, found: 0, width: 0, height: 0, least: 0 };

/** The reason in words for whoever sent it. */
export function wordedRefusal(stored: StoredRefusal | null): { reason: FileRefusal; words: string } | null {
  if (stored === null) return null;
  const refused: FileRefused = { ...figures, ...stored };
  return { reason: stored.reason, words: refusalWords(refused) };
}
