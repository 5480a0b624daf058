import { z } from "zod";

/**
 * Characters that turn the direction of what follows, or show nothing: embeddings, overrides, isolates and marks of the Unicode
 * Bidirectional Algorithm (UAX #9), line and paragraph separators, and controls. With one of them a name reads as another.
 */
const turnsOrHides = /[\p{Cc}\u061C\u200E\u200F\u2028-\u202E\u2066-\u2069]/u;

/** A name or a short line as others are shown it: one line, in the order it is written. */
export const nameOf = (most: number) =>
  z
    .string()
    .trim()
    .min(1)
    .max(most)
    .refine(
      (text) => !turnsOrHides.test(text),
      "one line without characters that turn the direction of writing",
    );
