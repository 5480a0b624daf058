import { z } from "zod";

/** Seven outcomes, no more. */
export const Outcome = z.enum([
  "agree",
  "consistent",
  "doubtful",
  "differ",
  "unseen",
  "unstated",
  "incomparable",
]);
export type Outcome = z.infer<typeof Outcome>;

/** The mathematical sign beside each word; an outcome is never told by color alone. */
export const outcomeSign: Readonly<Record<Outcome, string>> = {
  agree: "=",
  consistent: "~",
  doubtful: "?",
  differ: "≠",
  unseen: "○",
  unstated: "+",
  incomparable: "⊘",
};

export const Direction = z.enum(["stated-better", "found-better", "neither"]);
export type Direction = z.infer<typeof Direction>;

/** How the item stands for the buyer. */
export const Standing = z.enum([
  "confirmed",
  "not-contradicted",
  "too-coarse",
  "in-doubt",
  "differs",
  "contradicted-by-figures",
  "not-mentioned",
  "unseen",
  "not-comparable",
  "agreed-fault",
]);
export type Standing = z.infer<typeof Standing>;
