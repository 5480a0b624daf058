import { varianceOfMoves } from "../agreement/chance-interval.ts";
import type { ChanceInterval, Contribution } from "../agreement/chance-interval.ts";
import { LEAST_ITEMS, agreementFrom, tooAlike } from "../agreement/index.ts";
import type { Agreement, AgreementOptions } from "../agreement/index.ts";
import { differenceMetric } from "./metric.ts";
import type { Level } from "./metric.ts";

export type { Level } from "./metric.ts";

/** The answers given to one item, one place a person; null where that person gave none. */
export type Unit = readonly (number | null)[];

const sumOver = <One>(list: readonly One[], of: (one: One, index: number) => number): number => {
  let total = 0;
  for (let index = 0; index < list.length; index += 1) {
    const one = list[index];
    if (one !== undefined) total += of(one, index);
  }
  return total;
};

/** What an item adds: how many answers, its disagreement within, its answers' disagreement with all others. */
type Share = { readonly answers: number; readonly within: number; readonly among: number };

/** How often one value was given, and its disagreement with all answers together. */
type Value = { readonly value: number; readonly count: number; readonly toAll: number };

type Metric = (a: number, b: number) => number;

type Disagreement = {
  readonly shares: readonly Share[];
  readonly values: readonly Value[];
  readonly metric: Metric;
  readonly answers: number;
  /** Disagreement of every answer with every other. */
  readonly pool: number;
};

const isWhole = (unit: Unit): unit is readonly number[] => !unit.includes(null);

/** The answers that were given; units that lack none are the most frequent. */
const answersOf = (unit: Unit): readonly number[] =>
  isWhole(unit) ? unit : unit.filter((value): value is number => value !== null);

const countValues = (units: readonly (readonly number[])[]): Map<number, number> => {
  const counts = new Map<number, number>();
  for (const unit of units) for (const value of unit) counts.set(value, (counts.get(value) ?? 0) + 1);
  return new Map([...counts].sort(([a], [b]) => a - b));
};

const disagreementOf = (units: readonly (readonly number[])[], level: Level): Disagreement => {
  const counts = countValues(units);
  const distinct = Array.from(counts.keys());
  const times = Array.from(counts.values());
  const metric = differenceMetric(level, distinct, times);
  const toAll = new Map<number, number>();
  for (const value of distinct) {
    toAll.set(
      value,
      sumOver(distinct, (other, at) => (times[at] ?? 0) * metric(value, other)),
    );
  }
  const values = distinct.map((value, at) => ({
    value,
    count: times[at] ?? 0,
    toAll: toAll.get(value) ?? 0,
  }));
  const shares = units.map((unit) => ({
    answers: unit.length,
    within: sumOver(unit, (a) => sumOver(unit, (b) => metric(a, b))) / (unit.length - 1),
    among: sumOver(unit, (value) => toAll.get(value) ?? 0),
  }));
  const answers = sumOver(shares, (share) => share.answers);
  return { shares, values, metric, answers, pool: sumOver(shares, (share) => share.among) };
};

/**
 * What the interval and the standard error are made of: how alpha moves with each item, in its disagreement, in the pool
 * of values and in the number of answers. The ordinal metric is held fixed, and the pool is the plain one, of n² pairs,
 * as in Gwet's linearization (Gwet 2014, Handbook of Inter-Rater Reliability; his package irrCAC).
 */
const intervalOf = ({ shares, values, metric, answers, pool }: Disagreement): ChanceInterval => {
  const perItem = answers / shares.length;
  const expectedDisagreement = pool / answers ** 2;
  const items = shares.map((share) => ({
    weight: 1,
    disagreement: share.within / perItem,
    chance: (2 * share.among) / answers / perItem - (expectedDisagreement * share.answers) / perItem,
  }));
  const atChance: Contribution[] = [];
  for (const one of values) {
    for (const other of values) {
      atChance.push({
        weight: (one.count * other.count) / answers ** 2,
        disagreement: metric(one.value, other.value),
        chance: (one.toAll + other.toAll) / answers - expectedDisagreement,
      });
    }
  }
  return { items, atChance, expectedDisagreement, degreesOfFreedom: Infinity };
};

const standardErrorOf = ({ items, expectedDisagreement }: ChanceInterval): number => {
  const disagreement = sumOver(items, (item) => item.disagreement) / items.length;
  return Math.sqrt(varianceOfMoves(items, disagreement, expectedDisagreement) / (items.length - 1));
};

/**
 * Krippendorff's alpha: 1 − D_o/D_e, disagreement within items over disagreement among all answers, for any
 * number of people, with answers missing, on any scale (Krippendorff 2011, "Computing Krippendorff's
 * alpha-reliability"). Items with fewer than two answers cannot be paired and are left out.
 *
 * The standard error is the linearization over items of Gwet's irrCAC, the interval `chanceInterval`'s. No draws are made,
 * so the same answers always give the same interval.
 *
 * `observed` and `expected` are 1 − D/D_max, D_max being the squared difference of the values farthest apart.
 *
 * @param units one an item
 * @param level ratio scales take values above 0 only
 * @returns `tooFew` under ten paired items unless `least` says otherwise, or where their answers are too much alike;
 *   `noVariation` when all answers are the same
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
  const paired = units.map(answersOf).filter((unit) => unit.length >= 2);
  if (
    paired.some((unit) => unit.some((value) => !Number.isFinite(value) || (level === "ratio" && value < 0)))
  ) {
    throw new RangeError("Answers must be finite numbers, and not negative on a ratio scale.");
  }
  const items = paired.length;
  if (items < Math.max(least, 2)) return { kind: "tooFew", items, least };
  const found = disagreementOf(paired, level);
  const { shares, values, answers, pool } = found;
  if (pool === 0) return { kind: "noVariation", items };
  const chance = 1 - sumOver(values, ({ count }) => (count / answers) ** 2);
  const alike = tooAlike(items, chance, least);
  if (alike !== undefined) return alike;
  const observedDisagreement = sumOver(shares, (share) => share.within) / answers;
  const expectedDisagreement = pool / (answers * (answers - 1));
  const widest = found.metric(values[0]?.value ?? 0, values.at(-1)?.value ?? 0);
  const interval = intervalOf(found);
  const figures = {
    coefficient: 1 - observedDisagreement / expectedDisagreement,
    standardError: standardErrorOf(interval),
    observed: 1 - observedDisagreement / widest,
    expected: 1 - expectedDisagreement / widest,
    items,
  };
  return agreementFrom(figures, interval, confidence);
};
