import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { combineUncertainty, contribution } from "./index.ts";

const components = fc.array(
  fc.record({
    standardUncertainty: fc.double({ min: 0, max: 1e3, noNaN: true }),
    sensitivity: fc.double({ min: 0.1, max: 10, noNaN: true }),
  }),
  { maxLength: 8 },
);

describe("combineUncertainty", () => {
  it("has the results its examples state", () => {
    expect(contribution({ standardUncertainty: 2, sensitivity: -3 })).toBe(6);
    expect(combineUncertainty([{ standardUncertainty: 3 }, { standardUncertainty: 2, sensitivity: 2 }])).toBe(
      5,
    );
  });

  it("takes a sensitivity left out as 1, and no components as no uncertainty", () => {
    expect(contribution({ standardUncertainty: 2 })).toBe(2);
    expect(combineUncertainty([])).toBe(0);
  });

  it("is at least every contribution and at most their sum", () => {
    fc.assert(
      fc.property(components, (list) => {
        const parts = list.map(contribution);
        const u = combineUncertainty(list);
        expect(u).toBeGreaterThanOrEqual(Math.max(0, ...parts) * (1 - 1e-12) - 1e-150);
        expect(u).toBeLessThanOrEqual(parts.reduce((a, b) => a + b, 0) * (1 + 1e-12) + 1e-150);
      }),
      { numRuns: 1000 },
    );
  });
});
