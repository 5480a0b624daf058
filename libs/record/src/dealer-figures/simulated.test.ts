import { describe, expect, it } from "vitest";
import { seededRandom } from "@evenhand/measurement/random";
import type { Random } from "@evenhand/measurement/random";
import { drawFrom, ownShares, simulatedCars } from "../../testing/simulated-dealers.ts";
import type { Dealer } from "../../testing/simulated-dealers.ts";
import { dealerFigures } from "./index.ts";
import type { DealerFigures, InspectedCar } from "./index.ts";
import type { Fall } from "../statement-counts/index.ts";

const CARS = 30;
const honest: Dealer = { name: "honest", states: 1, hides: 0 };
const sly: Dealer = { name: "sly", states: 0.3, hides: 0.1 };

type Known = Extract<DealerFigures, { state: "known" }>;
const knownOf = (cars: readonly InspectedCar[]): Map<string, Known> =>
  new Map(
    dealerFigures(cars).flatMap((row) =>
      row.state === "known" && row.section === null ? [[row.dealer, row] as const] : [],
    ),
  );

/** Of so many draws of both dealers' cars, how often the first stands above the second. */
const above = (first: Dealer, second: Dealer, draws: number, least: (row: Known | undefined) => number) => {
  const random = seededRandom(20_261_127);
  let count = 0;
  for (let draw = 0; draw < draws; draw += 1) {
    const rows = knownOf([first, second].flatMap((dealer) => simulatedCars(dealer, CARS, random)));
    if (least(rows.get(first.name)) < least(rows.get(second.name))) count += 1;
  }
  return count / draws;
};

/** The share of cars without a fall, which rewards whoever says little: what a record must never be. */
const carsWithoutFall = (cars: readonly InspectedCar[]): number =>
  cars.filter(({ counts }) => counts["body"]?.falls.length === 0).length / cars.length;

const fallenOf = (row: Known | undefined): number => row?.fallen.estimate ?? Number.NaN;
const everyFallOf = (row: Known | undefined): number => row?.fallenIfAllOpen?.estimate ?? Number.NaN;

describe("over thirty cars", () => {
  it("an honest dealer who states everything stands above one who hides a tenth and states little", () => {
    expect(above(honest, sly, 300, fallenOf)).toBeGreaterThanOrEqual(0.95);
    expect(above(honest, sly, 300, everyFallOf)).toBeGreaterThan(0.85);
  });

  it("counted in cars without a fall it would be the other way round", () => {
    const random = seededRandom(5);
    const [a, b] = [simulatedCars(honest, 200, random), simulatedCars(sly, 200, random)];
    expect(carsWithoutFall(a)).toBeLessThan(carsWithoutFall(b));
  });

  it("hiding more never looks better", () => {
    const fallen = [0, 0.05, 0.1, 0.2, 0.4].map((hides) => {
      const cars = simulatedCars({ name: "one", states: 0.3, hides }, 400, seededRandom(9));
      return knownOf(cars).get("one")?.fallen.estimate ?? Number.NaN;
    });
    expect(fallen).toEqual(fallen.toSorted((a, b) => a - b));
  });
});

/** A car of a dealer whose share of falls is drawn about the dealer's own, all of them upheld. */
const carOf = (own: readonly number[], random: Random): InspectedCar => {
  const share = drawFrom(own, random);
  const tested = 60 + Math.floor(random() * 140);
  const falls: Fall[] = [];
  for (let entry = 0; entry < tested; entry += 1)
    if (random() < share) falls.push({ line: `${entry}`, by: "figures" });
  const told = {
    places: 250,
    stated: tested,
    confirmed: tested - falls.length,
    notContradicted: 0,
    statedWorse: 0,
  };
  return { dealer: "one", counts: { body: { ...told, falls } }, decided: new Map() };
};

describe("the interval", () => {
  // What others have plays no part in it (see the properties), so that each can be drawn alone.
  it.each([
    ["an ordinary dealer", 0.03],
    ["the worst of twenty", 0.12],
  ])("of %s holds the true share as often as its 90 %% says", (_, mean) => {
    const [random, own, draws] = [seededRandom(20_261_128), ownShares(mean, 40), 2000];
    const share = own.reduce((sum, each) => sum + each, 0) / own.length;
    let held = 0;
    for (let draw = 0; draw < draws; draw += 1) {
      const rows = knownOf(Array.from({ length: CARS }, () => carOf(own, random)));
      const { low = Number.NaN, high = Number.NaN } = rows.get("one")?.fallen ?? {};
      if (low <= share && share <= high) held += 1;
    }
    expect(held / draws).toBeGreaterThan(0.88);
    expect(held / draws).toBeLessThan(0.92);
  });
});
