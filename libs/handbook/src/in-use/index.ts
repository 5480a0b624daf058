import { callConformity, probabilityOfConformity } from "@evenhand/measurement/conformity";
import type { Limits } from "@evenhand/measurement/conformity";
import type { Estimate } from "@evenhand/measurement/estimate";
import type { Figure, LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import { judge } from "../interval/index.ts";
import type { ResultDetail } from "../rule-result/index.ts";
import { figure } from "../rule-result/index.ts";

/** The call as the regulation has it, on the figure as read, and the probability beside it. */
export const callsOf = (reading: Estimate, limits: Limits) => {
  const { lower = Number.NEGATIVE_INFINITY, upper = Number.POSITIVE_INFINITY } = limits;
  const probability = probabilityOfConformity(reading, limits);
  return {
    words: {
      plain: reading.value >= lower && reading.value <= upper ? "passes" : "fails",
      call: callConformity(probability),
    },
    probability: figure(probability),
  };
};

/** A reading as a sentence gives it. */
export const measured = ({ value, standardUncertainty }: Estimate, unit: string): Figure =>
  figure(value, unit, standardUncertainty);

type Answer = (reason: "meets" | "under-limit" | "range-covers", detail: ResultDetail) => RuleResult;

/** A reading that may not be less than a limit; equality passes. */
export const atLeast = (answer: Answer, reading: Estimate, limit: LimitUse): RuleResult => {
  const { words, probability } = callsOf(reading, { lower: limit.value });
  const verdict = judge(reading, { low: limit.value });
  const reason = ({ holds: "meets", breaks: "under-limit", "cannot-tell": "range-covers" } as const)[verdict];
  const figures = { reading: measured(reading, limit.unit), probability };
  return answer(reason, { figures, words, limits: [limit] });
};
