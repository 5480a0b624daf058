import { describe, expect, it } from "vitest";
import type { Matrix } from "../agreement-weights/index.ts";
import { cohenKappa } from "../cohen-kappa/index.ts";
import { gwetAgreement } from "../gwet-agreement/index.ts";
import { krippendorffAlpha } from "../krippendorff-alpha/index.ts";
import { seededRandom } from "../random/index.ts";
import type { Agreement } from "./index.ts";
import { chanceInterval } from "./chance-interval.ts";

const GRADES = [0, 1, 2, 3, 4];
/** Cars whose grades are spread evenly, mostly good, and nearly all the best. */
const SHARES = [
  [0.2, 0.2, 0.2, 0.2, 0.2],
  [0.02, 0.08, 0.2, 0.4, 0.3],
  [0.01, 0.02, 0.07, 0.2, 0.7],
];

const table = (of: (i: number, j: number) => number): number[][] =>
  GRADES.map((i) => GRADES.map((j) => of(i, j)));

/** Both see the same truth; each misses it by a grade or more the seldomer the keener they are. */
const twoObservers = (shares: readonly number[], keenness: number): number[][] => {
  const reads = GRADES.map((truth) => {
    const weights = GRADES.map((grade) => Math.exp(-Math.abs(grade - truth) * keenness));
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    return weights.map((weight) => weight / total);
  });
  return table((i, j) =>
    shares.reduce(
      (sum, share, truth) => sum + share * (reads[truth]?.[i] ?? 0) * (reads[truth]?.[j] ?? 0),
      0,
    ),
  );
};

const draw = (shares: readonly number[][], items: number, random: () => number): number[][] => {
  const counts = table(() => 0);
  for (let item = 0; item < items; item += 1) {
    let left = random();
    const cell = shares.flat().findIndex((share) => (left -= share) < 0);
    const [i, j] = cell < 0 ? [4, 4] : [Math.floor(cell / 5), cell % 5];
    const row = counts[i];
    if (row !== undefined) row[j] = (row[j] ?? 0) + 1;
  }
  return counts;
};

const pairsOf = (counts: Matrix): number[][] =>
  counts.flatMap((row, i) => row.flatMap((count, j) => Array.from({ length: count }, () => [i, j])));

const COEFFICIENTS: Record<string, (counts: Matrix) => Agreement> = {
  "kappa, linear": (counts) => cohenKappa(counts, { weights: "linear" }),
  "kappa, quadratic": (counts) => cohenKappa(counts, { weights: "quadratic" }),
  "AC2, quadratic": (counts) => gwetAgreement(counts, { weights: "quadratic" }),
  "alpha, ordinal": (counts) => krippendorffAlpha(pairsOf(counts), "ordinal"),
};

/** What the coefficient goes to as items grow. */
const truth = (of: (counts: Matrix) => Agreement, shares: Matrix): number => {
  const many = of(shares.map((row) => row.map((share) => Math.round(20_000 * share))));
  if (many.kind !== "estimated") throw new Error(many.kind);
  return many.coefficient;
};

/** Among the draws that are answered for, the share whose interval holds the true coefficient. */
const coverage = (of: (counts: Matrix) => Agreement, shares: number[][], items: number, draws: number) => {
  const random = seededRandom(items);
  const aim = truth(of, shares);
  let [held, answered] = [0, 0];
  for (let i = 0; i < draws; i += 1) {
    const result = of(draw(shares, items, random));
    if (result.kind !== "estimated") continue;
    answered += 1;
    if (result.low <= aim && aim <= result.high) held += 1;
  }
  return { held: held / answered, answered: answered / draws };
};

describe.each(Object.entries(COEFFICIENTS))("the interval of %s", (_, of) => {
  it.each([10, 20, 50])("holds the true coefficient of %d items in 93 to 97 of 100 cases", (items) => {
    const cases = SHARES.flatMap((shares) =>
      [1.1, 2].map((keenness) => coverage(of, twoObservers(shares, keenness), items, 500)),
    );
    const mean = cases.reduce((sum, { held }) => sum + held, 0) / cases.length;
    expect(mean).toBeGreaterThan(0.93);
    expect(mean).toBeLessThan(0.97);
    for (const { held, answered } of cases) {
      expect(held).toBeGreaterThan(0.86);
      expect(answered).toBeGreaterThan(items === 10 ? 0.5 : 0.95);
    }
  });

  it("never says that two people cannot disagree", () => {
    for (const items of [10, 15, 40]) {
      const counts = table((i, j) => (i === j ? items / 5 : 0));
      const result = of(counts);
      expect(result).toMatchObject({ kind: "estimated", coefficient: 1, high: 1 });
      const low = result.kind === "estimated" ? result.low : Number.NaN;
      // Disagreements on 31, 22 and 9 items of 100 would still leave that many without one in a case of forty.
      expect(low).toBeLessThan(1 - (1 - 0.025 ** (1 / items)));
      expect(low).toBeGreaterThan(0.4);
    }
  });
});

const width = (scale: number, confidence: number): number => {
  const result = cohenKappa(
    [
      [6 * scale, scale],
      [scale, 6 * scale],
    ],
    { confidence },
  );
  return result.kind === "estimated" ? result.high - result.low : Number.NaN;
};

describe("chanceInterval", () => {
  it("has the result its example states", () => {
    const interval = {
      items: [{ weight: 10, disagreement: 0, chance: 0 }],
      atChance: [
        { weight: 0.5, disagreement: 0, chance: 0 },
        { weight: 0.5, disagreement: 1, chance: 0 },
      ],
      expectedDisagreement: 0.5,
      degreesOfFreedom: 9,
    };
    const { low, high } = chanceInterval(interval, 0.95);
    // 0.3085 is Clopper and Pearson's upper end for 0 of 10; twice that off full agreement.
    expect(low).toBeCloseTo(1 - 2 * 0.30849710781876083, 12);
    expect(high).toBe(1);
  });

  it("stays between −1 and 1 where two always disagree as far as they can", () => {
    const opposed = cohenKappa([
      [0, 9],
      [9, 0],
    ]);
    expect(opposed).toMatchObject({ kind: "estimated", coefficient: -1, low: -1 });
    // Mirrored answers over all five grades: AC2 lies below −1.
    const mirrored = gwetAgreement(
      table((i, j) => (i + j === 4 ? ([6, 3, 2, 3, 6][i] ?? 0) : 0)),
      { weights: "quadratic" },
    );
    const { coefficient = 0, low = 0, high = 1 } = mirrored.kind === "estimated" ? mirrored : {};
    expect(coefficient).toBeLessThan(-1);
    expect(low).toBe(-1);
    expect(high).toBeLessThan(0);
  });

  it("is wider at a higher confidence and narrower with more items", () => {
    expect(width(1, 0.99)).toBeGreaterThan(width(1, 0.95));
    expect(width(4, 0.95)).toBeLessThan(0.6 * width(1, 0.95));
  });
});
