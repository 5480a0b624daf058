import { LEAST_ITEMS, agreementFrom } from "../agreement/index.ts";
import type { Agreement, AgreementOptions } from "../agreement/index.ts";
import { differenceMetric } from "./metric.ts";
import type { Level } from "./metric.ts";

export type { Level } from "./metric.ts";

/** The answers given to one item, one place a person; null where that person gave none. */
export type Unit = readonly (number | null)[];

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);

/** What an item adds: how many answers, its disagreement within, its answers' disagreement with all others. */
type Share = { readonly answers: number; readonly within: number; readonly among: number };

/** Every item's share, and the squared difference of the two values farthest apart. */
type Disagreement = { readonly shares: readonly Share[]; readonly widest: number };

const countValues = (units: readonly (readonly number[])[]): Map<number, number> => {
  const counts = new Map<number, number>();
  for (const unit of units) for (const value of unit) counts.set(value, (counts.get(value) ?? 0) + 1);
  return new Map([...counts].sort(([a], [b]) => a - b));
};

const disagreementOf = (units: readonly (readonly number[])[], level: Level): Disagreement => {
  const counts = countValues(units);
  const values = [...counts.keys()];
  const metric = differenceMetric(level, values, [...counts.values()]);
  const toAll = new Map(
    values.map((value) => [value, sum([...counts].map(([other, count]) => count * metric(value, other)))]),
  );
  const shares = units.map((unit) => ({
    answers: unit.length,
    within: sum(unit.map((a) => sum(unit.map((b) => metric(a, b))))) / (unit.length - 1),
    among: sum(unit.map((value) => toAll.get(value) ?? 0)),
  }));
  return { shares, widest: metric(values[0] ?? 0, values[values.length - 1] ?? 0) };
};

/**
 * Standard error by linearization over the items: how alpha moves when one item counts a little less, in its
 * disagreement, in the pool of values and in the number of answers. The ordinal metric is held fixed.
 */
const linearizedError = (shares: readonly Share[], alpha: number, pool: number, answers: number): number => {
  const moves = shares.map(
    (share) =>
      (1 - alpha) * ((2 * share.among) / pool - share.answers / (answers - 1)) -
      ((answers - 1) * share.within) / pool,
  );
  const center = sum(moves) / moves.length;
  const squares = sum(moves.map((move) => (move - center) ** 2));
  return Math.sqrt((squares * moves.length) / (moves.length - 1));
};

/**
 * Krippendorff's alpha: 1 − D_o/D_e, disagreement within items over disagreement among all answers, for any
 * number of people, with answers missing, on any scale (Krippendorff 2011, "Computing Krippendorff's
 * alpha-reliability"). Items with fewer than two answers cannot be paired and are left out.
 *
 * The interval is analytic: linearization over items and Student's factor with items − 1 degrees of freedom.
 * No draws are made, so the same answers always give the same interval.
 *
 * `observed` and `expected` are 1 − D/D_max, D_max being the squared difference of the values farthest apart.
 *
 * @param units one an item
 * @param level ratio scales take values above 0 only
 * @returns `tooFew` under ten paired items unless `least` says otherwise; `noVariation` when all answers are
 *   the same
 * @throws {RangeError} for a value that is not finite, or a negative one on a ratio scale
 * @example
 * krippendorffAlpha([[1, 1], [2, 2], [3, 2]], "nominal", { least: 3 }) // { kind: "estimated", coefficient: 0.545…, … }
 */
export const krippendorffAlpha = (
  units: readonly Unit[],
  level: Level,
  options: AgreementOptions = {},
): Agreement => {
  const { confidence = 0.95, least = LEAST_ITEMS } = options;
  const paired = units
    .map((unit) => unit.filter((value): value is number => value !== null))
    .filter((unit) => unit.length >= 2);
  if (
    paired.some((unit) => unit.some((value) => !Number.isFinite(value) || (level === "ratio" && value < 0)))
  ) {
    throw new RangeError("Answers must be finite numbers, and not negative on a ratio scale.");
  }
  const items = paired.length;
  if (items < Math.max(least, 2)) return { kind: "tooFew", items, least };
  const { shares, widest } = disagreementOf(paired, level);
  const answers = sum(shares.map((share) => share.answers));
  const pool = sum(shares.map((share) => share.among));
  if (pool === 0) return { kind: "noVariation", items };
  const observedDisagreement = sum(shares.map((share) => share.within)) / answers;
  const expectedDisagreement = pool / (answers * (answers - 1));
  const alpha = 1 - observedDisagreement / expectedDisagreement;
  const figures = {
    coefficient: alpha,
    standardError: linearizedError(shares, alpha, pool, answers),
    observed: 1 - observedDisagreement / widest,
    expected: 1 - expectedDisagreement / widest,
    items,
  };
  return agreementFrom(figures, confidence, items - 1);
};
