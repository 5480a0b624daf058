import { describe, expect, it } from "vitest";
import { coverageFactor } from "../student-factor/index.ts";
import { LEAST_ITEMS, agreementFrom } from "./index.ts";
import { proportions, sumOverCells } from "./table.ts";

const figures = { coefficient: 0.5, standardError: 0.1, observed: 0.7, expected: 0.4, items: 50 };

describe("agreementFrom", () => {
  it("has the result its example states", () => {
    const result = agreementFrom(figures, 0.95);
    expect(result).toMatchObject({ kind: "estimated", ...figures });
    expect(result.low).toBeCloseTo(0.5 - 0.19599639845, 10);
    expect(result.high).toBeCloseTo(0.5 + 0.19599639845, 10);
    expect(agreementFrom(figures)).toEqual(result);
  });

  it("uses Student's factor where degrees of freedom are given, and the confidence asked for", () => {
    const result = agreementFrom(figures, 0.9, 4);
    expect(result.high).toBeCloseTo(0.5 + 0.1 * coverageFactor(4, 0.9), 12);
    expect(agreementFrom(figures, 0.9).high).toBeCloseTo(0.5 + 0.1 * 1.6448536, 6);
  });

  it("ends at full agreement and at full disagreement", () => {
    expect(agreementFrom({ ...figures, coefficient: 0.95 }).high).toBe(1);
    expect(agreementFrom({ ...figures, coefficient: -0.95 }).low).toBe(-1);
  });

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
