/** Three-point estimate: the least, the likeliest and the greatest, in one unit. */
export type ThreePoints = { readonly low: number; readonly likely: number; readonly high: number };

/** λ: how many times the likeliest value weighs against each end. */
export const weightOfLikely = 4;

const check = ({ low, likely, high }: ThreePoints): void => {
  if (!(low <= likely && likely <= high)) {
    throw new RangeError(`A three-point estimate needs low ≤ likely ≤ high, not ${low}, ${likely}, ${high}.`);
  }
};

/**
 * Mean of the beta-PERT distribution, (l + 4m + h)/6. It is also the mean of the plain PERT rule.
 *
 * Source: D. Vose, Risk Analysis, 3rd ed., "modified PERT"; the formula of the mean goes back to Malcolm, Roseboom, Clark and
 * Fazar, Operations Research 7 (1959).
 *
 * @throws {RangeError} where the three are out of order
 * @example betaPertMean({ low: 8, likely: 10, high: 24 }) // 12
 */
export const betaPertMean = (points: ThreePoints): number => {
  check(points);
  return (points.low + weightOfLikely * points.likely + points.high) / (weightOfLikely + 2);
};

/**
 * Variance of the beta-PERT distribution, (μ − l)(h − μ)/7. This is the variance of the very beta distribution that is drawn from,
 * not the rule of thumb ((h − l)/6)²; the two differ.
 *
 * @throws {RangeError} where the three are out of order
 * @example betaPertVariance({ low: 3, likely: 5, high: 10 }) // 1.6071428571428572
 */
export const betaPertVariance = (points: ThreePoints): number => {
  const mean = betaPertMean(points);
  return ((mean - points.low) * (points.high - mean)) / (weightOfLikely + 3);
};

/**
 * The plain PERT rule's variance, ((h − l)/6)²: for comparison with tables that use it, never for drawing.
 *
 * @throws {RangeError} where the three are out of order
 * @example pertRuleVariance({ low: 5, likely: 8, high: 14 }) // 2.25
 */
export const pertRuleVariance = (points: ThreePoints): number => {
  check(points);
  return ((points.high - points.low) / 6) ** 2;
};

/**
 * Shape parameters α and β of the beta distribution on [low, high]; they always add up to 6. Where low = high both are 3.
 *
 * @throws {RangeError} where the three are out of order
 * @example betaPertShape({ low: 0, likely: 25, high: 100 }) // { alpha: 2, beta: 4 }
 */
export const betaPertShape = (points: ThreePoints): { readonly alpha: number; readonly beta: number } => {
  check(points);
  const width = points.high - points.low;
  const place = width === 0 ? 0.5 : (points.likely - points.low) / width;
  return { alpha: 1 + weightOfLikely * place, beta: 1 + weightOfLikely * (1 - place) };
};
