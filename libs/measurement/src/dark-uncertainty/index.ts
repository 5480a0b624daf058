/** A result with its standard uncertainty. */
export type Result = { readonly value: number; readonly standardUncertainty: number };

export type DarkUncertainty = {
  /** τ: the standard uncertainty each result would need beside its own for all to be consistent; 0 where they are. */
  readonly dark: number;
  /** The consensus: the mean with weights 1/(u² + τ²), and its standard uncertainty. */
  readonly mean: number;
  readonly standardUncertainty: number;
};

const check = (results: readonly Result[]): void => {
  if (results.length < 2) throw new RangeError("Dark uncertainty needs at least two results.");
  if (
    !results.every(
      ({ value, standardUncertainty: u }) => Number.isFinite(value) && u > 0 && Number.isFinite(u),
    )
  ) {
    throw new RangeError("Results must be numbers with positive standard uncertainties.");
  }
};

/** Weighted mean, Cochran's Q about it, and sums of the weights' powers, for the variance τ² beside each result's own. */
const weighted = (results: readonly Result[], darkVariance: number) => {
  let [weights, squares, sum] = [0, 0, 0];
  for (const { value, standardUncertainty } of results) {
    const weight = 1 / (standardUncertainty ** 2 + darkVariance);
    weights += weight;
    squares += weight ** 2;
    sum += weight * value;
  }
  const mean = sum / weights;
  let [q, slope] = [0, 0];
  for (const { value, standardUncertainty } of results) {
    const weight = 1 / (standardUncertainty ** 2 + darkVariance);
    q += weight * (value - mean) ** 2;
    slope += weight ** 2 * (value - mean) ** 2;
  }
  return { mean, q, slope, weights, squares };
};

const consensus = (results: readonly Result[], darkVariance: number): DarkUncertainty => {
  const { mean, weights } = weighted(results, darkVariance);
  return { dark: Math.sqrt(darkVariance), mean, standardUncertainty: 1 / Math.sqrt(weights) };
};

/**
 * Dark uncertainty by moments in one step: τ² = (Q − (k − 1))/(Σw − Σw²/Σw), w = 1/u², not under 0 (DerSimonian and Laird 1986).
 *
 * @param results in one unit
 * @throws {RangeError} with fewer than two results, or an uncertainty that is not positive
 * @example derSimonianLaird([{ value: 0, standardUncertainty: 1 }, { value: 4, standardUncertainty: 1 }]).dark // 2.6457513110645907
 */
export const derSimonianLaird = (results: readonly Result[]): DarkUncertainty => {
  check(results);
  const { q, weights, squares } = weighted(results, 0);
  return consensus(results, Math.max(0, (q - (results.length - 1)) / (weights - squares / weights)));
};

/** Newton's steps double the digits; a dozen are more than enough. */
const MOST_STEPS = 100;
const CLOSE = 1e-14;

/**
 * Dark uncertainty after Paule and Mandel (1982): the τ at which the weighted scatter is what it should be, Σ (x − x̄)²/(u² + τ²) = k − 1.
 * Better than one step of moments where uncertainties differ much (DerSimonian and Kacker 2007). The left side falls with τ² and curves upward,
 * so that Newton's steps from 0 come near from below and never pass the root.
 *
 * @param results in one unit
 * @throws {RangeError} with fewer than two results, or an uncertainty that is not positive
 * @example pauleMandel([{ value: 0, standardUncertainty: 1 }, { value: 4, standardUncertainty: 1 }]).dark // 2.6457513110645907
 */
export const pauleMandel = (results: readonly Result[]): DarkUncertainty => {
  check(results);
  let darkVariance = 0;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { q, slope } = weighted(results, darkVariance);
    const more = (q - (results.length - 1)) / slope;
    if (!(more > CLOSE * darkVariance)) break;
    darkVariance += more;
  }
  return consensus(results, darkVariance);
};
