import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Agreement, EstimatedAgreement } from "../agreement/index.ts";
import { cohenKappa } from "../cohen-kappa/index.ts";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { sampleStandardDeviation } from "../type-a/index.ts";
import { krippendorffAlpha } from "./index.ts";
import type { Level, Unit } from "./index.ts";

const estimated = (agreement: Agreement): EstimatedAgreement => {
  if (agreement.kind !== "estimated") throw new Error(agreement.kind);
  return agreement;
};

const LEVELS: readonly Level[] = ["nominal", "ordinal", "interval", "ratio"];
const answers = fc.constantFrom(1, 2, 3, 4, 5, null);
const data = fc
  .array(fc.array(answers, { minLength: 2, maxLength: 4 }), { minLength: 4, maxLength: 20 })
  .filter((units) => krippendorffAlpha(units, "nominal", { least: 3 }).kind === "estimated");
const levels = fc.constantFrom(...LEVELS);

/** Squared differences of every value of one item with every value of another, added up. */
const distances = (one: readonly number[], other: readonly number[]): number =>
  one.flatMap((a) => other.map((b) => (a - b) ** 2)).reduce((sum, value) => sum + value, 0);

/** Alpha of six answers with one unequal pair: its distance, and the sum over all ordered pairs. */
const alpha = (within: number, pool: number): number => 1 - (2 * within) / 6 / (pool / 30);

describe("krippendorffAlpha", () => {
  it("has the result its example states", () => {
    const units = [
      [1, 1],
      [2, 2],
      [3, 2],
    ];
    const result = estimated(krippendorffAlpha(units, "nominal", { least: 3 }));
    // D_o = 2/6; of 30 ordered pairs of answers 22 differ.
    expect(result.coefficient).toBeCloseTo(1 - 1 / 3 / (22 / 30), 12);
    expect(result.observed).toBeCloseTo(2 / 3, 12);
    expect(result.expected).toBeCloseTo(8 / 30, 12);
    expect(result.items).toBe(3);
  });

  it("reckons each scale's distance by hand", () => {
    const units = [
      [1, 1],
      [1, 3],
      [4, 4],
    ];
    const by = (level: Level) => estimated(krippendorffAlpha(units, level, { least: 3 })).coefficient;
    // Values 1, 1, 1, 3, 4, 4; the one unequal pair counts twice among six answers.
    expect(by("nominal")).toBeCloseTo(alpha(1, 2 * (3 + 6 + 2)), 12);
    expect(by("interval")).toBeCloseTo(alpha(4, 2 * (3 * 4 + 6 * 9 + 2 * 1)), 12);
    expect(by("ratio")).toBeCloseTo(alpha(1 / 4, 2 * (3 / 4 + 6 * (9 / 25) + 2 / 49)), 12);
    // Places by counting: 1 at 1.5, 3 at 3.5, 4 at 5.
    expect(by("ordinal")).toBeCloseTo(alpha(4, 2 * (3 * 4 + 6 * 12.25 + 2 * 2.25)), 12);
  });

  it("has observed and expected as shares of the farthest distance", () => {
    const units = [
      [1, 1],
      [1, 3],
      [5, 5],
    ];
    const { observed, expected, coefficient } = estimated(krippendorffAlpha(units, "interval", { least: 3 }));
    expect(observed).toBeCloseTo(1 - 8 / 6 / 16, 12);
    expect((observed - expected) / (1 - expected)).toBeCloseTo(coefficient, 12);
  });

  it("is 1 without error where all agree", () => {
    const units = Array.from({ length: 10 }, (_, i) => [i % 3, i % 3, null]);
    expect(krippendorffAlpha(units, "interval")).toMatchObject({
      coefficient: 1,
      standardError: 0,
      high: 1,
    });
  });

  it("says no variation where all answers are one", () => {
    const units = Array.from({ length: 10 }, () => [2, 2]);
    for (const level of LEVELS) {
      expect(krippendorffAlpha(units, level)).toEqual({ kind: "noVariation", items: 10 });
    }
  });

  it("says too few, counting only items with two answers", () => {
    const units: Unit[] = [...Array.from({ length: 9 }, (_, i) => [i, i]), [1, null], [null, null]];
    expect(krippendorffAlpha(units, "nominal")).toEqual({ kind: "tooFew", items: 9, least: 10 });
    expect(krippendorffAlpha([...units, [1, 2]], "nominal").kind).toBe("estimated");
    expect(krippendorffAlpha([[1, 2]], "nominal", { least: 1 })).toEqual({
      kind: "tooFew",
      items: 1,
      least: 1,
    });
  });

  it("refuses what is no number, and less than nothing on a ratio scale", () => {
    const refusal = new RangeError("Answers must be finite numbers, and not negative on a ratio scale.");
    expect(() => krippendorffAlpha([[1, Number.NaN]], "nominal")).toThrow(refusal);
    expect(() => krippendorffAlpha([[1, -1]], "ratio")).toThrow(refusal);
    expect(() =>
      krippendorffAlpha(
        [
          [1, 1],
          [1, Infinity],
          [2, 2],
        ],
        "interval",
      ),
    ).toThrow(refusal);
    const units = Array.from({ length: 10 }, (_, i) => [i - 5, i - 4]);
    expect(krippendorffAlpha(units, "interval").kind).toBe("estimated");
    expect(
      krippendorffAlpha(
        units.map((unit) => unit.map((value) => value + 5)),
        "ratio",
      ).kind,
    ).toBe("estimated");
  });

  it("has the standard error of how it moves as each item counts a little more", () => {
    const units = [
      [1, 1, 2],
      [3, 3],
      [2, 4, 4, 3],
      [5, 5, 5],
      [1, 2],
      [4, 5, 1],
    ];
    const weighted = (weights: readonly number[]): number => {
      const total = (of: (unit: readonly number[], i: number) => number): number =>
        units.reduce((sum, unit, i) => sum + (weights[i] ?? 0) * of(unit, i), 0);
      const within = total((unit) => distances(unit, unit) / (unit.length - 1));
      const pool = total((unit) => total((other) => distances(unit, other)));
      // The pool of n² pairs, as the linearization takes it; its alpha is nearer 0 by n/(n − 1).
      return 1 - (total((unit) => unit.length) * within) / pool;
    };
    const step = 1e-5;
    const moves = units.map((_, i) => {
      const [up, down] = [step, -step].map((change) =>
        weighted(units.map((_unit, j) => (i === j ? 1 + change : 1))),
      );
      return ((up ?? 0) - (down ?? 0)) / (2 * step);
    });
    const result = estimated(krippendorffAlpha(units, "interval", { least: 6 }));
    const given = units.flat().length;
    expect(((1 - result.coefficient) * given) / (given - 1)).toBeCloseTo(
      1 - weighted(units.map(() => 1)),
      12,
    );
    expect(result.standardError).toBeCloseTo(sampleStandardDeviation(moves) * Math.sqrt(units.length), 8);
  });

  it("takes nothing as a value of its own on a ratio scale", () => {
    const units = Array.from({ length: 10 }, (_, i) => [i % 2, i % 2]);
    expect(krippendorffAlpha(units, "ratio")).toMatchObject({ kind: "estimated", coefficient: 1 });
  });

  it("is unchanged by leaving out items that cannot be paired, by order, and by who is who", () => {
    fc.assert(
      fc.property(data, levels, (units, level) => {
        const result = estimated(krippendorffAlpha(units, level, { least: 3 }));
        const other = estimated(
          krippendorffAlpha([[3, null], ...units.toReversed().map((unit) => unit.toReversed())], level, {
            least: 3,
          }),
        );
        expect(other.coefficient).toBeCloseTo(result.coefficient, 10);
        expect(other.standardError).toBeCloseTo(result.standardError, 10);
        expect(result.coefficient).toBeLessThanOrEqual(1 + 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  it("does not see names (nominal), a stretch (ordinal, interval) or a unit (ratio)", () => {
    const maps: Record<Level, (value: number) => number> = {
      nominal: (value) => (value * 7) % 11,
      ordinal: (value) => value ** 3,
      interval: (value) => 3 * value - 40,
      ratio: (value) => 25.4 * value,
    };
    fc.assert(
      fc.property(data, levels, (units, level) => {
        const mapped = units.map((unit) => unit.map((value) => (value === null ? null : maps[level](value))));
        const [result, other] = [units, mapped].map((list) =>
          estimated(krippendorffAlpha(list, level, { least: 3 })),
        );
        expect(other?.coefficient).toBeCloseTo(result?.coefficient ?? Number.NaN, 10);
        expect(other?.standardError).toBeCloseTo(result?.standardError ?? Number.NaN, 10);
      }),
      { numRuns: 1000 },
    );
  });

  /*
   * Krippendorff (2011): for two people, nominal data and no gaps, alpha is Scott's pi corrected for sample size,
   * 1 − α = (1 − π)(2n − 1)/2n, so that it goes to pi as n grows; where both people's shares are equal pi is
   * Cohen's kappa, and with squared distances the same holds of kappa with quadratic weights.
   */
  it.each([
    ["nominal", "unweighted"],
    ["interval", "quadratic"],
  ] as const)("%s goes to kappa (%s) as items grow, the shares of both being equal", (level, weights) => {
    const half = fc.array(fc.tuple(fc.constantFrom(0, 1, 2), fc.constantFrom(0, 1, 2)), {
      minLength: 10,
      maxLength: 60,
    });
    fc.assert(
      fc.property(half, (pairs) => {
        const units = pairs.flatMap(([a, b]) => [
          [a, b],
          [b, a],
        ]);
        const table = [0, 1, 2].map((i) =>
          [0, 1, 2].map((j) => units.filter(([a, b]) => a === i && b === j).length),
        );
        const kappa = cohenKappa(table, { weights });
        fc.pre(kappa.kind === "estimated");
        const coefficient = kappa.kind === "estimated" ? kappa.coefficient : Number.NaN;
        const found = estimated(krippendorffAlpha(units, level)).coefficient;
        const n = units.length;
        expect(1 - found).toBeCloseTo(((1 - coefficient) * (2 * n - 1)) / (2 * n), 10);
        expect(Math.abs(found - coefficient)).toBeLessThanOrEqual((1 - coefficient) / (2 * n) + 1e-12);
      }),
      { numRuns: 1000 },
    );
  });

  it("has a standard error as large as alpha really scatters", () => {
    const random = seededRandom(23);
    const draws = Array.from({ length: 300 }, () => {
      const units = Array.from({ length: 80 }, () => {
        const truth = 10 + 4 * normalDeviate(random);
        return [0, 1, 2].map(() => (random() < 0.1 ? null : Math.round(truth + 2 * normalDeviate(random))));
      });
      return estimated(krippendorffAlpha(units, "interval", { confidence: 0.9 }));
    });
    const scatter = sampleStandardDeviation(draws.map(({ coefficient }) => coefficient));
    const stated = draws.reduce((sum, { standardError }) => sum + standardError, 0) / draws.length;
    expect(stated / scatter).toBeGreaterThan(0.9);
    expect(stated / scatter).toBeLessThan(1.1);
  });

  it("has nearly the standard error of resampling the items, on every scale", () => {
    const random = seededRandom(29);
    const units = Array.from({ length: 60 }, () => {
      const truth = 1 + Math.floor(5 * random());
      return [0, 1, 2].map(() => (random() < 0.6 ? truth : 1 + Math.floor(5 * random())));
    });
    for (const level of LEVELS) {
      const resampled = Array.from({ length: 400 }, () => {
        const sample = units.map(() => units[Math.floor(units.length * random())] ?? []);
        return estimated(krippendorffAlpha(sample, level)).coefficient;
      });
      const stated = estimated(krippendorffAlpha(units, level)).standardError;
      expect(Math.abs(stated / sampleStandardDeviation(resampled) - 1)).toBeLessThan(0.12);
    }
  });
});
