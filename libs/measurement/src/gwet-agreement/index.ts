import { LEAST_ITEMS, agreementFrom } from "../agreement/index.ts";
import type { Agreement, AgreementOptions } from "../agreement/index.ts";
import { varianceOfMoves } from "../agreement/chance-interval.ts";
import type { ChanceInterval, Contribution } from "../agreement/chance-interval.ts";
import { contributions, itemsOf, proportions, sumOfProducts } from "../agreement/table.ts";
import { agreementWeights } from "../agreement-weights/index.ts";
import type { AgreementWeights, Matrix } from "../agreement-weights/index.ts";

export type GwetAgreementOptions = AgreementOptions & { readonly weights?: AgreementWeights };

const at = (values: readonly number[] | undefined, index: number): number => values?.[index] ?? 0;
const sum = (values: readonly number[]): number => {
  let total = 0;
  for (let index = 0; index < values.length; index += 1) total += values[index] ?? 0;
  return total;
};

/** Sum of all weights over q(q − 1): 1/(q − 1) when unweighted. */
const chanceScale = (weights: Matrix): number => {
  let total = 0;
  for (let i = 0; i < weights.length; i += 1) total += sum(weights[i] ?? []);
  return total / (weights.length * (weights.length - 1));
};

const chanceAgreement = (shares: readonly number[], scale: number): number =>
  scale * sum(shares.map((share) => share * (1 - share)));

/** Items as chance would answer them: both answers drawn from the shares of all. */
const answersAtChance = (shares: readonly number[], weights: Matrix, chance: Matrix): Contribution[] =>
  contributions(
    shares.map((one) => shares.map((other) => one * other)),
    weights,
    chance,
  );

/** How agreement by chance moves with one more item in each cell, up to a constant. */
const chanceMoves = (shares: readonly number[], scale: number): number[][] =>
  shares.map((one) => shares.map((other) => -scale * (2 - one - other)));

const checkCategories = (counts: Matrix): void => {
  if (counts.length < 2) throw new RangeError("Agreement needs at least two categories.");
};

/** What two people's table comes to: shares of its cells and categories, and agreement as it is and as chance would have it. */
const readTable = (counts: Matrix, chosen: AgreementWeights) => {
  checkCategories(counts);
  const { cells, rows, columns, items } = proportions(counts);
  const weights = agreementWeights(chosen, counts.length);
  const shares = rows.map((row, k) => (row + at(columns, k)) / 2);
  const scale = chanceScale(weights);
  const observed = sumOfProducts(cells, weights);
  const expected = chanceAgreement(shares, scale);
  const coefficient = (observed - expected) / (1 - expected);
  return { cells, items, weights, shares, scale, observed, expected, coefficient };
};

/** How often both people together chose a category. */
const shareOf = (category: number, counts: Matrix, items: number): number => {
  let [row, column] = [0, 0];
  for (let other = 0; other < counts.length; other += 1) {
    row += at(counts[category], other) / items;
    column += at(counts[other], category) / items;
  }
  return (row + column) / 2;
};

/**
 * AC1 or AC2 of two people from their table, without its interval: for who makes one over clusters. It is asked for once a cluster, and so
 * makes no lists.
 *
 * @throws {RangeError} when the table is not square, or has fewer than two categories
 * @example gwetCoefficient([[40, 5], [5, 0]], "unweighted") // 0.756…
 */
export const gwetCoefficient = (counts: Matrix, chosen: AgreementWeights): number => {
  checkCategories(counts);
  const items = itemsOf(counts);
  const weights = agreementWeights(chosen, counts.length);
  let [observed, mixed] = [0, 0];
  for (let i = 0; i < counts.length; i += 1) {
    for (let j = 0; j < counts.length; j += 1) observed += (at(counts[i], j) / items) * at(weights[i], j);
    const share = shareOf(i, counts, items);
    mixed += share * (1 - share);
  }
  const expected = chanceScale(weights) * mixed;
  return (observed - expected) / (1 - expected);
};

const pooledInterval = (
  items: readonly Contribution[],
  atChance: readonly Contribution[],
  expectedDisagreement: number,
): ChanceInterval => ({ items, atChance, expectedDisagreement, degreesOfFreedom: Infinity });

/**
 * Gwet's AC1 (unweighted) or AC2 (weighted) of two people from their table: (p_a − p_e)/(1 − p_e), where
 * chance is taken from how mixed the answers are, so that two people who nearly always agree are not made to
 * look as if they did so by chance (Gwet 2008; 2014, chapters 2 to 5). Variance by linearization, large n;
 * the interval is `chanceInterval`'s.
 *
 * @param counts one row a category of the first person, one column a category of the second
 * @returns `tooFew` under ten items unless `least` says otherwise
 * @throws {RangeError} when the table is not square, has fewer than two categories, or a negative count
 * @example
 * gwetAgreement([[40, 5], [5, 0]]) // { kind: "estimated", coefficient: 0.756…, … }
 */
export const gwetAgreement = (counts: Matrix, options: GwetAgreementOptions = {}): Agreement => {
  const { weights: chosen = "unweighted", confidence = 0.95, least = LEAST_ITEMS } = options;
  const { cells, items, weights, shares, scale, observed, expected, coefficient } = readTable(counts, chosen);
  if (items < least) return { kind: "tooFew", items, least };
  let squares = 0;
  for (let i = 0; i < cells.length; i += 1) {
    for (let j = 0; j < cells.length; j += 1) {
      const chance = scale * (1 - (at(shares, i) + at(shares, j)) / 2);
      squares += at(cells[i], j) * (at(weights[i], j) - 2 * (1 - coefficient) * chance) ** 2;
    }
  }
  const center = observed - 2 * (1 - coefficient) * expected;
  const variance = Math.max(0, squares - center ** 2) / (items * (1 - expected) ** 2);
  const figures = { coefficient, standardError: Math.sqrt(variance), observed, expected, items };
  const moves = chanceMoves(shares, scale);
  const seen = contributions(counts, weights, moves);
  const atChance = answersAtChance(shares, weights, moves);
  return agreementFrom(figures, pooledInterval(seen, atChance, 1 - expected), confidence);
};

/** How many people put one item into each category. */
export type CategoryCounts = readonly number[];

/** Weighted agreement among the people who answered one item; undefined with fewer than two of them. */
const itemAgreement = (counts: CategoryCounts, weights: Matrix): number | undefined => {
  const people = sum(counts);
  if (people < 2) return undefined;
  const near = counts.map((_, k) => sum(counts.map((count, l) => count * at(weights[k], l))));
  return sum(counts.map((count, k) => count * (at(near, k) - 1))) / (people * (people - 1));
};

const averageShares = (items: readonly CategoryCounts[], categories: number): number[] =>
  Array.from(
    { length: categories },
    (_, k) => sum(items.map((counts) => at(counts, k) / sum(counts))) / items.length,
  );

/** What each item adds; one answered by a single person adds nothing to how far answers are apart. */
const itemContributions = (
  items: readonly CategoryCounts[],
  agreements: readonly (number | undefined)[],
  {
    shares,
    scale,
    expected,
    judged,
  }: { shares: readonly number[]; scale: number; expected: number; judged: number },
): Contribution[] =>
  items.map((counts, i) => {
    const agreement = agreements[i];
    const beyond = agreement === undefined ? 0 : (items.length / judged) * (agreement - expected);
    const chance = sum(counts.map((count, k) => count * (1 - at(shares, k)))) / sum(counts);
    return { weight: 1, disagreement: 1 - expected - beyond, chance: -2 * scale * chance };
  });

/**
 * AC1 or AC2 of any number of people, some of whom may have left items out (Gwet 2008; 2014, section 2.6).
 * Items answered by one person count toward chance but not toward agreement; items answered by none must be
 * left out. Variance with n − 1; the interval is `chanceInterval`'s.
 *
 * @param items one row an item: how many people chose each category
 * @returns `tooFew` under ten items unless `least` says otherwise
 * @throws {RangeError} for rows of unequal length, an item nobody answered, or fewer than two categories
 * @example
 * gwetAgreementOfMany([[3, 0], [2, 1], [0, 3]], { least: 3 }) // { kind: "estimated", coefficient: 0.560…, … }
 */
export const gwetAgreementOfMany = (
  items: readonly CategoryCounts[],
  options: GwetAgreementOptions = {},
): Agreement => {
  const { weights: chosen = "unweighted", confidence = 0.95, least = LEAST_ITEMS } = options;
  const categories = items[0]?.length ?? 0;
  const judged = items.filter((counts) => sum(counts) >= 2).length;
  if (judged < Math.max(least, 2)) return { kind: "tooFew", items: judged, least };
  if (categories < 2) throw new RangeError("Agreement needs at least two categories.");
  if (items.some((counts) => counts.length !== categories))
    throw new RangeError("Rows must be of one length.");
  if (items.some((counts) => !(sum(counts) > 0))) throw new RangeError("Every item needs an answer.");
  const weights = agreementWeights(chosen, categories);
  const scale = chanceScale(weights);
  const shares = averageShares(items, categories);
  const agreements = items.map((counts) => itemAgreement(counts, weights));
  const observed = sum(agreements.map((agreement) => agreement ?? 0)) / judged;
  const expected = chanceAgreement(shares, scale);
  const coefficient = (observed - expected) / (1 - expected);
  const seen = itemContributions(items, agreements, { shares, scale, expected, judged });
  const variance = varianceOfMoves(seen, 1 - observed, 1 - expected) / (items.length - 1);
  const figures = {
    coefficient,
    standardError: Math.sqrt(variance),
    observed,
    expected,
    items: items.length,
  };
  const atChance = answersAtChance(shares, weights, chanceMoves(shares, scale));
  return agreementFrom(figures, pooledInterval(seen, atChance, 1 - expected), confidence);
};
