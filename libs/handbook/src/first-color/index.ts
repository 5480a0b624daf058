import type { RuleResult } from "@evenhand/shared/cross-check";
import { normalizeNumber } from "../identifier-text/index.ts";
import { areSameWords, saysLess, wordsOf } from "../written-words/index.ts";
import { firstColorRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

export type FirstColorInput = {
  /** Paint or trim code on the body tag, or the color's name. */
  readonly tag?: string;
  /** What spots that were never painted over show, each in the same terms. */
  readonly spots: readonly { readonly place: string; readonly color: string }[];
};

const SHORTEST_NAME = 3;

/** The name of a color, and not its code: words without a figure. */
const isName = (text: string): boolean =>
  !/\d/.test(text) && wordsOf(text).some((word) => word.length >= SHORTEST_NAME);

/** The same code however it is written, or one name that says no more than part of the other. */
const isSameColor = (one: string, other: string): boolean =>
  normalizeNumber(one) === normalizeNumber(other) ||
  areSameWords(one, other) ||
  (isName(one) && isName(other) && saysLess(one, other));

/**
 * First color: the tag against spots that were never painted over.
 *
 * Source: common practice, no source.
 *
 * @example firstColor({ tag: "Y", spots: [{ place: "under the dash", color: "y" }] }).reason // "equal"
 * @example firstColor({ tag: "40", spots: [{ place: "under the dash", color: "dark blue" }] }).reason // "other-terms"
 */
export const firstColor = ({ tag, spots }: FirstColorInput): RuleResult => {
  if (tag === undefined || spots.length === 0) return firstColorRecord.answer("too-few");
  const unlike = spots.filter(({ color }) => !isSameColor(color, tag));
  // Which color a code stands for only the maker's list says.
  const other = unlike.filter(({ color }) => isName(color) === isName(tag));
  const reason = unlike.length === 0 ? "equal" : other.length === 0 ? "other-terms" : "differs";
  const told = reason === "other-terms" ? unlike : other;
  return firstColorRecord.answer(reason, {
    words: { tag },
    alternatives: told.map(({ place, color }) => resultMessages.say("at-place", { place, value: color })),
  });
};
