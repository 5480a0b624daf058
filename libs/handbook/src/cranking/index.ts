import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import { limitUse } from "../limits/index.ts";
import { figure, ruleResult } from "../rule-result/index.ts";

export type CrankingInput = { readonly volts: Estimate; readonly system: 6 | 12 };

/**
 * Voltage while the starter turns against the least of the system.
 *
 * Source: common practice, no source.
 *
 * @example cranking({ volts: exactly(9.6), system: 12 }).reason // "enough": equality passes
 */
export const cranking = ({ volts, system }: CrankingInput, firm: FirmLimits = {}): RuleResult => {
  const least = limitUse(`cranking.least-${system}`, firm);
  const verdict = judge(volts, { low: least.value });
  return ruleResult(
    "cranking",
    ({ holds: "enough", breaks: "too-low", "cannot-tell": "range-covers" } as const)[verdict],
    {
      figures: { volts: figure(volts.value, "V", volts.standardUncertainty) },
      limits: [least],
    },
  );
};
