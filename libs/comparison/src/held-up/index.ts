import type { Interval } from "@evenhand/shared/comparison";
import { fitBetaBinomial, pooledShare } from "@evenhand/measurement/beta-binomial";
import type { BetaBinomialFit, Group } from "@evenhand/measurement/beta-binomial";
import { jeffreysInterval } from "@evenhand/measurement/proportion-interval";
import type { CarCounts, SectionCounts } from "../held-up-counts/index.ts";

/** One car a dealer stated and somebody inspected. */
export type InspectedCar = { readonly dealer: string; readonly car: string; readonly sections: CarCounts };

/** Nothing is said of fewer cars, and nothing pooled over fewer dealers. */
export const LEAST_CARS = 20;
export const LEAST_DEALERS = 5;
const CONFIDENCE = 0.9;

/** Cars of a dealer in one section, by what became of their statements. */
export type CarsBy = {
  /** None fell, and at least one was confirmed. */
  readonly confirmed: number;
  /** None fell, and none could be confirmed. */
  readonly notContradicted: number;
  /** At least one fell. */
  readonly fell: number;
  /** Statements left out because money settled them, and cars that had no others. */
  readonly statementsLeftOut: number;
  readonly carsLeftOut: number;
};

export type HeldUp = { readonly dealer: string; readonly section: string; readonly cars: CarsBy } & (
  | { readonly state: "too-few"; readonly n: number; readonly needed: number }
  | {
      readonly state: "known";
      readonly n: number;
      /** Whether other dealers' shares were drawn on. */
      readonly pooled: boolean;
      /** Share of cars none of whose statements fell, 90 % interval. */
      readonly heldUp: Interval;
      /** Share of cars none of whose statements fell and at least one of which was confirmed. */
      readonly confirmed: Interval;
    }
);

const addCar = (cars: CarsBy, counts: SectionCounts): CarsBy => {
  const { confirmed, notContradicted, fell, leftOut } = counts;
  const tested = confirmed + notContradicted + fell;
  const key = fell > 0 ? "fell" : confirmed > 0 ? "confirmed" : "notContradicted";
  return {
    ...cars,
    statementsLeftOut: cars.statementsLeftOut + leftOut,
    ...(tested === 0 ? { carsLeftOut: cars.carsLeftOut + 1 } : { [key]: cars[key] + 1 }),
  };
};

const NONE: CarsBy = { confirmed: 0, notContradicted: 0, fell: 0, statementsLeftOut: 0, carsLeftOut: 0 };

/** Cars by section, then by dealer. */
const sumUp = (cars: readonly InspectedCar[]): Map<string, Map<string, CarsBy>> => {
  const sections = new Map<string, Map<string, CarsBy>>();
  for (const { dealer, sections: counted } of cars) {
    for (const [section, counts] of counted) {
      const dealers = sections.get(section) ?? new Map<string, CarsBy>();
      dealers.set(dealer, addCar(dealers.get(dealer) ?? NONE, counts));
      sections.set(section, dealers);
    }
  }
  return sections;
};

const trialsOf = ({ confirmed, notContradicted, fell }: CarsBy): number => confirmed + notContradicted + fell;
const heldUpGroup = (cars: CarsBy): Group => ({
  successes: cars.confirmed + cars.notContradicted,
  trials: trialsOf(cars),
});
const confirmedGroup = (cars: CarsBy): Group => ({ successes: cars.confirmed, trials: trialsOf(cars) });

/** The fit over dealers, where there are enough of them to learn from. */
const fitOver = (groups: readonly Group[]): BetaBinomialFit | undefined => {
  const tested = groups.filter(({ trials }) => trials > 0);
  return tested.length < LEAST_DEALERS ? undefined : fitBetaBinomial(tested);
};

const shareOf = (group: Group, fit: BetaBinomialFit | undefined): Interval => {
  if (fit !== undefined) {
    const { mean, low, high } = pooledShare(group, fit, CONFIDENCE);
    return { estimate: mean, low, high };
  }
  const { low, high } = jeffreysInterval(group.successes, group.trials, CONFIDENCE);
  return { estimate: group.successes / group.trials, low, high };
};

/**
 * How often a dealer's statements held up, by section. The unit is the car, for the items of one car move together: a car
 * held up where none of its tested statements fell. Beta-binomial over the cars, pooled across dealers where there are five
 * or more; a dealer's own share with the Jeffreys interval where there are fewer; nothing under twenty cars. The interval
 * holds 90 %, and what was confirmed is told from what was only not contradicted.
 *
 * @returns one row for each dealer and section met, by section and dealer in the order of first meeting
 * @example heldUp(cars)[0] // { dealer: "…", section: "body", state: "known", n: 34, pooled: true, heldUp: { … }, … }
 */
export const heldUp = (cars: readonly InspectedCar[]): HeldUp[] =>
  Array.from(sumUp(cars), ([section, dealers]) => {
    const all = Array.from(dealers.values());
    const heldFit = fitOver(all.map(heldUpGroup));
    const confirmedFit = fitOver(all.map(confirmedGroup));
    return Array.from(dealers, ([dealer, counted]): HeldUp => {
      const n = trialsOf(counted);
      if (n < LEAST_CARS) return { dealer, section, cars: counted, state: "too-few", n, needed: LEAST_CARS };
      return {
        dealer,
        section,
        cars: counted,
        state: "known",
        n,
        pooled: heldFit !== undefined,
        heldUp: shareOf(heldUpGroup(counted), heldFit),
        confirmed: shareOf(confirmedGroup(counted), confirmedFit),
      };
    });
  }).flat();
