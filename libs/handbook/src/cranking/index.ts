import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { crankingRecord } from "./record.ts";

export type CrankingInput = { readonly volts: Estimate; readonly system: 6 | 12 };

/**
 * Voltage while the starter turns against the least of the system.
 *
 * Source: common practice, no source.
 *
 * @example cranking({ volts: exactly(9.6), system: 12 }).reason // "enough": equality passes
 */
export const cranking = ({ volts, system }: CrankingInput, firm: FirmLimits = {}): RuleResult => {
  const least = crankingRecord.limit(`cranking.least-${system}`, firm);
  const verdict = judge(volts, { low: least.value });
  return crankingRecord.answer(
    ({ holds: "enough", breaks: "too-low", "cannot-tell": "range-covers" } as const)[verdict],
    {
      figures: { volts: figure(volts.value, "V", volts.standardUncertainty) },
      limits: [least],
    },
  );
};
