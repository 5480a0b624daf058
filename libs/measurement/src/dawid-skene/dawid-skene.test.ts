import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { seededRandom } from "../random/index.ts";
import { dawidSkene } from "./index.ts";
import type { Rating } from "./index.ts";

const ratings = (rows: readonly (readonly number[])[]): Rating[] =>
  rows.flatMap((row, item) => row.map((category, rater) => ({ item, rater, category })));

/** Items with a known truth, answered by people who are right with a known chance. */
const simulate = (seed: number, items: number, skills: readonly number[]) => {
  const random = seededRandom(seed);
  const truths = Array.from({ length: items }, () => Number(random() < 0.6));
  const rows = truths.map((truth) => skills.map((skill) => (random() < skill ? truth : 1 - truth)));
  return { truths, rows };
};

describe("dawidSkene", () => {
  it("has the result its example states", () => {
    const { posterior } = dawidSkene(
      [
        { item: 0, rater: 0, category: 1 },
        { item: 0, rater: 1, category: 1 },
      ],
      2,
    );
    expect(posterior).toEqual([[0, 1]]);
  });

  it("finds the truth and the skills of people who are mostly right", () => {
    const { truths, rows } = simulate(3, 500, [0.95, 0.8, 0.7, 0.9]);
    const result = dawidSkene(ratings(rows), 2);
    const found = result.posterior.map((row) => Number((row[1] ?? 0) > 0.5));
    const right = found.filter((category, i) => category === truths[i]).length;
    expect(right / truths.length).toBeGreaterThan(0.93);
    expect(result.prevalence[1]).toBeCloseTo(0.6, 1);
    for (const [rater, skill] of [0.95, 0.8, 0.7, 0.9].entries()) {
      expect(Math.abs((result.confusion[rater]?.[1]?.[1] ?? 0) - skill)).toBeLessThan(0.06);
    }
    expect(result.converged).toBe(true);
    expect(result.confusion[0]?.[0]?.[0]).toBeGreaterThan(0.9);
  });

  it("outvotes two poor answers by one good one, once it knows who is good", () => {
    const { rows } = simulate(9, 400, [0.99, 0.6, 0.6, 0.9]);
    const result = dawidSkene(ratings([...rows, [1, 0, 0, 1]]), 2, { tolerance: 1e-6 });
    expect(result.posterior.at(-1)?.[1]).toBeGreaterThan(0.9);
  });

  it("adds up to 1 everywhere, also with gaps, repeats and a truth nobody met", () => {
    const rating = fc.record({
      item: fc.integer({ min: 0, max: 5 }),
      rater: fc.integer({ min: 0, max: 2 }),
      category: fc.integer({ min: 0, max: 2 }),
    });
    const base = [0, 1, 2, 3, 4, 5].map((item) => ({ item, rater: item % 3, category: item % 2 }));
    fc.assert(
      fc.property(fc.array(rating, { maxLength: 20 }), (more) => {
        const result = dawidSkene([...base, ...more], 4, { mostIterations: 10 });
        const rows = [result.prevalence, ...result.posterior, ...result.confusion.flat()];
        for (const row of rows) expect(row.reduce((sum, share) => sum + share, 0)).toBeCloseTo(1, 9);
        expect(result.prevalence[3]).toBe(0);
        expect(result.confusion[0]?.[3]).toEqual([0.25, 0.25, 0.25, 0.25]);
      }),
      { numRuns: 1000 },
    );
  });

  it("never becomes less likely with another iteration", () => {
    const { rows } = simulate(5, 40, [0.9, 0.7, 0.6]);
    const likelihoods = Array.from(
      { length: 15 },
      (_, i) => dawidSkene(ratings(rows), 2, { mostIterations: i + 1 }).logLikelihood,
    );
    for (const [i, likelihood] of likelihoods.entries()) {
      expect(likelihood).toBeGreaterThanOrEqual((likelihoods[i - 1] ?? -Infinity) - 1e-9);
    }
  });

  it("has the log-likelihood of its own figures", () => {
    const rows = [
      [0, 0],
      [0, 1],
      [1, 1],
    ];
    const { prevalence, confusion, logLikelihood } = dawidSkene(ratings(rows), 2, { tolerance: 1e-14 });
    const likelihood = rows.map((row) =>
      prevalence.reduce(
        (sum, share, truth) =>
          sum +
          row.reduce((product, answer, rater) => product * (confusion[rater]?.[truth]?.[answer] ?? 0), share),
        0,
      ),
    );
    expect(logLikelihood).toBeCloseTo(Math.log(likelihood.reduce((a, b) => a * b, 1)), 9);
  });

  it("starts with every truth as likely as its share of the answers, repeats counted", () => {
    const answers = [0, 0, 0, 1].map((category, i) => ({ item: 0, rater: Number(i === 3), category }));
    const { prevalence, iterations } = dawidSkene(answers, 2, { mostIterations: 1 });
    expect([prevalence, iterations]).toEqual([[0.75, 0.25], 1]);
  });

  it("stops at the tolerance, or says that it has not", () => {
    const { rows } = simulate(5, 40, [0.9, 0.7, 0.6]);
    expect(dawidSkene(ratings(rows), 2, { mostIterations: 3 })).toMatchObject({
      iterations: 3,
      converged: false,
    });
    const loose = dawidSkene(ratings(rows), 2, { tolerance: 0.1 });
    const tight = dawidSkene(ratings(rows), 2);
    expect(loose.converged).toBe(true);
    expect(loose.iterations).toBeGreaterThan(1);
    expect(loose.iterations).toBeLessThan(tight.iterations);
  });

  it.each([
    [[{ item: 0, rater: 0, category: 2 }], "Category 2 of only 2."],
    [[{ item: 1, rater: 0, category: 0 }], "An item has no rating."],
    [[{ item: 0.5, rater: 0, category: 0 }], "Items, raters and categories are whole numbers from 0."],
    [[{ item: 0, rater: -1, category: 0 }], "Items, raters and categories are whole numbers from 0."],
  ])("refuses %j", (list, message) => {
    expect(() => dawidSkene(list, 2)).toThrow(new RangeError(message));
  });
});
