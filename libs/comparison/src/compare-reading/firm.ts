import type { ReadingFigures } from "@evenhand/shared/comparison";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import { difference } from "@evenhand/measurement/difference";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { sideEstimate } from "@evenhand/sheet/reading-side";
import type { ReadingSide } from "@evenhand/sheet/reading-side";
import { firmSide } from "@evenhand/sheet/soft-reading";
import { leftOf } from "../use-allowed/index.ts";

/**
 * Whether two readings part by more than instruments and scatter of three times the ordinary explain, where worse were named: nobody
 * names a gauge so bad, or reads so far apart, that no difference can speak against it. `false` where neither side is worse.
 *
 * @param allowance what may rightly move from one day to another; asked only where it matters
 * @example partsFirmly(figures, { a, b, spec, shared: false }, () => 0) // true
 */
export const partsFirmly = (
  figures: ReadingFigures,
  sides: {
    readonly a: ReadingSide;
    readonly b: ReadingSide;
    readonly spec: ReadingSpec;
    readonly shared: boolean;
  },
  allowance: () => number,
): boolean => {
  const { spec, shared } = sides;
  const [a, b] = [firmSide(sides.a, spec), firmSide(sides.b, spec)];
  if (a === sides.a && b === sides.b) return false;
  const firm = difference(sideEstimate(a, !shared), sideEstimate(b, !shared));
  const expanded = coverageFactor(firm.degreesOfFreedom) * firm.standardUncertainty;
  return Math.abs(leftOf(figures)) > expanded + allowance();
};
