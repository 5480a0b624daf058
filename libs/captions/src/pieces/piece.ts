import type { Mention } from "@evenhand/lexicon/find-mentions";

/** How a piece is joined to the one before it. `start`: a sentence or a turn begins. */
export type Join = "start" | "comma" | "colon" | "and" | "but" | "except" | "inner";

/** The least part of talk that can claim something: tokens `from` up to `to`, and what they speak of. */
export type Piece = {
  readonly from: number;
  readonly to: number;
  readonly join: Join;
  readonly mentions: readonly Mention[];
  /** The sentence it stands in ends as a question. */
  readonly question: boolean;
};
