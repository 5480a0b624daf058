import { listed } from "@evenhand/message/listed";
import type { RuleResult } from "@evenhand/shared/cross-check";
import { difference } from "@evenhand/measurement/difference";
import type { Estimate } from "@evenhand/measurement/estimate";
import { isoOf } from "../day/index.ts";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { odometerRecord } from "./record.ts";

export type OdometerReading = {
  readonly day: number;
  /** What the instrument or paper shows, mi. */
  readonly miles: Estimate;
  readonly place: string;
  /** The most it may have been driven since the reading before. */
  readonly allowedSince?: number;
};

export type OdometerInput = {
  readonly readings: readonly OdometerReading[];
  /** Digits before the tenths. Five start again at 100,000. */
  readonly digits: 5 | 6;
};

const ROLL_OVER_MILES = 100_000;
/** How many roll-overs are kept as alternatives. */
const KEPT = 2;

/**
 * The miles a five-digit odometer can stand for: as shown, or after one or two roll-overs.
 *
 * @example rollOvers(34210) // [34210, 134210, 234210]
 */
export const rollOvers = (shown: number): number[] =>
  Array.from({ length: KEPT + 1 }, (_, times) => shown + times * ROLL_OVER_MILES);

type Step = { readonly from: OdometerReading; readonly to: OdometerReading; readonly rise: Estimate };

const stepsOf = (readings: readonly OdometerReading[]): Step[] => {
  const sorted = readings.toSorted((a, b) => a.day - b.day || a.miles.value - b.miles.value);
  return sorted.slice(1).flatMap((to, index) => {
    const from = sorted[index];
    return from === undefined ? [] : [{ from, to, rise: difference(to.miles, from.miles) }];
  });
};

const say = ({ from, to }: Step) => ({
  from: listed([from.place, isoOf(from.day)]),
  to: listed([to.place, isoOf(to.day)]),
});

const riseFigures = ({ from, to, rise }: Step) => ({
  earlier: figure(from.miles.value, "mi"),
  later: figure(to.miles.value, "mi"),
  rise: figure(rise.value, "mi", rise.standardUncertainty),
  ...(to.allowedSince === undefined ? {} : { allowed: figure(to.allowedSince, "mi") }),
});

const detailOf = (step: Step, alternatives: string[] = []) => ({
  words: say(step),
  figures: riseFigures(step),
  alternatives,
});

/**
 * Odometer: a later reading is never lower, and no rise is more than was driven. With five digits a lower reading
 * may have rolled over, so every count is kept and nothing is called wrong.
 *
 * Source: arithmetic; 49 CFR 580.5 for what a reading declares, from memory.
 *
 * @param input.readings in any order; readings of one day are taken in rising order
 */
export const odometer = ({ readings, digits }: OdometerInput): RuleResult => {
  const steps = stepsOf(readings);
  const last = steps.at(-1);
  if (last === undefined) return odometerRecord.answer("too-few");
  const alternatives = digits === 5 ? rollOvers(last.to.miles.value).map(String) : [];
  const judged = steps.map((step) => ({
    step,
    falls: judge(step.rise, { low: 0 }, steps.length),
    rises: judge(step.rise, { high: step.to.allowedSince }, steps.length),
  }));
  const tooMuch = judged.find(({ rises }) => rises === "breaks");
  if (tooMuch !== undefined) return odometerRecord.answer("rises-too-much", detailOf(tooMuch.step));
  const fallen = judged.find(({ falls }) => falls === "breaks");
  if (fallen !== undefined) {
    return odometerRecord.answer(
      digits === 5 ? "rolled-over-or-back" : "falls",
      detailOf(fallen.step, alternatives),
    );
  }
  const clear = judged.every(({ falls, rises }) => falls === "holds" && rises === "holds");
  return odometerRecord.answer(clear ? "rises" : "range-covers", detailOf(last, alternatives));
};
