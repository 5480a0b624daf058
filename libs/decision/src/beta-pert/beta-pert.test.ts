import { assert, double, property } from "fast-check";
import { expect, test } from "vitest";
import { betaPertMean, betaPertShape, betaPertVariance, pertRuleVariance } from "./index.ts";

const amount = double({ min: 0, max: 1e6, noNaN: true });

test("the mean lies between the ends, the variance is at most that of the symmetric case, the shapes add up to six", () => {
  const cases = property(amount, amount, amount, (...amounts) => {
    const [low, likely, high] = amounts.sort((a, b) => a - b);
    const mean = betaPertMean({ low, likely, high });
    expect(mean).toBeGreaterThanOrEqual(low * (1 - 1e-12));
    expect(mean).toBeLessThanOrEqual(high * (1 + 1e-12));
    expect(betaPertVariance({ low, likely, high })).toBeLessThanOrEqual(
      ((high - low) ** 2 / 28) * (1 + 1e-9),
    );
    const { alpha, beta } = betaPertShape({ low, likely, high });
    expect(alpha + beta).toBeCloseTo(6, 9);
  });
  assert(cases, { numRuns: 1000 });
});

test("mean and variance are those of the beta distribution itself", () => {
  const { alpha, beta } = betaPertShape({ low: 3, likely: 5, high: 10 });
  expect(3 + (7 * alpha) / (alpha + beta)).toBeCloseTo(betaPertMean({ low: 3, likely: 5, high: 10 }), 12);
  const variance = (49 * alpha * beta) / ((alpha + beta) ** 2 * (alpha + beta + 1));
  expect(variance).toBeCloseTo(betaPertVariance({ low: 3, likely: 5, high: 10 }), 12);
});

test("the two variances differ and each is named", () => {
  expect(Math.sqrt(betaPertVariance({ low: 3, likely: 5, high: 10 }))).toBeCloseTo(1.2677, 4);
  expect(Math.sqrt(pertRuleVariance({ low: 3, likely: 5, high: 10 }))).toBeCloseTo(1.1667, 4);
});

test("a certain cost has no variance, and ends out of order are refused", () => {
  expect(betaPertVariance({ low: 7, likely: 7, high: 7 })).toBe(0);
  expect(betaPertShape({ low: 7, likely: 7, high: 7 })).toEqual({ alpha: 3, beta: 3 });
  expect(() => betaPertMean({ low: 2, likely: 1, high: 3 })).toThrow(/low ≤ likely ≤ high, not 2, 1, 3/);
  expect(() => pertRuleVariance({ low: 2, likely: 3, high: 1 })).toThrow(RangeError);
});
