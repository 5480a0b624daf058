import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { benjaminiHochberg } from "./index.ts";

const probabilities = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 30 });

describe("benjaminiHochberg", () => {
  it("has the result its example states", () => {
    const [a, b, c] = benjaminiHochberg([0.01, 0.04, 0.03]);
    expect(a).toBeCloseTo(0.03, 14);
    expect(b).toBeCloseTo(0.04, 14);
    expect(c).toBeCloseTo(0.04, 14);
  });

  it("has nothing to say of nothing, and leaves one p-value as it is", () => {
    expect(benjaminiHochberg([])).toEqual([]);
    expect(benjaminiHochberg([0.2])).toEqual([0.2]);
    expect(benjaminiHochberg([1, 0])).toEqual([1, 0]);
  });

  it("refuses what is no probability", () => {
    const refusal = new RangeError("p-values lie between 0 and 1.");
    for (const p of [-0.1, 1.1, Number.NaN]) expect(() => benjaminiHochberg([0.5, p])).toThrow(refusal);
  });

  it("calls exactly what the step-up procedure calls", () => {
    fc.assert(
      fc.property(probabilities, fc.double({ min: 0.01, max: 0.99, noNaN: true }), (pValues, rate) => {
        const sorted = pValues.toSorted((a, b) => a - b);
        const last = sorted.findLastIndex((p, i) => p * pValues.length <= rate * (i + 1));
        const line = last < 0 ? -1 : (sorted[last] ?? -1);
        const qValues = benjaminiHochberg(pValues);
        const called = qValues.map((q) => q <= rate);
        fc.pre(qValues.every((q) => Math.abs(q - rate) > 1e-12));
        expect(called).toEqual(pValues.map((p) => p <= line));
      }),
      { numRuns: 1000 },
    );
  });

  it("never lowers a p-value, keeps their order, stays under 1", () => {
    fc.assert(
      fc.property(probabilities, (pValues) => {
        const qValues = benjaminiHochberg(pValues);
        const rows = pValues.map((p, i) => ({ p, q: qValues[i] ?? Number.NaN })).sort((a, b) => a.p - b.p);
        for (const [i, { p, q }] of rows.entries()) {
          expect(q).toBeGreaterThanOrEqual(p * (1 - 1e-12));
          expect(q).toBeLessThanOrEqual(1);
          expect(q).toBeGreaterThanOrEqual(rows[i - 1]?.q ?? 0);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
