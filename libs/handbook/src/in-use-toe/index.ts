import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { callsOf, measured } from "../in-use/index.ts";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { inUseToeRecord } from "./record.ts";

export type InUseToeInput = {
  /** Toe-out negative; both in the unit. */
  readonly toe: Estimate;
  readonly makers?: number;
  readonly unit?: "in" | "mm";
};

/**
 * Toe in use: toe-in or toe-out not more than 1.5 times the maker's value; equality passes.
 *
 * Source: 49 CFR 570.7(d). Local inspection law decides.
 *
 * @param toe in any unit, toe-out negative
 * @param makers the maker's value in the same unit; a value of 0 allows no multiple
 * @example inUseToe(exactly(-0.3), 0.125).reason // "over-limit"
 */
export const inUseToe = (toe: Estimate, makers?: number, unit = "in"): RuleResult => {
  const share = inUseToeRecord.limit("in-use.toe-share");
  const figures = { reading: measured(toe, unit) };
  if (makers === undefined || makers === 0)
    return inUseToeRecord.answer("makers-value-unknown", { figures, limits: [share] });
  const most = share.value * Math.abs(makers);
  const { words, probability } = callsOf(toe, { lower: -most, upper: most });
  const reason = ({ holds: "meets", breaks: "over-limit", "cannot-tell": "range-covers" } as const)[
    judge(toe, { low: -most, high: most })
  ];
  return inUseToeRecord.answer(reason, {
    figures: { ...figures, probability, makers: figure(makers, unit), most: figure(most, unit) },
    words,
    limits: [share],
  });
};
