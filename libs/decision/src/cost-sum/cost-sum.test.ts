import { array, assert, constantFrom, double, integer, property, record } from "fast-check";
import { expect, test } from "vitest";
import { closedForm, costSum } from "./index.ts";
import type { CostSum, UncertainCost } from "./index.ts";

const rows: readonly UncertainCost[] = [
  { low: 200, likely: 350, high: 900, probability: 0.8, group: "brakes" },
  { low: 100, likely: 150, high: 400, probability: 0.3, group: "brakes" },
  { low: 1500, likely: 2400, high: 6000, probability: 0.5, group: "body" },
  { low: 60, likely: 80, high: 120, probability: 1, group: "wheels" },
];
const options = { correlation: 0, draws: 100_000, seed: 7 };

/** How many standard errors, reckoned from the closed form, the mean of so many draws lies off. */
const errorsOff = ({ mean, closedForm: { mean: expected, standardDeviation } }: CostSum): number =>
  Math.abs(mean - expected) / (standardDeviation / Math.sqrt(options.draws));

test("without correlation the draws have the closed form's mean, within 3 standard errors, and standard deviation", () => {
  for (const seed of [1, 2, 3, 4, 5, 6, 7, 8]) {
    const sum = costSum(rows, { ...options, seed });
    expect(errorsOff(sum)).toBeLessThan(3);
    expect(sum.standardDeviation / sum.closedForm.standardDeviation).toBeCloseTo(1, 1.7);
  }
});

test("the same seed gives the same figures, another seed others", () => {
  expect(costSum(rows, options)).toEqual(costSum(rows, options));
  expect(costSum(rows, { ...options, seed: 8 }).mean).not.toBe(costSum(rows, options).mean);
});

test("correlation within a group widens the total and keeps its mean", () => {
  const free = costSum(rows, options);
  const bound = costSum(rows, { ...options, correlation: 0.8 });
  expect(bound.standardDeviation).toBeGreaterThan(free.standardDeviation);
  // The closed form's deviation is the narrower one, of no correlation: its error asks more than their own would.
  expect(errorsOff(bound)).toBeLessThan(3);
});

test("fully correlated equal costs rise and fall together", () => {
  const [first] = rows;
  if (first === undefined) throw new Error("a cost is given");
  const alone = costSum([first], options);
  const twice = costSum([first, first], { ...options, correlation: 1 });
  expect(twice.standardDeviation / (2 * alone.standardDeviation)).toBeCloseTo(1, 1.7);
});

test("a certain cost is drawn as itself, an impossible one never, and no cost sums to nothing", () => {
  const certain: UncertainCost = { low: 5, likely: 5, high: 5, probability: 1, group: "a" };
  expect(costSum([certain], options)).toMatchObject({ p10: 5, p50: 5, p90: 5, standardDeviation: 0 });
  expect(costSum([{ ...certain, probability: 0 }], options).p90).toBe(0);
  expect(costSum([], options)).toMatchObject({ p10: 0, p90: 0, mean: 0 });
});

test("no point lies between nothing and the least that can be asked for", () => {
  for (const probability of [0.05, 0.0999, 0.1, 0.1001, 0.5, 0.9, 0.95])
    for (const low of [1000, 700])
      for (let seed = 1; seed <= 20; seed += 1) {
        const one: UncertainCost = { low, likely: 1000, high: 1000, probability, group: "a" };
        const { p10, p50, p90 } = costSum([one], { correlation: 0, draws: 2000, seed });
        for (const point of [p10, p50, p90]) expect(point === 0 || point >= low).toBe(true);
      }
});

test("a point is the least total that so many draws do not exceed", () => {
  const even: UncertainCost = { low: 5, likely: 5, high: 5, probability: 0.5, group: "a" };
  for (let seed = 1; seed <= 50; seed += 1) {
    const { p50, mean } = costSum([even], { correlation: 0, draws: 20, seed });
    // Draws that fall due: half or fewer leave the median at nothing.
    expect(p50).toBe(Math.round((mean / 5) * 20) <= 10 ? 0 : 5);
  }
});

test("a median follows the probability: rarer than half the time it costs nothing", () => {
  const rare = costSum([{ low: 10, likely: 20, high: 40, probability: 0.4, group: "a" }], options);
  expect(rare.p50).toBe(0);
  expect(rare.p90).toBeGreaterThan(10);
});

test("quantiles are those of the beta distribution", () => {
  const { p10, p50, p90 } = costSum([{ low: 0, likely: 25, high: 100, probability: 1, group: "a" }], {
    ...options,
    draws: 400_000,
  });
  // Quantiles of Beta(2, 4): 0.1122, 0.3138, 0.5839, recomputed from I(x; 2, 4) = 1 − (1 − x)^5 − 5x(1 − x)^4.
  expect(p10).toBeCloseTo(11.22, 0);
  expect(p50).toBeCloseTo(31.38, 0);
  expect(p90).toBeCloseTo(58.39, 0);
});

const cost = record({
  low: integer({ min: 0, max: 1000 }),
  more: integer({ min: 0, max: 1000 }),
  most: integer({ min: 0, max: 1000 }),
  probability: double({ min: 0, max: 1, noNaN: true }),
  group: constantFrom("a", "b", "c"),
}).map(({ low, more, most, probability, group }) => ({
  low,
  likely: low + more,
  high: low + more + most,
  probability,
  group,
}));

test("the points are in order and inside what is possible", () => {
  assert(
    property(array(cost, { maxLength: 6 }), double({ min: 0, max: 1, noNaN: true }), (costs, correlation) => {
      const { p10, p50, p90 } = costSum(costs, { correlation, draws: 64, seed: 3 });
      const most = costs.reduce((sum, { high }) => sum + high, 0);
      expect(p10).toBeGreaterThanOrEqual(0);
      expect(p50).toBeGreaterThanOrEqual(p10);
      expect(p90).toBeGreaterThanOrEqual(p50);
      expect(p90).toBeLessThanOrEqual(most * (1 + 1e-9));
    }),
    { numRuns: 1000 },
  );
});

test("scaling every cost scales the total", () => {
  assert(
    property(array(cost, { minLength: 1, maxLength: 4 }), integer({ min: 2, max: 9 }), (costs, factor) => {
      const scaled = costs.map((one) => ({
        ...one,
        low: one.low * factor,
        likely: one.likely * factor,
        high: one.high * factor,
      }));
      const small = { correlation: 0.3, draws: 32, seed: 5 };
      const [before, after] = [costSum(costs, small), costSum(scaled, small)];
      expect(after.p90).toBeCloseTo(before.p90 * factor, 6);
      expect(closedForm(scaled).standardDeviation).toBeCloseTo(
        closedForm(costs).standardDeviation * factor,
        6,
      );
    }),
    { numRuns: 1000 },
  );
});

test("what cannot be summed is refused", () => {
  const [first] = rows;
  expect(() => costSum(rows, { ...options, correlation: 1.1 })).toThrow(/correlation lies between/);
  expect(() => costSum(rows, { ...options, draws: 0 })).toThrow(/whole number/);
  expect(() => costSum([{ ...first!, probability: -0.1 }], options)).toThrow(/probability lies between/);
});

test("costs of one group go together, those of two do not", () => {
  const even = { low: 0, likely: 50, high: 100, probability: 1 };
  const bound = { ...options, correlation: 1 };
  const alone = costSum([{ ...even, group: "a" }], bound).standardDeviation;
  const together = costSum(
    ["a", "a"].map((group) => ({ ...even, group })),
    bound,
  ).standardDeviation;
  const apart = costSum(
    ["a", "b"].map((group) => ({ ...even, group })),
    bound,
  ).standardDeviation;
  expect(together / alone).toBeCloseTo(2, 1);
  expect(apart / alone).toBeCloseTo(Math.SQRT2, 1);
});

test("of two draws the standard deviation is their distance over the root of two, and one draw is itself", () => {
  const wide: UncertainCost = { low: 10, likely: 40, high: 90, probability: 1, group: "a" };
  const { p10, p90, standardDeviation } = costSum([wide], { correlation: 0, draws: 2, seed: 3 });
  expect(standardDeviation).toBeCloseTo((p90 - p10) / Math.SQRT2, 9);
  const one = costSum([wide], { correlation: 0, draws: 1, seed: 3 });
  expect(one).toMatchObject({ p10: one.p90, mean: one.p50, standardDeviation: 0 });
});

const likeliestAt = (likely: number) =>
  costSum([{ low: 0, likely, high: 100, probability: 1, group: "a" }], { ...options, draws: 400_000 });

test("a cost likeliest at its end follows Beta(1, 5) or Beta(5, 1)", () => {
  // Quantiles in closed form: 1 − (1 − p)^(1/5), and p^(1/5).
  const low = likeliestAt(0);
  const high = likeliestAt(100);
  for (const [share, point] of [
    [0.1, "p10"],
    [0.5, "p50"],
    [0.9, "p90"],
  ] as const) {
    expect(low[point]).toBeCloseTo(100 * (1 - (1 - share) ** 0.2), 0);
    expect(high[point]).toBeCloseTo(100 * share ** 0.2, 0);
  }
});

test("the same seed gives the same figures for ever", () => {
  const small = { draws: 1001, seed: 20_260_512 };
  expect(costSum(rows, { ...small, correlation: 0 })).toMatchInlineSnapshot(`
    {
      "closedForm": {
        "mean": 1896.6666666666667,
        "standardDeviation": 1543.3973554549705,
      },
      "mean": 1894.1426466178739,
      "p10": 349.0052894412446,
      "p50": 1077.1349204853002,
      "p90": 3979.836513079264,
      "standardDeviation": 1518.7173314376728,
    }
  `);
  expect(costSum(rows, { ...small, correlation: 0.5 })).toMatchInlineSnapshot(`
    {
      "closedForm": {
        "mean": 1896.6666666666667,
        "standardDeviation": 1543.3973554549705,
      },
      "mean": 1875.389874501386,
      "p10": 326.7886692128708,
      "p50": 1076.3899252465364,
      "p90": 3876.471089974418,
      "standardDeviation": 1512.5996919920449,
    }
  `);
});

test("a correlation or a probability outside 0 and 1 is refused on either side", () => {
  const [first] = rows;
  expect(() => costSum(rows, { ...options, correlation: -0.1 })).toThrow(/correlation lies between/);
  expect(() => costSum([{ ...first!, probability: 1.1 }], options)).toThrow(/probability lies between/);
});
