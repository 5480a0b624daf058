import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge, productOf } from "../interval/index.ts";
import { rollingCircumference } from "../rolling-circumference/index.ts";
import { figure } from "../rule-result/index.ts";
import type { ResultDetail } from "../rule-result/index.ts";
import { findTireSize } from "../tire-size/index.ts";
import type { TireSize } from "../tire-size/index.ts";
import { tireDiameterRecord } from "./record.ts";

export type TireDiameterInput = {
  readonly size: string;
  /** Distance rolled in one turn, in. */
  readonly rollout?: Estimate;
  /** A second size, such as the one the maker fitted. */
  readonly other?: string;
};

const againstRollout = (
  size: TireSize,
  rollout: Estimate,
  share: number,
  detail: ResultDetail,
  firm: FirmLimits,
) => {
  const circumference = rollingCircumference(size.diameter, firm);
  const ratio = productOf(1, [
    [rollout, 1],
    [circumference, -1],
  ]);
  const verdict = judge(ratio, { low: 1 - share, high: 1 + share });
  const reason = (
    { holds: "rollout-fits", breaks: "rollout-differs", "cannot-tell": "range-covers" } as const
  )[verdict];
  const figures = {
    ...detail.figures,
    circumference: figure(circumference.value, "in", circumference.standardUncertainty),
    rollout: figure(rollout.value, "in", rollout.standardUncertainty),
  };
  return tireDiameterRecord.answer(reason, { ...detail, figures });
};

/** Never a break: equivalent sizes are advice. */
const againstOther = (size: TireSize, other: TireSize, share: number, detail: ResultDetail) => {
  const ratio = productOf(1, [
    [size.diameter, 1],
    [other.diameter, -1],
  ]);
  const verdict = judge(ratio, { low: 1 - share, high: 1 + share });
  const reason = (
    { holds: "equal-in-diameter", breaks: "other-diameter", "cannot-tell": "range-covers" } as const
  )[verdict];
  const figures = {
    ...detail.figures,
    otherDiameter: figure(other.diameter.value, "in", other.diameter.standardUncertainty),
  };
  return tireDiameterRecord.answer(reason, { ...detail, figures });
};

/**
 * Diameter a tire size stands for, against a measured rollout or a second size.
 *
 * Source: the size itself, as findTireSize reads it; the rolling share and its tolerance are common practice, no source.
 *
 * @example tireDiameter({ size: "P205/75R15", other: "215/70R15" }).reason // "equal-in-diameter"
 */
export const tireDiameter = (input: TireDiameterInput, firm: FirmLimits = {}): RuleResult => {
  const size = findTireSize(input.size);
  const other = input.other === undefined ? undefined : findTireSize(input.other);
  const words = { size: input.size, ...(input.other === undefined ? {} : { other: input.other }) };
  if (size === undefined || (input.other !== undefined && other === undefined)) {
    return tireDiameterRecord.answer("size-unreadable", { words });
  }
  const limits = [tireDiameterRecord.limit("tire.rollout-share", firm)];
  const share = tireDiameterRecord.limit("tire.rollout-share", firm).value;
  const detail = {
    words,
    limits,
    figures: { diameter: figure(size.diameter.value, "in", size.diameter.standardUncertainty) },
  };
  if (input.rollout !== undefined) {
    limits.push(
      tireDiameterRecord.limit("tire.rolling-share", firm),
      tireDiameterRecord.limit("tire.rolling-tolerance", firm),
    );
    return againstRollout(size, input.rollout, share, detail, firm);
  }
  if (other !== undefined) return againstOther(size, other, share, detail);
  return tireDiameterRecord.answer("nothing-to-set-against", detail);
};
