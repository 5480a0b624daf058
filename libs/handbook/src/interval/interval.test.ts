import * as fc from "fast-check";
import { estimate } from "@evenhand/measurement/estimate";
import { describe, expect, it } from "vitest";
import { exactly, judge, judgeSpan, productOf, spanOf } from "./index.ts";

const value = fc.double({ min: -100, max: 100, noNaN: true });
const width = fc.double({ min: 0, max: 50, noNaN: true });
const spread = fc.double({ min: 0, max: 10, noNaN: true });
const severity = { holds: 0, "cannot-tell": 1, breaks: 2 } as const;

describe("spanOf", () => {
  it("holds 99 % of a normal estimate", () => {
    const { low, high } = spanOf(estimate(10, 1));
    expect(low).toBeCloseTo(10 - 2.5758293, 6);
    expect(high).toBeCloseTo(10 + 2.5758293, 6);
  });

  it("widens with few degrees of freedom", () => {
    expect(spanOf(estimate(0, 1, 4)).high).toBeCloseTo(4.6040949, 6);
  });

  it.each([
    [1, 2.5758293],
    [2, 2.8070337],
    [3, 3.0233414],
    [4, 3.0233414],
    [5, 3.2272182],
  ])("judged among %i, each stretch is as wide as the next power of two asks", (among, factor) => {
    expect(spanOf(estimate(0, 1), among).high).toBeCloseTo(factor, 6);
  });
});

describe("judge", () => {
  it("passes at equality on both ends", () => {
    expect(judge(exactly(2), { low: 2 })).toBe("holds");
    expect(judge(exactly(2), { high: 2 })).toBe("holds");
    expect(judge(exactly(1.999), { low: 2 })).toBe("breaks");
    expect(judge(exactly(2.001), { high: 2 })).toBe("breaks");
    expect(judge(exactly(5), {})).toBe("holds");
  });

  it.each([
    [0, 1, "cannot-tell"],
    [1, 3, "holds"],
    [3, 4, "cannot-tell"],
    [3.1, 4, "breaks"],
    [0, 0.9, "breaks"],
    [0, 9, "cannot-tell"],
  ] as const)("a stretch from %f to %f against 1 to 3: %s", (low, high, verdict) => {
    expect(judgeSpan({ low, high }, { low: 1, high: 3 })).toBe(verdict);
  });

  it("moves only to cannot-tell when the uncertainty grows", () => {
    fc.assert(
      fc.property(value, spread, spread, value, width, (x, u, more, low, wide) => {
        const zone = { low, high: low + wide };
        const before = judge(estimate(x, u), zone);
        expect([before, "cannot-tell"]).toContain(judge(estimate(x, u + more), zone));
      }),
      { numRuns: 2000 },
    );
  });

  it("is never milder farther out", () => {
    fc.assert(
      fc.property(value, spread, width, width, (limit, u, out, farther) => {
        const near = judge(estimate(limit + out, u), { high: limit });
        const far = judge(estimate(limit + out + farther, u), { high: limit });
        expect(severity[far]).toBeGreaterThanOrEqual(severity[near]);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("productOf", () => {
  it("adds shares of uncertainty in quadrature", () => {
    const { value: product, standardUncertainty } = productOf(2, [
      [estimate(3, 0.03), 2],
      [estimate(4, 0.08), -1],
    ]);
    expect(product).toBeCloseTo(4.5, 12);
    expect(standardUncertainty / product).toBeCloseTo(Math.hypot(2 * 0.01, 0.02), 12);
  });
});
