import { listed } from "@evenhand/message/listed";
import type { FirmLimits, LimitUse, RuleResult, Verdict } from "@evenhand/shared/cross-check";
import { dateText, DAYS_A_YEAR } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";
import { judgeSpan } from "../interval/index.ts";
import type { Span, Zone } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { claimsAgainstDatesRecord } from "./record.ts";
import { resultMessages } from "../result-words/index.ts";

/** What is claimed, and the date it is held against. */
export type DatedClaim =
  /** The thing was new when it was stated. */
  | { readonly claim: "new"; readonly stated: DateSet }
  /** The thing was at most so many years old when it was stated. */
  | { readonly claim: "at-most-years"; readonly years: number; readonly stated: DateSet }
  /** The part came with the car, or the assembly was never apart since. */
  | { readonly claim: "original" | "untouched"; readonly built: DateSet }
  /** Fitted with the work on this bill, or to be seen in this photograph. */
  | { readonly claim: "fitted-with-bill" | "seen-in-photograph"; readonly document: DateSet };

export type ClaimsAgainstDatesInput = DatedClaim & {
  /** What each date on the thing can mean; every one of them has to fit. */
  readonly dates: readonly DateSet[];
};

const BREAKS = {
  new: "new-but-old",
  "at-most-years": "older-than-claimed",
  original: "original-but-later",
  untouched: "untouched-but-later",
  "fitted-with-bill": "fitted-before-made",
  "seen-in-photograph": "pictured-before-made",
} as const;

const CLAIM_TEXTS = {
  new: "new",
  original: "original to the car",
  untouched: "never apart",
  "fitted-with-bill": "fitted with this bill",
  "seen-in-photograph": "in this photograph",
} as const;

const claimText = (input: DatedClaim): string =>
  input.claim === "at-most-years"
    ? resultMessages.say("no-older-than", { years: input.years })
    : CLAIM_TEXTS[input.claim];

/** Days from a date to the reference, least and most, for every pair of what both can mean. */
const gapsOf = (dates: DateSet, reference: DateSet): Span[] => {
  const gaps: Span[] = [];
  for (const part of dates) {
    for (const to of reference) gaps.push({ low: to.first - part.last, high: to.last - part.first });
  }
  return gaps;
};

/** All pairs in the zone hold, all outside it break, anything between cannot be told. */
const judgeAll = (gaps: readonly Span[], zone: Zone): Verdict => {
  const verdicts = gaps.map((gap) => judgeSpan(gap, zone));
  if (verdicts.every((verdict) => verdict === "holds")) return "holds";
  return verdicts.every((verdict) => verdict === "breaks") ? "breaks" : "cannot-tell";
};

/**
 * Days from the date to the reference that fit the claim. Nothing is said against a thing called new and dated after
 * the day it was stated: the code was misread.
 */
const zoneOf = (input: DatedClaim, newDays: LimitUse): Zone => {
  if (input.claim === "new") return { high: newDays.value };
  return input.claim === "at-most-years" ? { high: input.years * DAYS_A_YEAR } : { low: 0 };
};

const referenceOf = (input: DatedClaim): DateSet => {
  if ("stated" in input) return input.stated;
  return "built" in input ? input.built : input.document;
};

/**
 * A claim against the dates found: what is called new is not old; what came with the car, or was never apart, was
 * made before the car; what a bill fitted or a photograph shows was made before it.
 *
 * Source: arithmetic on the figures read; the age at which a thing is no longer new is common practice, no source.
 *
 * @example
 * claimsAgainstDates({ claim: "original", built: [{ first: 0, last: 0 }], dates: [[{ first: 30, last: 30 }]] }).reason
 * // "original-but-later"
 */
export const claimsAgainstDates = (input: ClaimsAgainstDatesInput, firm: FirmLimits = {}): RuleResult => {
  const newDays = claimsAgainstDatesRecord.limit("claims.new-days", firm);
  const reference = referenceOf(input);
  const known = input.dates.filter((dates) => dates.length > 0);
  const detailOf = (dates: readonly DateSet[]) => ({
    words: {
      claim: claimText(input),
      dates: listed(dates.map(dateText), "semicolon"),
      reference: dateText(reference),
    },
    ...(input.claim === "new" ? { limits: [newDays] } : {}),
    ...(input.claim === "at-most-years" ? { figures: { years: figure(input.years, "a") } } : {}),
  });
  const { answer } = claimsAgainstDatesRecord;
  if (known.length === 0 || reference.length === 0) return answer("too-few", detailOf(known));
  const zone = zoneOf(input, newDays);
  const verdicts = known.map((dates) => judgeAll(gapsOf(dates, reference), zone));
  // A date that fits is no reason, and is not named as one.
  const against = known.filter((_, index) => verdicts[index] === "breaks");
  if (against.length > 0) return answer(BREAKS[input.claim], detailOf(against));
  return answer(verdicts.includes("cannot-tell") ? "some-readings" : "no-contradiction", detailOf(known));
};
