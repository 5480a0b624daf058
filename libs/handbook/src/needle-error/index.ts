import type { Figure } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge, productOf } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";

export type NeedleReason = "within" | "reads-high" | "reads-low" | "range-covers";

/**
 * What an instrument of the car shows against what was measured at the same moment: by how much it is off, and whether that is more
 * than the share that matters.
 *
 * Source: arithmetic on the figures read.
 *
 * @param indicated and measured, in one unit; `measured` must not be 0
 * @param share of the measured value past which the error matters; at the share it does not
 * @returns the reason, and the error in percent of the measured value
 * @example needleError({ indicated: exactly(69), measured: exactly(60) }, 0.1).reason // "reads-high"
 */
export const needleError = (
  { indicated, measured }: { readonly indicated: Estimate; readonly measured: Estimate },
  share: number,
): { readonly reason: NeedleReason; readonly error: Figure } => {
  const ratio = productOf(1, [
    [indicated, 1],
    [measured, -1],
  ]);
  const verdict = judge(ratio, { low: 1 - share, high: 1 + share });
  const breaking = ratio.value > 1 ? "reads-high" : "reads-low";
  return {
    reason: ({ holds: "within", breaks: breaking, "cannot-tell": "range-covers" } as const)[verdict],
    error: figure(100 * (ratio.value - 1), "%", 100 * ratio.standardUncertainty),
  };
};
