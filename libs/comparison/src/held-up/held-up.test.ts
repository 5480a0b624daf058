import { describe, expect, it } from "vitest";
import { betaQuantile } from "@evenhand/measurement/beta-distribution";
import { seededRandom } from "@evenhand/measurement/random";
import { heldUp } from "./index.ts";
import type { InspectedCar } from "./index.ts";

type Fate = "confirmed" | "notContradicted" | "fell" | "leftOut";
const car = (dealer: string, number: number, fates: Fate[], section = "body"): InspectedCar => {
  const counts = { confirmed: 0, notContradicted: 0, fell: 0, leftOut: 0 };
  for (const fate of fates) counts[fate] += 1;
  return { dealer, car: `${dealer} ${number}`, sections: new Map([[section, counts]]) };
};
const cars = (dealer: string, count: number, fates: Fate[]): InspectedCar[] =>
  Array.from({ length: count }, (_, index) => car(dealer, index, fates));

const rowOf = (list: InspectedCar[]) => heldUp(list).find(({ dealer }) => dealer === "Larkspur");
/** Dealers whose own shares vary, each with cars that hold up by that share; all items of a car move together. */
const drawn = (random: () => number, dealers: number, carsEach: number) => {
  const shares = Array.from({ length: dealers }, () => betaQuantile(random(), 8, 3));
  const list = shares.flatMap((share, dealer) =>
    Array.from({ length: carsEach }, (_, index) =>
      car(`${dealer}`, index, Array<Fate>(12).fill(random() < share ? "confirmed" : "fell")),
    ),
  );
  return { shares, list };
};
describe("heldUp", () => {
  it("says nothing under twenty cars, but what was counted", () => {
    expect(heldUp(cars("Larkspur", 19, ["confirmed"]))).toEqual([
      {
        dealer: "Larkspur",
        section: "body",
        state: "too-few",
        n: 19,
        needed: 20,
        cars: { confirmed: 19, notContradicted: 0, fell: 0, statementsLeftOut: 0, carsLeftOut: 0 },
      },
    ]);
  });

  it("takes the car for the unit: one statement that falls, and it did not hold up", () => {
    const list = [
      ...cars("Larkspur", 18, ["confirmed", "confirmed"]),
      ...cars("Larkspur", 2, ["confirmed", "confirmed", "fell"]),
    ];
    expect(heldUp(list)[0]).toMatchObject({
      state: "known",
      n: 20,
      pooled: false,
      heldUp: { estimate: 0.9 },
      cars: { confirmed: 18, fell: 2 },
    });
  });

  it("tells what was confirmed from what was only not contradicted", () => {
    const list = [
      ...cars("Larkspur", 10, ["confirmed", "notContradicted"]),
      ...cars("Larkspur", 10, ["notContradicted"]),
    ];
    expect(heldUp(list)[0]).toMatchObject({
      heldUp: { estimate: 1 },
      confirmed: { estimate: 0.5 },
      cars: { confirmed: 10, notContradicted: 10 },
    });
  });

  it("leaves out what money settled, and cars that had nothing else", () => {
    const list = [...cars("Larkspur", 20, ["confirmed", "leftOut"]), ...cars("Larkspur", 3, ["leftOut"])];
    expect(heldUp(list)[0]).toMatchObject({ n: 20, cars: { statementsLeftOut: 23, carsLeftOut: 3 } });
  });

  it("pools from five dealers on, toward what dealers have in common", () => {
    const dealers = (count: number) =>
      Array.from({ length: count }, (_, index) => [
        ...cars(`dealer ${index}`, 18, ["confirmed"]),
        ...cars(`dealer ${index}`, 2, ["fell"]),
      ]).flat();
    const worst = [...cars("Larkspur", 8, ["confirmed"]), ...cars("Larkspur", 12, ["fell"])];
    expect(rowOf([...worst, ...dealers(3)])).toMatchObject({ pooled: false, heldUp: { estimate: 0.4 } });
    const pooled = rowOf([...worst, ...dealers(4)]);
    expect(pooled).toMatchObject({ pooled: true });
    const { estimate, low, high } =
      pooled?.state === "known" ? pooled.heldUp : { estimate: 0, low: 0, high: 0 };
    expect(estimate).toBeGreaterThan(0.4);
    expect(estimate).toBeLessThan(0.8);
    expect(low).toBeLessThan(estimate);
    expect(high).toBeGreaterThan(estimate);
  });

  it("does not count dealers without a tested car among the five", () => {
    const idle = Array.from({ length: 4 }, (_, index) => car(`idle ${index}`, 0, ["leftOut"]));
    const [first] = heldUp([...cars("Larkspur", 20, ["confirmed"]), ...idle]);
    expect(first).toMatchObject({ state: "known", pooled: false });
  });

  it("keeps sections apart", () => {
    const both = Array.from({ length: 20 }, (_, index) => [
      car("Larkspur", index, ["confirmed"]),
      car("Larkspur", index, ["fell"], "trunk"),
    ]).flat();
    expect(heldUp(both)).toMatchObject([
      { section: "body", heldUp: { estimate: 1 } },
      { section: "trunk", heldUp: { estimate: 0 } },
    ]);
  });
});

describe("the interval", () => {
  it("holds a dealer's true share about as often as its 90 %", () => {
    const random = seededRandom(20_260_101);
    let [held, asked] = [0, 0];
    for (let round = 0; round < 60; round += 1) {
      const { shares, list } = drawn(random, 12, 24);
      for (const row of heldUp(list)) {
        if (row.state !== "known") continue;
        const share = shares[Number(row.dealer)] ?? Number.NaN;
        asked += 1;
        if (row.heldUp.low <= share && share <= row.heldUp.high) held += 1;
      }
    }
    expect(asked).toBe(720);
    expect(held / asked).toBeGreaterThan(0.87);
    expect(held / asked).toBeLessThan(0.94);
  });
});
