import type { Entry, Statistic } from "@evenhand/shared/comparison";
import { mean } from "@evenhand/measurement/type-a";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { gradeSteps, readingShifts } from "../bias/index.ts";
import { meanStatistic, tooFew } from "../statistic/index.ts";

/** One comparison of a car a dealer stated. */
export type StatedCar = { readonly dealer: string; readonly entries: readonly Entry[] };

/** How far a dealer's statements lean in one section: above 0 where they state better than is found. */
export type DealerBias = {
  readonly dealer: string;
  readonly section: string;
  /** Mean over cars of each car's mean signed house step. */
  readonly step: Statistic;
  /** The same for readings, as a share of δ. */
  readonly shift: Statistic;
};

/** Nothing is said of fewer cars. */
const LEAST_CARS = 20;

type CarMeans = { readonly steps: number[]; readonly shifts: number[] };

const overCars = (means: readonly number[]): Statistic =>
  means.length < LEAST_CARS ? tooFew(means.length, LEAST_CARS) : meanStatistic(means);

const entriesBySection = (entries: readonly Entry[], sheet: CompiledSheet): Map<string, Entry[]> =>
  Map.groupBy(entries, ({ item }) => sheet.items.get(item)?.item.section ?? "");

/**
 * A dealer's lean by section, with its interval over cars: each car counts once by its own mean, for the items of one car
 * move together. Nothing is said under twenty cars.
 *
 * @returns one row for each dealer and section in which anything was graded or read by both sides
 * @example dealerBias(cars, sheet)[0].step // { state: "known", n: 26, estimate: 0.4, low: 0.22, high: 0.58, … }
 */
export const dealerBias = (cars: readonly StatedCar[], sheet: CompiledSheet): DealerBias[] => {
  const means = new Map<string, Map<string, CarMeans>>();
  for (const { dealer, entries } of cars) {
    const sections = means.get(dealer) ?? new Map<string, CarMeans>();
    means.set(dealer, sections);
    for (const [section, ofSection] of entriesBySection(entries, sheet)) {
      const [steps, shifts] = [gradeSteps(ofSection), readingShifts(ofSection, sheet)];
      if (steps.length + shifts.length === 0) continue;
      const known = sections.get(section) ?? { steps: [], shifts: [] };
      if (steps.length > 0) known.steps.push(mean(steps));
      if (shifts.length > 0) known.shifts.push(mean(shifts));
      sections.set(section, known);
    }
  }
  return Array.from(means, ([dealer, sections]) =>
    Array.from(sections, ([section, { steps, shifts }]): DealerBias => ({
      dealer,
      section,
      step: overCars(steps),
      shift: overCars(shifts),
    })),
  ).flat();
};
