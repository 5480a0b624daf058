import type { Uncertainty } from "../estimate/index.ts";
import { coverageFactor } from "../student-factor/index.ts";

/**
 * Expanded uncertainty U = k·u, k being the two-sided Student factor at the estimate's degrees of freedom
 * (JCGM 100:2008, 6.2.1 and G.6.4). In the unit of the estimate.
 *
 * @param coverage the share the interval ±U holds
 * @throws {RangeError} when the degrees of freedom or the coverage are out of range
 * @example expandedUncertainty({ standardUncertainty: 2, degreesOfFreedom: 30 }) // 4.0845449…
 */
export const expandedUncertainty = (
  { standardUncertainty, degreesOfFreedom }: Uncertainty,
  coverage = 0.95,
): number =>
  standardUncertainty === 0 ? 0 : coverageFactor(degreesOfFreedom, coverage) * standardUncertainty;
