import type { RuleResult } from "@evenhand/shared/cross-check";
import { dateText, narrow, rangeText } from "../day/index.ts";
import type { DateSet, DayRange } from "../day/index.ts";
import { decadeLessRecord } from "./record.ts";

export type DecadeLessInput = {
  readonly code: string;
  /** Everything the code can mean, as `dateCandidates` gives it. */
  readonly candidates: DateSet;
  /** Other facts on the same part: the years its casting number was made, the day it was photographed. */
  readonly facts: readonly DayRange[];
  /** The date claimed, as the days it can mean. */
  readonly claimed?: DateSet;
};

const overlaps = (range: DayRange, claimed: DateSet): boolean => narrow(claimed, range).length > 0;

/**
 * A code without a decade: every date it can mean that no other fact has taken away, set against the one claimed.
 * While more than one is left it stays undecided, even where the claimed one is among them.
 *
 * Source: common practice, no source.
 *
 * @example
 * decadeLess({ code: "7", candidates: [{ first: 0, last: 9 }, { first: 90, last: 99 }], facts: [{ first: 50, last: 200 }] })
 * // { reason: "one-left", alternatives: ["1970-04-01 to 1970-04-10"], … }
 */
export const decadeLess = ({ code, candidates, facts, claimed }: DecadeLessInput): RuleResult => {
  const left = facts.reduce(narrow, candidates);
  const words = { code, ...(claimed === undefined ? {} : { claimed: dateText(claimed) }) };
  const detail = { words, alternatives: left.map(rangeText) };
  if (left.length === 0)
    return decadeLessRecord.answer("none-left", { words: { ...words, all: dateText(candidates) } });
  if (claimed !== undefined && !left.some((range) => overlaps(range, claimed))) {
    return decadeLessRecord.answer("claim-not-among", detail);
  }
  return decadeLessRecord.answer(left.length === 1 ? "one-left" : "several-left", detail);
};
