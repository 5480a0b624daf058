import { posteriorWeights } from "../posterior-weights/index.ts";

/** One answer: who put which item into which category, all counted from 0. Repeats are allowed. */
export type Rating = { readonly item: number; readonly rater: number; readonly category: number };

export type DawidSkene = {
  /** Share of each true category. */
  readonly prevalence: readonly number[];
  /** `confusion[rater][truth][answer]`: how often a rater gives an answer when the truth is so. */
  readonly confusion: readonly (readonly (readonly number[])[])[];
  /** `posterior[item][truth]`. */
  readonly posterior: readonly (readonly number[])[];
  readonly logLikelihood: number;
  readonly iterations: number;
  readonly converged: boolean;
};

export type DawidSkeneOptions = { readonly tolerance?: number; readonly mostIterations?: number };

type Size = { readonly items: number; readonly raters: number; readonly categories: number };

const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0);
const zeros = (length: number): number[] => Array.from({ length }, () => 0);

const measure = (ratings: readonly Rating[], categories: number): Size => {
  let [items, raters] = [0, 0];
  for (const { item, rater, category } of ratings) {
    if (![item, rater, category].every((value) => Number.isInteger(value) && value >= 0)) {
      throw new RangeError("Items, raters and categories are whole numbers from 0.");
    }
    if (category >= categories) throw new RangeError(`Category ${category} of only ${categories}.`);
    items = Math.max(items, item + 1);
    raters = Math.max(raters, rater + 1);
  }
  if (new Set(ratings.map(({ item }) => item)).size !== items) throw new RangeError("An item has no rating.");
  return { items, raters, categories };
};

/** Start: an item's truth is spread as its answers are (Dawid and Skene 1979, equation 3.1; numbers of equations from memory). */
const startingPosterior = (ratings: readonly Rating[], { items, categories }: Size): number[][] => {
  const counts = Array.from({ length: items }, () => zeros(categories));
  for (const { item, category } of ratings) {
    const row = counts[item];
    if (row !== undefined) row[category] = (row[category] ?? 0) + 1;
  }
  return counts.map((row) => row.map((count) => count / sum(row)));
};

/** M step: confusion matrices and prevalence from the weighted truths (equations 2.3 and 2.4). */
const maximize = (ratings: readonly Rating[], posterior: readonly (readonly number[])[], size: Size) => {
  const counts = Array.from({ length: size.raters }, () =>
    Array.from({ length: size.categories }, () => zeros(size.categories)),
  );
  for (const { item, rater, category } of ratings) {
    for (const [truth, weight] of (posterior[item] ?? []).entries()) {
      const row = counts[rater]?.[truth];
      if (row !== undefined) row[category] = (row[category] ?? 0) + weight;
    }
  }
  const confusion = counts.map((rater) =>
    rater.map((row) => {
      const total = sum(row);
      // A truth a rater never met says nothing of them: every answer is then as likely.
      return row.map((count) => (total === 0 ? 1 / size.categories : count / total));
    }),
  );
  const prevalence = zeros(size.categories).map(
    (_, truth) => sum(posterior.map((row) => row[truth] ?? 0)) / size.items,
  );
  return { confusion, prevalence };
};

/** E step: each item's truth given the answers (equation 2.5), and the log-likelihood. */
const expect = (
  ratings: readonly Rating[],
  { confusion, prevalence }: ReturnType<typeof maximize>,
  size: Size,
) => {
  const logs = Array.from({ length: size.items }, () => prevalence.map(Math.log));
  for (const { item, rater, category } of ratings) {
    const row = logs[item] ?? [];
    for (const truth of row.keys()) {
      row[truth] = (row[truth] ?? 0) + Math.log(confusion[rater]?.[truth]?.[category] ?? 0);
    }
  }
  let logLikelihood = 0;
  const posterior = logs.map((row) => {
    const { weights, logTotal } = posteriorWeights(row);
    logLikelihood += logTotal;
    return weights;
  });
  return { posterior, logLikelihood };
};

/**
 * The most likely truth of each item and the error rates of each rater, from answers alone: EM on the latent
 * class model of Dawid and Skene (1979, Applied Statistics 28, 20–28). Raters are taken as independent given
 * the truth; where they are not (two reports by one firm) the answer is wrong, and whether there are items and
 * people enough is for the caller to judge.
 *
 * @param ratings items and raters counted from 0 without gaps
 * @param categories how many categories there are
 * @throws {RangeError} for an item without rating or a number out of range
 * @example
 * dawidSkene([{ item: 0, rater: 0, category: 1 }, { item: 0, rater: 1, category: 1 }], 2).posterior // [[0, 1]]
 */
export const dawidSkene = (
  ratings: readonly Rating[],
  categories: number,
  { tolerance = 1e-12, mostIterations = 10_000 }: DawidSkeneOptions = {},
): DawidSkene => {
  const size = measure(ratings, categories);
  let posterior = startingPosterior(ratings, size);
  let logLikelihood = Number.NEGATIVE_INFINITY;
  for (let iterations = 1; ; iterations += 1) {
    const parameters = maximize(ratings, posterior, size);
    const next = expect(ratings, parameters, size);
    const converged = Math.abs(next.logLikelihood - logLikelihood) < tolerance;
    posterior = next.posterior;
    logLikelihood = next.logLikelihood;
    if (converged || iterations >= mostIterations) {
      return { ...parameters, posterior, logLikelihood, iterations, converged };
    }
  }
};
