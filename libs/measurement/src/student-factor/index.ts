import { studentQuantile } from "../student-distribution/index.ts";

/**
 * As a function of 1/ν from 0 (normal) to 1 (Cauchy) the factor is so smooth that a Chebyshev series of this
 * many terms gives it to 1e-13 of itself. The library's inversion costs some 3 µs a call, the series less
 * than a tenth; effective degrees of freedom are hardly ever the same twice, so remembering single answers
 * would not help.
 */
const TERMS = 32;

/** The series of each coverage asked for so far: a function of the coverage alone. */
const seriesByCoverage = new Map<number, Float64Array>();

/** Coverages come from configuration, so few differ; beyond this many the series is made anew. */
const MOST_KEPT = 16;

const upperTail = (coverage: number): number => (1 + coverage) / 2;

/** Chebyshev coefficients on 0…1 from the values at the Chebyshev nodes (the first one halved). */
const makeSeries = (coverage: number): Float64Array => {
  const nodes = Array.from({ length: TERMS }, (_, j) => (Math.PI * (j + 0.5)) / TERMS);
  const values = nodes.map((node) => studentQuantile(upperTail(coverage), 2 / (1 + Math.cos(node))));
  return Float64Array.from(nodes, (_, k) => {
    let sum = 0;
    for (const [j, node] of nodes.entries()) sum += (values[j] ?? 0) * Math.cos(k * node);
    return ((k === 0 ? 1 : 2) * sum) / TERMS;
  });
};

/** The one that was asked for last: many figures in a row are of one coverage. */
let lastCoverage = Number.NaN;
let lastSeries: Float64Array = new Float64Array();

const findSeries = (coverage: number): Float64Array => {
  if (coverage === lastCoverage) return lastSeries;
  const series = seriesByCoverage.get(coverage) ?? makeSeries(coverage);
  if (seriesByCoverage.size < MOST_KEPT) seriesByCoverage.set(coverage, series);
  lastCoverage = coverage;
  lastSeries = series;
  return series;
};

/** Clenshaw's recurrence: the sum of cₖ·Tₖ(2x − 1). */
const evaluate = (series: Float64Array, x: number): number => {
  const y = 2 * x - 1;
  let next = 0;
  let afterNext = 0;
  for (let k = series.length - 1; k > 0; k -= 1) {
    const current = 2 * y * next - afterNext + (series[k] ?? 0);
    afterNext = next;
    next = current;
  }
  return y * next - afterNext + (series[0] ?? 0);
};

/**
 * The factor k by which a standard uncertainty is multiplied so that ±k·u holds the stated share of what
 * could be attributed to the quantity: the two-sided Student quantile (JCGM 100:2008, G.3 and G.6).
 *
 * @param degreesOfFreedom positive, not rounded; Infinity gives the normal factor
 * @param coverage the share held, between 0 and 1
 * @throws {RangeError} when either is out of range
 * @example coverageFactor(30) // 2.042272456…
 * @example coverageFactor(Infinity, 0.95) // 1.959963984…
 */
export const coverageFactor = (degreesOfFreedom: number, coverage = 0.95): number => {
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`Degrees of freedom must be positive: ${degreesOfFreedom}`);
  if (!(coverage > 0 && coverage < 1))
    throw new RangeError(`The coverage must lie between 0 and 1: ${coverage}`);
  if (degreesOfFreedom < 1) return studentQuantile(upperTail(coverage), degreesOfFreedom);
  return evaluate(findSeries(coverage), 1 / degreesOfFreedom);
};
