import { betaQuantile } from "@evenhand/measurement/beta-distribution";
import type { Random } from "@evenhand/measurement/random";
import type { InspectedCar } from "../src/dealer-figures/index.ts";
import type { Fall } from "../src/statement-counts/index.ts";

/** How a made-up dealer states, and how well a look upholds what is false. Assumptions, no source. */
export type Dealer = {
  readonly name: string;
  /** Of the places of a car, how many are stated. */
  readonly states: number;
  /** Of what is bad on a car, how much is stated as good. */
  readonly hides: number;
};

/** Assumptions, no source: places of a car, how much of them is bad, slips of two careful people, what a second look upholds. */
const PLACES = 250;
const BAD = 0.12;
const SLIP = 0.015;
const UPHELD = { lie: 0.9, slip: 0.1 };

/** A quantile table of a car's own share about a mean, so that what is false comes in cars and not evenly. */
export const ownShares = (mean: number, weight: number): number[] =>
  Array.from({ length: 1000 }, (_, index) =>
    betaQuantile((index + 0.5) / 1000, mean * weight, (1 - mean) * weight),
  );
export const drawFrom = (values: readonly number[], random: Random): number =>
  values[Math.floor(random() * values.length)] ?? Number.NaN;
const badShares = ownShares(BAD, 25);

/** Whether a place, as stated, is found otherwise, and whether that is upheld. */
const fateOf = (lie: boolean, random: Random, line: string): Fall | undefined => {
  if (!lie && random() >= SLIP) return undefined;
  return { line, by: random() < (lie ? UPHELD.lie : UPHELD.slip) ? "figures" : null };
};

/** One car of the dealer: how bad it is and what of it is false are drawn, and each statement is tested. */
export const simulatedCar = ({ name, states, hides }: Dealer, random: Random): InspectedCar => {
  const bad = drawFrom(badShares, random);
  const falls: Fall[] = [];
  const stated = Math.round(PLACES * states);
  let confirmed = 0;
  for (let place = 0; place < stated; place += 1) {
    const lie = random() < bad && random() < hides;
    const fall = fateOf(lie, random, `${place}`);
    if (fall === undefined) confirmed += 1;
    else falls.push(fall);
  }
  const counts = { body: { places: PLACES, stated, confirmed, notContradicted: 0, falls, statedWorse: 0 } };
  return { dealer: name, counts, decided: new Map() };
};

export const simulatedCars = (dealer: Dealer, cars: number, random: Random): InspectedCar[] =>
  Array.from({ length: cars }, () => simulatedCar(dealer, random));
