import type { Bias, Entry } from "@evenhand/shared/comparison";
import { LEAST_ITEMS } from "@evenhand/measurement/agreement";
import { hodgesLehmann } from "@evenhand/measurement/hodges-lehmann";
import { signTest } from "@evenhand/measurement/sign-test";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { worseBy, worseWay } from "../interval-figures/index.ts";
import { asTaken } from "../use-allowed/index.ts";
import { meanStatistic, shiftStatistic } from "../statistic/index.ts";

/** Steps of the middles smaller than this are rounding. */
const ROUNDING = 1e-9;

/**
 * Signed house steps of every item both sides graded, A − B: above 0 where it was stated better.
 *
 * @example gradeSteps(entries) // [1, 0, 1, …]
 */
export const gradeSteps = (entries: readonly Entry[]): number[] => {
  const steps: number[] = [];
  for (const { figures } of entries) {
    if (figures?.of === "grade") steps.push(Math.abs(figures.steps) < ROUNDING ? 0 : figures.steps);
  }
  return steps;
};

/**
 * How far every reading leans toward the statement's advantage, as a share of δ: above 0 where it was stated better.
 * Readings of which no side is the better one take no part.
 *
 * @example readingShifts(entries, sheet) // [0.2, -0.1, …]
 */
export const readingShifts = (entries: readonly Entry[], sheet: CompiledSheet): number[] => {
  const shifts: number[] = [];
  for (const { item, atom, figures } of entries) {
    if (figures?.of !== "reading" || atom.of !== "answer" || !(figures.delta > 0)) continue;
    const spec = sheet.items.get(item)?.item.reading;
    if (spec === undefined) continue;
    const worse = worseBy(asTaken(figures), worseWay(spec));
    if (worse !== undefined) shifts.push(worse / figures.delta);
  }
  return shifts;
};

/**
 * Whether the statement leans: the mean signed step of graded items, an exact sign test over those that differ, and
 * the Hodges–Lehmann shift of readings as a share of δ. One step the same way again and again is not nothing, though
 * each is consistent by itself.
 *
 * @example biasOf(entries, sheet).meanStep // { state: "known", n: 31, estimate: 0.74, low: 0.5, high: 0.98, … }
 */
export const biasOf = (entries: readonly Entry[], sheet: CompiledSheet): Bias => {
  const steps = gradeSteps(entries);
  const { positive, negative, pValue } = signTest(steps);
  return {
    meanStep: meanStatistic(steps),
    signTestP: positive + negative < LEAST_ITEMS ? null : pValue,
    shift: shiftStatistic(hodgesLehmann(readingShifts(entries, sheet))),
  };
};
