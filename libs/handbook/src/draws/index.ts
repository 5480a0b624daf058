import { estimate } from "@evenhand/measurement/estimate";
import type { Estimate } from "@evenhand/measurement/estimate";
import { dayOf, monthRange } from "../day/index.ts";
import type { DateSet } from "../day/index.ts";

/** A reading of a true value with normal noise of a known standard uncertainty. */
export type DrawnReading = (truth: number, standardUncertainty: number) => Estimate;

/**
 * A number between two ends, with an uncertainty that is a share of their distance.
 *
 * @param numbers from 0 to 1; the one at `index` is taken
 * @example between([0.5], 0, 10, 20, 0.1) // { value: 15, standardUncertainty: 1, … }
 */
export const between = (
  numbers: readonly number[],
  index: number,
  low: number,
  high: number,
  uncertainty: number,
): Estimate => estimate(low + (high - low) * (numbers[index] ?? 0), (high - low) * uncertainty);

/** A single day. */
export const onDay = (year: number, month: number, day: number): DateSet => [
  { first: dayOf(year, month, day), last: dayOf(year, month, day) },
];
/** Any day of a month. */
export const inMonth = (year: number, month: number): DateSet => [monthRange(year, month)];
/** February of several years, as a code without a decade has it. */
export const februaries = (...years: number[]): DateSet => years.map((year) => monthRange(year, 2));
