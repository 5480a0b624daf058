import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { callsOf, measured } from "../in-use/index.ts";
import { judge } from "../interval/index.ts";
import { inUseRunoutRecord } from "./record.ts";

/** in */
export type InUseRunoutInput = { readonly runout: Estimate };

/**
 * Wheel runout in use, lateral or radial: not more than 1/8 in; equality passes.
 *
 * Source: 49 CFR 570.10(b). Local inspection law decides.
 *
 * @param runout in
 * @example inUseRunout(exactly(0.125)).reason // "meets"
 */
export const inUseRunout = (runout: Estimate): RuleResult => {
  const limit = inUseRunoutRecord.limit("in-use.runout");
  const { words, probability } = callsOf(runout, { upper: limit.value });
  const reason = ({ holds: "meets", breaks: "over-limit", "cannot-tell": "range-covers" } as const)[
    judge(runout, { high: limit.value })
  ];
  return inUseRunoutRecord.answer(reason, {
    figures: { reading: measured(runout, "in"), probability },
    words,
    limits: [limit],
  });
};
