import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { Piece } from "../pieces/index.ts";

/** Behind "the other", where it is one: a verb, a side, or that it is one. */
const OF_ONE = /^(?:one|side|is|s|was|has|had|does|did|need|want|look|seem|feel|got|,|)$/u;

/** "The other is original", "the other side is fine": one, and not what is left of several. */
export const isOneOther = (tokens: readonly RepairedToken[], { from, to }: Piece): boolean =>
  tokens
    .slice(from, to)
    .some(
      ({ stem, plural }, index) =>
        stem === "other" && !plural && OF_ONE.test(tokens[from + index + 1]?.stem ?? ""),
    );
