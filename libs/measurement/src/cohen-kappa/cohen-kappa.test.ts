import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Matrix } from "../agreement-weights/index.ts";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { coverageFactor } from "../student-factor/index.ts";
import { sampleStandardDeviation } from "../type-a/index.ts";
import { cohenKappa } from "./index.ts";
import type { CohenKappaOptions, EstimatedKappa } from "./index.ts";

const kappaOf = (table: Matrix, options?: CohenKappaOptions): EstimatedKappa => {
  const kappa = cohenKappa(table, { least: 1, ...options });
  if (kappa.kind !== "estimated") throw new Error(kappa.kind);
  return kappa;
};

const tables = fc
  .integer({ min: 2, max: 5 })
  .chain((size) =>
    fc.array(fc.array(fc.integer({ min: 0, max: 20 }), { minLength: size, maxLength: size }), {
      minLength: size,
      maxLength: size,
    }),
  )
  .filter((table) => cohenKappa(table, { least: 2 }).kind === "estimated");

/** One number a category; the order it sorts in is the new order. */
const permuted = (table: Matrix, keys: readonly number[]): Matrix => {
  const order = table.map((_, i) => i).sort((a, b) => (keys[a] ?? 0) - (keys[b] ?? 0) || a - b);
  return order.map((i) => order.map((j) => table[i]?.[j] ?? 0));
};

/** Agreed throughout, nine in ten on one category. */
const alike = (items: number) => [
  [0.9 * items, 0],
  [0, 0.1 * items],
];

/** The interval's length on Fisher's scale. */
const reach = (kappa?: EstimatedKappa): number =>
  Math.atanh(kappa?.high ?? Number.NaN) - Math.atanh(kappa?.low ?? Number.NaN);

describe("cohenKappa", () => {
  it("has the result its example states", () => {
    const kappa = kappaOf([
      [20, 5],
      [10, 15],
    ]);
    expect(kappa.coefficient).toBeCloseTo(0.4, 12);
    expect(kappa.standardError).toBeCloseTo(0.126996063, 9);
    expect([kappa.observed, kappa.expected, kappa.items]).toEqual([0.7, 0.5, 50]);
    expect(kappa.z).toBeCloseTo(0.4 / kappa.nullStandardError, 12);
  });

  it("has the standard error under no agreement, by hand", () => {
    // Shares ½, ½ and 0.6, 0.4: p_e + p_e² − Σ r·c·(r + c) = 0.5 + 0.25 − 0.3·1.1 − 0.2·0.9, over n(1 − p_e)².
    const { nullStandardError } = kappaOf([
      [20, 5],
      [10, 15],
    ]);
    expect(nullStandardError).toBeCloseTo(Math.sqrt(0.24 / (50 * 0.25)), 12);
  });

  it("is 1 without error where all agree, −1 where two categories are always exchanged", () => {
    const all = kappaOf([
      [7, 0],
      [0, 4],
    ]);
    expect(all.coefficient).toBe(1);
    expect([all.standardError, all.high]).toEqual([0, 1]);
    // None of 11 disagrees: at most 28.5 of 100 do (Clopper and Pearson), of 46.3 that would by chance.
    expect(all.low).toBeCloseTo(1 - (1 - 0.025 ** (1 / 11)) / (1 - (49 + 16) / 121), 12);
    expect(
      kappaOf([
        [0, 7],
        [7, 0],
      ]).coefficient,
    ).toBe(-1);
  });

  it("says too few below ten items, or below what the caller says", () => {
    const nine = [
      [3, 0, 0],
      [0, 3, 0],
      [0, 0, 3],
    ];
    expect(cohenKappa(nine)).toEqual({ kind: "tooFew", items: 9, least: 10 });
    expect(cohenKappa(nine, { least: 9 }).kind).toBe("estimated");
    expect(
      cohenKappa([
        [5, 0],
        [0, 5],
      ]).kind,
    ).toBe("estimated");
  });

  it("says too few where chance alone would hardly ever disagree, and how many would do", () => {
    // By chance 2·0.1·0.9 of the items: 3.6 of 20, 5 of 28.
    expect(cohenKappa(alike(20))).toEqual({ kind: "tooFew", items: 20, least: 28 });
    expect(cohenKappa(alike(30)).kind).toBe("estimated");
  });

  it("says no variation where both used one category", () => {
    const table = [
      [0, 0, 0],
      [0, 12, 0],
      [0, 0, 0],
    ];
    expect(cohenKappa(table)).toEqual({ kind: "noVariation", items: 12 });
  });

  it("is 0 when one of them answers always the same", () => {
    expect(
      kappaOf([
        [6, 0],
        [6, 0],
      ]).coefficient,
    ).toBe(0);
  });

  it("has the interval of the confidence asked for", () => {
    const table = [
      [20, 5],
      [10, 15],
    ];
    const [narrow, wide] = [0.9, 0.95].map((confidence) => kappaOf(table, { confidence }));
    expect(reach(narrow) / reach(wide)).toBeCloseTo(coverageFactor(49, 0.9) / coverageFactor(49, 0.95), 12);
  });

  it("unweighted, does not see the order of the categories", () => {
    fc.assert(
      fc.property(tables, fc.array(fc.integer(), { minLength: 5, maxLength: 5 }), (table, keys) => {
        const [kappa, other] = [kappaOf(table), kappaOf(permuted(table, keys))];
        expect(other.coefficient).toBeCloseTo(kappa.coefficient, 12);
        expect(other.standardError).toBeCloseTo(kappa.standardError, 7);
        expect(other.nullStandardError).toBeCloseTo(kappa.nullStandardError, 7);
      }),
      { numRuns: 1000 },
    );
  });

  it("does not mind who is first, nor the categories read backward", () => {
    const weights = fc.constantFrom("unweighted" as const, "linear" as const, "quadratic" as const);
    fc.assert(
      fc.property(tables, weights, (table, chosen) => {
        const kappa = kappaOf(table, { weights: chosen });
        const exchanged = table.map((_, j) => table.map((row) => row[j] ?? 0));
        const backward = table.toReversed().map((row) => row.toReversed());
        expect(kappaOf(exchanged, { weights: chosen }).coefficient).toBeCloseTo(kappa.coefficient, 12);
        expect(kappaOf(backward, { weights: chosen }).standardError).toBeCloseTo(kappa.standardError, 7);
        expect(kappa.coefficient).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  it("weighted makes no difference with two categories", () => {
    const cell = fc.integer({ min: 0, max: 20 });
    fc.assert(
      fc.property(cell, cell, cell, cell, (a, b, c, d) => {
        const table = [
          [a, b],
          [c, d],
        ];
        fc.pre(cohenKappa(table, { least: 2 }).kind === "estimated");
        expect(kappaOf(table, { weights: "quadratic" })).toEqual(kappaOf(table));
      }),
      { numRuns: 1000 },
    );
  });

  it("has a standard error as large as kappa really scatters", () => {
    const random = seededRandom(17);
    const grade = (truth: number): number =>
      Math.min(3, Math.max(0, Math.round(truth + normalDeviate(random))));
    const draws = Array.from({ length: 400 }, () => {
      const table = Array.from({ length: 4 }, () => [0, 0, 0, 0]);
      for (let i = 0; i < 150; i += 1) {
        const truth = Math.floor(4 * random());
        const row = table[grade(truth)];
        const answer = grade(truth);
        if (row !== undefined) row[answer] = (row[answer] ?? 0) + 1;
      }
      return kappaOf(table, { weights: "linear" });
    });
    const scatter = sampleStandardDeviation(draws.map(({ coefficient }) => coefficient));
    const stated = draws.reduce((sum, { standardError }) => sum + standardError, 0) / draws.length;
    expect(stated / scatter).toBeGreaterThan(0.9);
    expect(stated / scatter).toBeLessThan(1.1);
  });
});
