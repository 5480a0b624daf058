import { normalDeviate, seededRandom } from "@evenhand/measurement/random";
import type { Random } from "@evenhand/measurement/random";

/** A stream of draws with the few shapes the study needs. */
export type Draws = {
  readonly uniform: Random;
  readonly normal: () => number;
  readonly chance: (share: number) => boolean;
  readonly between: (range: readonly [low: number, high: number]) => number;
  readonly pick: <Value>(values: readonly Value[]) => Value;
};

/** @example drawsFrom(seededRandom(7)).chance(1) // true */
export const drawsFrom = (uniform: Random): Draws => ({
  uniform,
  normal: () => normalDeviate(uniform),
  chance: (share) => uniform() < share,
  between: ([low, high]) => low + (high - low) * uniform(),
  pick: (values) => {
    const value = values[Math.floor(uniform() * values.length)];
    if (value === undefined) throw new RangeError("nothing to pick from");
    return value;
  },
});

/** Streams of their own for the car and for each person, so that another person looks at the very same car. */
export const streams = (seed: number, car: number): Record<"car" | "dealer" | "inspector", Draws> => {
  const of = (part: number) => drawsFrom(seededRandom(seed + 7919 * (3 * car + part)));
  return { car: of(0), dealer: of(1), inspector: of(2) };
};
