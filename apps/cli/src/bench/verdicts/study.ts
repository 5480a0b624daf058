import type { Comparison, Entry } from "@evenhand/shared/comparison";
import { analyze } from "@evenhand/comparison/analyze";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { streams } from "./draws.ts";
import type { Draws } from "./draws.ts";
import type { Pair } from "./people.ts";
import { visitOf } from "./reports.ts";
import type { Claims, Visit } from "./reports.ts";
import { trueCar } from "./true-car.ts";
import { keyOf } from "./truth.ts";
import type { Known, TrueCar } from "./truth.ts";

export const sheet = compileSheet(sheetVersion1);
export const SEED = 19_790_101;

/** A car and what is stated of it against what is so. */
export type Story = { readonly car: TrueCar; readonly claims: Claims };

/** One simulated pair of reports, and what the service's own analysis makes of it. */
export type Studied = Visit & { readonly story: Story; readonly comparison: Comparison };

/** What is planted in a car; draws of its own keep the car the same whatever is planted. */
export type Plant = (car: TrueCar, draws: Draws) => Story;

/** Nothing is: the dealer states what the dealer sees. */
export const honest: Plant = (car) => ({ car, claims: new Map() });

/** The car with these number, planted, stated, looked at and compared as the service compares. The same numbers give the same. */
export const studied = (
  pair: Pair,
  number: number,
  plant: Plant,
  only?: (known: Known) => boolean,
): Studied => {
  const draws = streams(SEED, number);
  const whole = trueCar(sheetVersion1, draws.car);
  const car = only === undefined ? whole : { ...whole, known: whole.known.filter(only) };
  const story = plant(car, draws.car);
  const visit = visitOf(story.car, pair, story.claims, sheetVersion1, draws);
  return { ...visit, story, comparison: analyze(visit.a, visit.b, sheet) };
};

/** So many cars, one after the other, each let go of before the next. */
export const eachCar = (
  cars: number,
  make: (number: number) => Studied,
  see: (one: Studied) => void,
): void => {
  for (let number = 0; number < cars; number += 1) see(make(number));
};

export const isReading = ({ item }: Pick<Known, "item">): boolean => item.answer === "reading";

export const entryKey = ({ item, position }: Pick<Entry, "item" | "position">): string =>
  keyOf(item, position);
