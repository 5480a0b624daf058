import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { leastCostAssignment } from "./index.ts";

const total = (costs: number[][], columns: readonly number[]): number =>
  columns.reduce((sum, column, row) => sum + (costs[row]?.[column] ?? Number.NaN), 0);

/** Every way of giving each row a column of its own. */
const leastByTrying = (costs: number[][], row = 0, taken: readonly number[] = []): number => {
  const options = costs[row];
  if (options === undefined) return 0;
  const tries = options.map((cost, column) =>
    taken.includes(column)
      ? Number.POSITIVE_INFINITY
      : cost + leastByTrying(costs, row + 1, [...taken, column]),
  );
  return Math.min(...tries);
};

const matrix = fc
  .tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 0, max: 3 }))
  .chain(([rows, more]) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: rows + more, maxLength: rows + more }), {
      minLength: rows,
      maxLength: rows,
    }),
  );

describe("leastCostAssignment", () => {
  it("costs the least of all assignments, each column once", () => {
    fc.assert(
      fc.property(matrix, (costs) => {
        const columns = leastCostAssignment(costs);
        expect(new Set(columns).size).toBe(costs.length);
        expect(total(costs, columns)).toBe(leastByTrying(costs));
      }),
      { numRuns: 2000 },
    );
  });

  it("takes the first of equal costs for a single row", () => {
    expect(leastCostAssignment([[5, 2, 2]])).toEqual([1]);
  });

  it("assigns nothing to nothing", () => {
    expect(leastCostAssignment([])).toEqual([]);
  });

  it("refuses more rows than columns", () => {
    expect(() => leastCostAssignment([[1], [2]])).toThrow(/2 rows/);
  });
});
