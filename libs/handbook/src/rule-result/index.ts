import type { Figure, FigureRange, LimitUse, RuleResult } from "@evenhand/shared/cross-check";
import type { RuleRecord } from "../rule-record/index.ts";
import { ruleRecords } from "../rules/index.ts";
import type { ReasonOf, RuleId } from "../rules/index.ts";

/** What a result carries beside its reason. */
export type ResultDetail = {
  readonly figures?: Record<string, Figure>;
  readonly ranges?: Record<string, FigureRange>;
  readonly words?: Record<string, string>;
  readonly alternatives?: string[];
  readonly limits?: LimitUse[];
};

/**
 * A rule's answer. The reason alone fixes the verdict, by the rule's record.
 *
 * @example ruleResult("square", "square").verdict // "holds"
 */
export const ruleResult = <Id extends RuleId>(
  rule: Id,
  reason: ReasonOf<Id>,
  detail: ResultDetail = {},
): RuleResult => {
  const record: RuleRecord = ruleRecords[rule];
  const verdict = record.outcomes[reason];
  if (verdict === undefined) throw new RangeError(`rule ${rule} has no reason ${reason}`);
  return { figures: {}, ...detail, rule, verdict, reason };
};

/** A figure with its unit, `1` where it has none. */
export const figure = (value: number, unit = "1", standardUncertainty?: number): Figure =>
  standardUncertainty === undefined || standardUncertainty === 0
    ? { value, unit }
    : { value, unit, standardUncertainty };
