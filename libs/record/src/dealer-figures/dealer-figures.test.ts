import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { clusterShare } from "@evenhand/measurement/cluster-ratio";
import type { Fall, SectionCounts } from "../statement-counts/index.ts";
import { dealerFigures } from "./index.ts";
import type { DealerFigures, Decided, InspectedCar } from "./index.ts";

type Short = Partial<Omit<SectionCounts, "falls">> & { fell?: number; open?: number };
/** Falls that figures uphold come first among the lines. */
const section = ({ fell = 0, open = 0, ...more }: Short): SectionCounts => ({
  places: 50,
  stated: 40,
  confirmed: 0,
  notContradicted: 0,
  statedWorse: 0,
  ...more,
  falls: Array.from({ length: fell + open }, (_, entry): Fall => ({
    line: `${entry}`,
    by: entry < fell ? "figures" : null,
  })),
});
const car = (dealer: string, body: Short, decided: [string, Decided][] = []): InspectedCar => ({
  dealer,
  counts: { body: section(body) },
  decided: new Map(decided),
});
const cars = (dealer: string, count: number, body: Short, decided: [string, Decided][] = []) =>
  Array.from({ length: count }, () => car(dealer, body, decided));

type Known = Extract<DealerFigures, { state: "known" }>;
const known = (list: readonly InspectedCar[], dealer = "Larkspur", of: string | null = null): Known => {
  const row = dealerFigures(list).find((each) => each.dealer === dealer && each.section === of);
  if (row?.state !== "known") throw new Error("Nothing is said of this dealer.");
  return row;
};

describe("dealerFigures", () => {
  it("credits faults made out worse than found by themselves, and lowers no fall for it", () => {
    const [plain, worse] = [0, 3].map((statedWorse) =>
      known(cars("Larkspur", 20, { confirmed: 9, fell: 1, statedWorse })),
    );
    expect(worse).toEqual({ ...plain, statedWorse: 60 });
  });

  it("says nothing under twenty cars but how many there are", () => {
    expect(dealerFigures(cars("Larkspur", 19, { confirmed: 9, fell: 1 }))).toEqual([
      { dealer: "Larkspur", section: null, state: "too-few", cars: 19 },
      { dealer: "Larkspur", section: "body", state: "too-few", cars: 19 },
    ]);
  });

  it("counts statements, with the car as the cluster", () => {
    const list = [
      ...cars("Larkspur", 18, { confirmed: 30 }),
      ...cars("Larkspur", 2, { confirmed: 20, fell: 10 }),
    ];
    const { estimate, low, high } = clusterShare(
      list.map(({ counts }) => ({ total: counts["body"]?.falls.length ?? 0, count: 30 })),
      0.9,
    );
    expect(known(list)).toMatchObject({
      cars: 20,
      tested: 600,
      fell: 20,
      open: 0,
      fallen: { estimate, low, high },
      fallenIfAllOpen: null,
    });
    expect(estimate).toBe(20 / 600);
  });

  it("leaves what one look alone found worse open, and says what it would come to", () => {
    const list = cars("Larkspur", 20, { confirmed: 9, open: 1 });
    expect(known(list)).toMatchObject({
      tested: 180,
      fell: 0,
      open: 20,
      fallen: { estimate: 0, low: 0 },
      fallenIfAllOpen: { estimate: 0.1 },
    });
  });

  it("goes by what was decided later, of what figures upheld too", () => {
    const body = { confirmed: 6, fell: 1, open: 3 };
    const list = cars("Larkspur", 20, body, [
      ["0", "stood"],
      ["1", "fell"],
      ["2", "settled-by-money"],
    ]);
    expect(known(list)).toMatchObject({
      tested: 160,
      fell: 20,
      open: 20,
      settledByMoney: 20,
      fallen: { estimate: 1 / 8 },
    });
  });

  it("does not take what was only not contradicted for tested", () => {
    const hard = cars("Larkspur", 20, { confirmed: 9, fell: 1 });
    const soft = cars("Larkspur", 20, { confirmed: 9, fell: 1, notContradicted: 90 });
    expect(known(soft)).toEqual({ ...known(hard), notContradicted: 1800 });
    expect(dealerFigures(cars("Larkspur", 20, { notContradicted: 9 }))[0]).toMatchObject({
      state: "too-few",
      cars: 0,
    });
  });

  it("says how much was stated, over all places of all cars", () => {
    const list = [
      ...cars("Larkspur", 10, { confirmed: 1, places: 100, stated: 90 }),
      ...cars("Larkspur", 10, { confirmed: 1, places: 50, stated: 15 }),
    ];
    expect(known(list).stated.estimate).toBeCloseTo(1050 / 1500, 12);
  });

  it("sets the middle of the other dealers beside it from three on, of those alone of whom as much is known", () => {
    const others = (count: number): InspectedCar[] =>
      Array.from({ length: count }, (_, index) =>
        cars(`dealer ${index}`, 20, { confirmed: 10 - index, fell: index, stated: 10 + index }),
      ).flat();
    const own = cars("Larkspur", 20, { confirmed: 9, fell: 1 });
    const few = cars("few", 19, { confirmed: 1, fell: 9 });
    expect(known([...own, ...others(2), ...few]).others).toBeNull();
    const row = known([...own, ...others(3), ...few]);
    expect(row.others).toEqual({ dealers: 3, fallen: 0.1, stated: 11 / 50 });
    expect(row).toEqual({ ...known(own), others: row.others });
  });

  it("keeps sections apart, and counts each car's own by the cars that were tested there", () => {
    const both = Array.from({ length: 21 }, (_, index): InspectedCar => ({
      dealer: "Larkspur",
      counts: {
        body: section({ confirmed: 5 }),
        trunk: section(index === 0 ? { open: 2 } : { confirmed: 4, fell: 1 }),
      },
      decided: new Map(),
    }));
    expect(dealerFigures(both).map(({ section: of, cars: n }) => [of, n])).toEqual([
      [null, 21],
      ["body", 21],
      ["trunk", 20],
    ]);
    expect(known(both, "Larkspur", "trunk")).toMatchObject({ tested: 100, fell: 20, open: 2 });
    expect(known(both)).toMatchObject({ tested: 205, fell: 20, open: 2 });
  });
});

const body = fc.record({
  confirmed: fc.integer({ min: 1, max: 60 }),
  fell: fc.integer({ min: 0, max: 12 }),
  open: fc.integer({ min: 0, max: 12 }),
});
const fleet = fc.array(body, { minLength: 20, maxLength: 40 });
const RUNS = { numRuns: 1000 };

const asCars = (bodies: readonly Short[]): InspectedCar[] => bodies.map((each) => car("Larkspur", each));
const ifAllOpen = ({ fallen, fallenIfAllOpen }: Known): number => (fallenIfAllOpen ?? fallen).estimate;

describe("what never raises a dealer", () => {
  it("a statement more that is false: upheld or not, the share does not fall", () => {
    fc.assert(
      fc.property(fleet, fc.nat(), fc.boolean(), (bodies, at, upheld) => {
        const place = at % bodies.length;
        const worse = bodies.map((each, index) =>
          index === place && each.confirmed > 1
            ? {
                ...each,
                confirmed: each.confirmed - 1,
                [upheld ? "fell" : "open"]: each[upheld ? "fell" : "open"] + 1,
              }
            : each,
        );
        const [before, after] = [known(asCars(bodies)), known(asCars(worse))];
        expect(after.fallen.estimate).toBeGreaterThanOrEqual(before.fallen.estimate);
        expect(ifAllOpen(after)).toBeGreaterThanOrEqual(ifAllOpen(before));
      }),
      RUNS,
    );
  });

  it("a true statement less, or a softer one: the share does not fall, and silence shows", () => {
    fc.assert(
      fc.property(fleet, fc.nat(), fc.boolean(), (bodies, at, silent) => {
        const place = at % bodies.length;
        const less = (index: number, confirmed: number): Short =>
          index === place && confirmed > 1
            ? {
                confirmed: confirmed - 1,
                ...(silent ? { stated: 39 } : { notContradicted: 1 }),
              }
            : {};
        const [before, after] = [
          known(asCars(bodies)),
          known(asCars(bodies.map((each, index) => ({ ...each, ...less(index, each.confirmed) })))),
        ];
        expect(after.fallen.estimate).toBeGreaterThanOrEqual(before.fallen.estimate);
        expect(after.stated.estimate).toBeLessThanOrEqual(before.stated.estimate);
      }),
      RUNS,
    );
  });

  it("the order in which cars come, and who else is there", () => {
    fc.assert(
      fc.property(fleet, fleet, (bodies, others) => {
        const own = known(asCars(bodies));
        const more = others.map((each) => car("other", each));
        expect(known([...more, ...asCars(bodies)])).toEqual(own);
        expect(known(asCars(bodies.toReversed())).fallen.estimate).toBe(own.fallen.estimate);
      }),
      { numRuns: 1000 },
    );
  });
});
