import type { RuleResult } from "@evenhand/shared/cross-check";
import { normalizeNumber } from "../identifier-text/index.ts";
import { firstColorRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

export type FirstColorInput = {
  /** Paint or trim code on the body tag, or the color's name. */
  readonly tag?: string;
  /** What spots that were never painted over show, each in the same terms. */
  readonly spots: readonly { readonly place: string; readonly color: string }[];
};

/**
 * First color: the tag against spots that were never painted over.
 *
 * Source: common practice, no source.
 *
 * @example firstColor({ tag: "Y", spots: [{ place: "under the dash", color: "y" }] }).reason // "equal"
 */
export const firstColor = ({ tag, spots }: FirstColorInput): RuleResult => {
  if (tag === undefined || spots.length === 0) return firstColorRecord.answer("too-few");
  const other = spots.filter(({ color }) => normalizeNumber(color) !== normalizeNumber(tag));
  return firstColorRecord.answer(other.length === 0 ? "equal" : "differs", {
    words: { tag },
    alternatives: other.map(({ place, color }) => resultMessages.say("at-place", { place, value: color })),
  });
};
