import { describe, expect, it } from "vitest";
import type { CrossedReading } from "../crossed-effects/index.ts";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { varianceComponents } from "./index.ts";

/** Inspectors and gauges that each meet once. */
const crossed = (rows: number, columns: number, value: (i: number, j: number) => number): CrossedReading[] =>
  Array.from({ length: rows * columns }, (_, index) => {
    const [i, j] = [Math.floor(index / columns), index % columns];
    return { inspector: `inspector ${i}`, gauge: `gauge ${j}`, value: value(i, j) };
  });

const meanOf = (some: readonly CrossedReading[]): number =>
  some.reduce((sum, { value }) => sum + value, 0) / some.length;

/** Mean squares of a balanced table: where none comes out negative, what they give is restricted maximum likelihood. */
const byMeanSquares = (rows: number, columns: number, table: readonly CrossedReading[]) => {
  const grand = meanOf(table);
  const rowMeans = new Map(
    table.map(({ inspector }) => [inspector, meanOf(table.filter((one) => one.inspector === inspector))]),
  );
  const columnMeans = new Map(
    table.map(({ gauge }) => [gauge, meanOf(table.filter((one) => one.gauge === gauge))]),
  );
  const squares = (means: ReadonlyMap<string, number>): number =>
    Array.from(means.values()).reduce((sum, mean) => sum + (mean - grand) ** 2, 0);
  const rest = table.reduce((sum, { inspector, gauge, value }) => {
    const fitted = (rowMeans.get(inspector) ?? 0) + (columnMeans.get(gauge) ?? 0) - grand;
    return sum + (value - fitted) ** 2;
  }, 0);
  const residual = rest / ((rows - 1) * (columns - 1));
  return {
    inspector: squares(rowMeans) / (rows - 1) - residual / columns,
    gauge: squares(columnMeans) / (columns - 1) - residual / rows,
    residual,
  };
};

describe("varianceComponents", () => {
  it("is what mean squares give in a balanced table", () => {
    const random = seededRandom(21);
    for (let round = 0; round < 5; round += 1) {
      const [leans, offsets] = [Array.from({ length: 6 }, () => 2 * normalDeviate(random)), [4, -3, 1, 0, 2]];
      const table = crossed(6, 5, (i, j) => 3 + (leans[i] ?? 0) + (offsets[j] ?? 0) + normalDeviate(random));
      const [found, expected] = [varianceComponents(table), byMeanSquares(6, 5, table)];
      expect(Math.min(...Object.values(expected))).toBeGreaterThan(0);
      expect(found.inspector / expected.inspector).toBeCloseTo(1, 4);
      expect(found.gauge / expected.gauge).toBeCloseTo(1, 4);
      expect(found.residual / expected.residual).toBeCloseTo(1, 4);
    }
  });

  it("lets a component that is not there come near to nought, and stay positive", () => {
    const table = crossed(5, 5, (i, j) => 10 * i + ((i + j) % 5));
    const { inspector, gauge, residual } = varianceComponents(table);
    expect(gauge).toBeGreaterThan(0);
    expect(gauge).toBeLessThan(0.05 * residual);
    expect(inspector).toBeGreaterThan(200);
  });

  it("finds what was put in where the table has holes, in the mean of many", () => {
    const random = seededRandom(5);
    const sum = { inspector: 0, gauge: 0, residual: 0 };
    const rounds = 30;
    for (let round = 0; round < rounds; round += 1) {
      const [leans, offsets] = [10, 8].map((count) =>
        Array.from({ length: count }, () => normalDeviate(random)),
      );
      const all = crossed(
        10,
        8,
        (i, j) => (leans?.[i] ?? 0) + 2 * (offsets?.[j] ?? 0) + 0.5 * normalDeviate(random),
      );
      const found = varianceComponents(all.filter(() => random() < 0.7));
      sum.inspector += found.inspector / rounds;
      sum.gauge += found.gauge / rounds;
      sum.residual += found.residual / rounds;
    }
    expect(Math.abs(sum.inspector - 1)).toBeLessThan(0.35);
    expect(Math.abs(sum.gauge - 4)).toBeLessThan(1.4);
    expect(Math.abs(sum.residual - 0.25)).toBeLessThan(0.03);
  });

  it("does not take what those who were read against add for scatter", () => {
    const random = seededRandom(8);
    const leans = Array.from({ length: 6 }, () => 2 * normalDeviate(random));
    const table = crossed(6, 5, (i, j) => (leans[i] ?? 0) + j + normalDeviate(random));
    const said = (by: number) =>
      [...table, ...table.map((one) => ({ ...one, value: one.value + normalDeviate(seededRandom(3)) }))].map(
        (one, index) => ({ ...one, against: `${index % 3}`, value: one.value + by * (index % 3) }),
      );
    const [near, far] = [varianceComponents(said(0)), varianceComponents(said(100))];
    for (const name of ["inspector", "gauge", "residual"] as const)
      expect(far[name] / near[name]).toBeCloseTo(1, 3);
    const unlike = table.map((one, index) => ({ ...one, against: `${index}` }));
    expect(() => varianceComponents(unlike)).toThrow(RangeError);
  });

  it("refuses one inspector or one gauge, and values that are all the same", () => {
    const refusal = new RangeError("Variance components need at least two inspectors and two gauges.");
    expect(() => varianceComponents(crossed(1, 4, (_, j) => j))).toThrow(refusal);
    expect(() => varianceComponents(crossed(4, 1, (i) => i))).toThrow(refusal);
    const same = new RangeError("Variance components need readings that differ.");
    expect(() => varianceComponents(crossed(3, 3, () => 1))).toThrow(same);
    expect(() => varianceComponents(crossed(3, 3, () => Number.NaN))).toThrow(same);
  });
});
