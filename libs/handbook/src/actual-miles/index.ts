import { listed } from "@evenhand/message/listed";
import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { difference } from "@evenhand/measurement/difference";
import type { Estimate } from "@evenhand/measurement/estimate";
import { DAYS_A_YEAR, isoOf } from "../day/index.ts";
import { judge } from "../interval/index.ts";
import { rollOvers } from "../odometer/index.ts";
import { figure } from "../rule-result/index.ts";
import { actualMilesRecord } from "./record.ts";
import { resultMessages, valueOf } from "../result-words/index.ts";

/** What a paper or the odometer showed on a day, mi. */
export type MilesEntry = { readonly day: number; readonly miles: Estimate; readonly place: string };

export type ActualMilesInput = {
  readonly shown: MilesEntry;
  /** Digits before the tenths. */
  readonly digits: 5 | 6;
  readonly entries: readonly MilesEntry[];
  /** The first day the car can have been driven, where it is known. */
  readonly built?: number;
  /** The miles are disclosed as actual. */
  readonly calledActual: boolean;
};

const ROLL_OVER_MILES = 100_000;
const miles = (value: number): string =>
  resultMessages.say("miles", { miles: Math.round(value).toLocaleString("en-US") });

/** Whether 100,000 miles more than the readings show fit between two of them. */
const roomBetween = (from: MilesEntry, to: MilesEntry, aYear: number): boolean =>
  to.miles.value - from.miles.value + ROLL_OVER_MILES <= ((to.day - from.day) / DAYS_A_YEAR) * aYear;

/**
 * Miles called actual on an odometer of five digits: an older entry that is higher rules it out, and wherever 100,000 miles
 * more could have been driven between two readings that stays an alternative.
 *
 * Source: arithmetic; the miles a year are common practice, no source.
 *
 * @example
 * actualMiles({ shown: { day: 9000, miles: exactly(61_240), place: "odometer" }, digits: 5, calledActual: true,
 *   entries: [{ day: 6000, miles: exactly(97_410), place: "service bill" }] }).reason // "called-actual-but-lower"
 */
export const actualMiles = (input: ActualMilesInput, firm: FirmLimits = {}): RuleResult => {
  const { shown, digits, entries, built, calledActual } = input;
  const aYear = actualMilesRecord.limit("miles.a-year", firm);
  const figures = { shown: figure(shown.miles.value, "mi") };
  if (digits === 6) return actualMilesRecord.answer("six-digits", { figures });
  const older = entries.filter(({ day }) => day <= shown.day).toSorted((a, b) => a.day - b.day);
  const highest = older.toSorted((a, b) => b.miles.value - a.miles.value)[0];
  const possible = rollOvers(shown.miles.value).map(miles);
  if (highest !== undefined) {
    const words = { earlierPlace: highest.place, earlierDay: isoOf(highest.day) };
    const detail = {
      words,
      figures: { ...figures, earlier: figure(highest.miles.value, "mi") },
      alternatives: possible.slice(1),
    };
    const rise = judge(difference(shown.miles, highest.miles), { low: 0 });
    if (rise === "breaks")
      return actualMilesRecord.answer(calledActual ? "called-actual-but-lower" : "lower-than-papers", detail);
    if (rise === "cannot-tell")
      return actualMilesRecord.answer("too-near", { ...detail, alternatives: possible.slice(0, 2) });
  }
  const start: readonly MilesEntry[] =
    built === undefined
      ? []
      : [{ day: built, miles: { ...shown.miles, value: 0, standardUncertainty: 0 }, place: "new" }];
  const line = [...start, ...older, shown];
  const room =
    start.length === 0 ||
    line.some((from, index) => {
      const to = line[index + 1];
      return to !== undefined && roomBetween(from, to, aYear.value);
    });
  if (room)
    return actualMilesRecord.answer("may-be-more", {
      figures,
      alternatives: possible.slice(0, 2),
      limits: [aYear],
    });
  return actualMilesRecord.answer("no-room", {
    figures,
    words: { entries: listed(older.map(({ day, miles: at }) => valueOf(isoOf(day), miles(at.value)))) },
    limits: [aYear],
  });
};
