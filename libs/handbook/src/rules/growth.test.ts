import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { rules } from "./index.ts";

const overNumbers = rules.flatMap(({ id, growth: { numbers: rule } }) =>
  rule === undefined ? [] : [[id, rule] as const],
);

/** Evenly spread; `fc.double` would crowd near 0. */
const evenly = (high: number) => fc.integer({ min: 0, max: 10_000 }).map((step) => (high * step) / 10_000);
const numbers = fc.array(evenly(1), { minLength: 5, maxLength: 5 });
const uncertainty = fc.oneof(fc.constant(0), evenly(0.4), evenly(0.02));

describe("more uncertainty moves a verdict only to cannot-tell", { timeout: 120_000 }, () => {
  it.each(overNumbers)("%s", (_, rule) => {
    fc.assert(
      fc.property(numbers, uncertainty, uncertainty, (n, u, more) => {
        const before = rule(n, u).verdict;
        expect([before, "cannot-tell"]).toContain(rule(n, u + more).verdict);
      }),
      { numRuns: 1000 },
    );
  });

  it.each(overNumbers)("%s gives every verdict somewhere, so the test above can fail", (_, rule) => {
    const seen = new Set(
      fc
        .sample(fc.tuple(numbers, fc.constantFrom(0, 0.001, 0.1, 0.4)), { numRuns: 4000, seed: 7 })
        .map(([n, u]) => rule(n, u).verdict),
    );
    expect([...seen].toSorted()).toEqual(["breaks", "cannot-tell", "holds"]);
  });
});

const range = fc
  .tuple(fc.integer({ min: 0, max: 900 }), fc.integer({ min: 0, max: 60 }))
  .map(([first, length]) => ({ first, last: first + length }));
const dates = fc.array(range, { minLength: 1, maxLength: 3 });

const overDates = rules.flatMap(({ id, growth }) =>
  Object.entries(growth.dates).map(([name, rule]) => [`${id}: ${name}`, rule] as const),
);

describe("more dates a code can mean move a verdict only to cannot-tell", { timeout: 120_000 }, () => {
  it.each(overDates)("%s", (_, rule) => {
    fc.assert(
      fc.property(dates, dates, dates, (one, more, other) => {
        const before = rule(one, other).verdict;
        expect([before, "cannot-tell"]).toContain(rule([...one, ...more], other).verdict);
        expect([rule(other, one).verdict, "cannot-tell"]).toContain(rule(other, [...one, ...more]).verdict);
      }),
      { numRuns: 1000 },
    );
  });
});
