import { describe, expect, it } from "vitest";
import { chanceInterval } from "./chance-interval.ts";
import { LEAST_ITEMS, agreementFrom, tooAlike } from "./index.ts";
import { proportions, sumOverCells } from "./table.ts";

const figures = { coefficient: 0.5, standardError: 0.1, observed: 0.7, expected: 0.4, items: 50 };
const one = (weight: number, disagreement: number) => ({ weight, disagreement, chance: 0 });
const interval = (disagreeing: number) => ({
  items: [one(50 - disagreeing, 0), one(disagreeing, 1)],
  atChance: [one(0.4, 0), one(0.6, 1)],
  expectedDisagreement: 0.6,
  degreesOfFreedom: Infinity,
});

describe("agreementFrom", () => {
  it("has the figures it is given and the ends of chanceInterval, of the confidence asked for", () => {
    const result = agreementFrom(figures, interval(15), 0.9);
    expect(result).toEqual({ kind: "estimated", ...figures, ...chanceInterval(interval(15), 0.9) });
    expect(agreementFrom(figures, interval(15))).toEqual(agreementFrom(figures, interval(15), 0.95));
  });

  it("is that of Fisher's scale, by hand", () => {
    // 51 items, 15.6 disagree: c = 1 − (15.6/51)/0.6; each item moves it by 1/0.6.
    const share = 15.6 / 51;
    const reach =
      (1.959963984540054 * Math.sqrt((share * (1 - share)) / 49)) / 0.6 / (1 - (1 - share / 0.6) ** 2);
    const { low, high } = agreementFrom(figures, interval(15));
    expect(low).toBeCloseTo(Math.tanh(Math.atanh(1 - share / 0.6) - reach), 12);
    expect(high).toBeCloseTo(Math.tanh(Math.atanh(1 - share / 0.6) + reach), 12);
  });

  it("always holds the coefficient", () => {
    expect(agreementFrom({ ...figures, coefficient: 1 }, interval(15)).high).toBe(1);
    expect(agreementFrom({ ...figures, coefficient: -0.9 }, interval(15)).low).toBe(-0.9);
    expect(agreementFrom({ ...figures, coefficient: -1.4 }, interval(15)).low).toBe(-1);
  });
});

describe("tooAlike", () => {
  it("has the result its example states", () => {
    expect(tooAlike(12, 0.25, 10)).toEqual({ kind: "tooFew", items: 12, least: 20 });
  });

  it("asks for half of the least in disagreements by chance, and never for less than the least", () => {
    expect(tooAlike(20, 0.25, 10)).toBeUndefined();
    expect(tooAlike(19, 0.25, 10)).toEqual({ kind: "tooFew", items: 19, least: 20 });
    expect(tooAlike(6, 0.8, 10)).toEqual({ kind: "tooFew", items: 6, least: 10 });
  });
});

describe("LEAST_ITEMS", () => {
  it("says nothing of fewer than ten items", () => {
    expect(LEAST_ITEMS).toBe(10);
  });
});

describe("proportions", () => {
  it("has cells and margins", () => {
    const table = proportions([
      [1, 2],
      [0, 5],
    ]);
    expect(table).toEqual({
      items: 8,
      cells: [
        [0.125, 0.25],
        [0, 0.625],
      ],
      rows: [0.375, 0.625],
      columns: [0.125, 0.875],
    });
    expect(sumOverCells(table.cells, (cell, i, j) => cell * (10 * i + j))).toBeCloseTo(0.25 + 0.625 * 11, 12);
  });

  it("refuses a table that is not square or has a negative count", () => {
    expect(() => proportions([[1, 2]])).toThrow(new RangeError("The table must be square."));
    expect(() => proportions([[1, 2], [3]])).toThrow(new RangeError("The table must be square."));
    const refusal = new RangeError("Counts must be numbers from 0.");
    expect(() =>
      proportions([
        [1, 2],
        [3, -1],
      ]),
    ).toThrow(refusal);
    expect(() =>
      proportions([
        [1, 2],
        [3, Number.NaN],
      ]),
    ).toThrow(refusal);
  });
});
