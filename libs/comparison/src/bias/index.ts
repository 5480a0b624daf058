import type { Bias, Entry } from "@evenhand/shared/comparison";
import { LEAST_ITEMS } from "@evenhand/measurement/agreement";
import { hodgesLehmann } from "@evenhand/measurement/hodges-lehmann";
import { signTest } from "@evenhand/measurement/sign-test";
import { mean } from "@evenhand/measurement/type-a";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { worseBy, worseWay } from "../interval-figures/index.ts";
import { asTaken } from "../use-allowed/index.ts";
import { meanStatistic, shiftStatistic } from "../statistic/index.ts";

/** Steps of the middles smaller than this are rounding. */
const ROUNDING = 1e-9;

/** Figures of a report by item: what one person says of all places of an item errs together. */
type ByItem = Map<string, number[]>;

const keep = (byItem: ByItem, item: string, figure: number): void => {
  const known = byItem.get(item);
  if (known === undefined) byItem.set(item, [figure]);
  else known.push(figure);
};

const stepsByItem = (entries: readonly Entry[]): ByItem => {
  const byItem: ByItem = new Map();
  for (const { item, figures } of entries) {
    if (figures?.of !== "grade") continue;
    keep(byItem, item, Math.abs(figures.steps) < ROUNDING ? 0 : figures.steps);
  }
  return byItem;
};

const shiftsByItem = (entries: readonly Entry[], sheet: CompiledSheet): ByItem => {
  const byItem: ByItem = new Map();
  for (const { item, atom, figures } of entries) {
    if (figures?.of !== "reading" || atom.of !== "answer" || !(figures.delta > 0)) continue;
    const spec = sheet.items.get(item)?.item.reading;
    if (spec === undefined) continue;
    const worse = worseBy(asTaken(figures), worseWay(spec));
    if (worse !== undefined) keep(byItem, item, worse / figures.delta);
  }
  return byItem;
};

/**
 * Signed house steps of every place both sides graded, A − B: above 0 where it was stated better.
 *
 * @example gradeSteps(entries) // [1, 0, 1, …]
 */
export const gradeSteps = (entries: readonly Entry[]): number[] =>
  Array.from(stepsByItem(entries).values()).flat();

/**
 * How far every reading leans toward the statement's advantage, as a share of δ and before any allowance: above 0 where it was stated
 * better. Readings of which no side is the better one take no part.
 *
 * @example readingShifts(entries, sheet) // [0.2, -0.1, …]
 */
export const readingShifts = (entries: readonly Entry[], sheet: CompiledSheet): number[] =>
  Array.from(shiftsByItem(entries, sheet).values()).flat();

/**
 * Whether the statement leans: the mean signed step of what both graded, an exact sign test over the items that part, and the
 * Hodges–Lehmann shift of readings as a share of δ, each of one mean an item: sixteen panels graded by one eye are one witness, and what
 * one person says of the places of an item errs together. One step the same way again and again is not nothing, though each is consistent
 * by itself.
 *
 * @returns `n`: how many items; nothing is said of fewer than ten
 * @example biasOf(entries, sheet).meanStep // { state: "known", n: 21, estimate: 0.74, low: 0.5, high: 0.98, … }
 */
export const biasOf = (entries: readonly Entry[], sheet: CompiledSheet): Bias => {
  const steps = Array.from(stepsByItem(entries).values(), mean);
  const { positive, negative, pValue } = signTest(steps);
  return {
    meanStep: meanStatistic(steps),
    signTestP: positive + negative < LEAST_ITEMS ? null : pValue,
    shift: shiftStatistic(hodgesLehmann(Array.from(shiftsByItem(entries, sheet).values(), mean))),
  };
};
