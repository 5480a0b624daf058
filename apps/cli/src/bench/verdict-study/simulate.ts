import type { Item, ReadingSpec, Sheet } from "@evenhand/shared/sheet";
import { deltaOf } from "@evenhand/comparison/delta";
import { seededRandom } from "@evenhand/measurement/random";
import { readingsOf, truthAway, typicalOf } from "./people.ts";
import type { Person } from "./people.ts";
import type { Judge, Verdict } from "./verdicts.ts";

/** Truths two people look at: the same, δ apart, 2δ apart. */
export const DISTANCES = [0, 1, 2] as const;

export type Scenario = { readonly name: string; readonly dealer: Person; readonly inspector: Person };

export type Counts = Readonly<Record<Verdict, number>>;

/** Verdicts by distance, of one judge over all items. */
export type Tally = {
  readonly judge: string;
  readonly trials: number;
  readonly byDistance: readonly Counts[];
};

/** The sheet's reading items whose ordinary instrument can confirm them; the exceptions are listed with their reason. */
export const confirmableItems = ({ items }: Sheet): { readonly id: string; readonly spec: ReadingSpec }[] =>
  items.flatMap(({ id, reading }: Item) =>
    reading === undefined || reading.notConfirmableBecause !== undefined ? [] : [{ id, spec: reading }],
  );

const empty = (): Record<Verdict, number> => ({ agree: 0, consistent: 0, doubtful: 0, differ: 0 });

/**
 * So many cars for every item and distance, read by a dealer and by an inspector; the same readings go to every judge.
 * The same seed gives the same cars.
 */
export const simulate = (
  items: readonly { readonly spec: ReadingSpec }[],
  { dealer, inspector }: Scenario,
  judges: readonly Judge[],
  cars: number,
  seed: number,
): Tally[] => {
  const random = seededRandom(seed);
  const counts = judges.map(() => DISTANCES.map(empty));
  for (const { spec } of items) {
    for (const [place, distance] of DISTANCES.entries()) {
      const truthA = typicalOf(spec);
      const truthB = truthAway(spec, truthA, distance);
      const delta = deltaOf(spec.delta, truthA, truthB);
      for (let car = 0; car < cars; car += 1) {
        const a = readingsOf(spec, truthA, delta, dealer, random);
        const b = readingsOf(spec, truthB, delta, inspector, random);
        for (const [index, { judge }] of judges.entries()) {
          const row = counts[index]?.[place];
          if (row !== undefined) row[judge(spec, a, b)] += 1;
        }
      }
    }
  }
  return judges.map(({ name }, index) => ({
    judge: name,
    trials: items.length * cars,
    byDistance: counts[index] ?? [],
  }));
};
