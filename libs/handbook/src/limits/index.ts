import type { FirmLimits } from "@evenhand/shared/cross-check";
import type { LimitRecord } from "../limit-record/index.ts";
import { rules } from "../rules/index.ts";
import type { LimitId } from "../rules/index.ts";

export type { LimitId, LimitRecord };

type AllLimits = Readonly<Record<LimitId, LimitRecord>>;

const isWhole = (collected: Readonly<Record<string, LimitRecord>>): collected is AllLimits =>
  rules.every((rule) => rule.limits.every((id) => Object.hasOwn(collected, id)));

const collect = (): AllLimits => {
  const collected: Record<string, LimitRecord> = {};
  for (const { limitRecords } of rules) Object.assign(collected, limitRecords);
  if (!isWhole(collected)) throw new RangeError("a limit was lost");
  return collected;
};

/** Every figure the handbook judges against, by a stable id, from the rules that judge by it. */
export const limits = collect();

/** Whether a text is the id of a limit. */
export const isLimitId = (id: string): id is LimitId => Object.hasOwn(limits, id);

export type LimitProblem = {
  readonly id: string;
  readonly reason: "unknown-limit" | "not-the-firms-to-set" | "out-of-range";
};

/**
 * What is wrong with a firm's own figures, all of it; an empty list means they can be used.
 *
 * @example firmLimitProblems({ "in-use.tread": 1 }) // [{ id: "in-use.tread", reason: "not-the-firms-to-set" }]
 */
export const firmLimitProblems = (firm: FirmLimits): LimitProblem[] =>
  Object.entries(firm).flatMap(([id, value]): LimitProblem[] => {
    if (!isLimitId(id)) return [{ id, reason: "unknown-limit" }];
    const record: LimitRecord = limits[id];
    if (!record.firmMaySet || record.between === undefined) return [{ id, reason: "not-the-firms-to-set" }];
    const [low, high] = record.between;
    return value >= low && value <= high ? [] : [{ id, reason: "out-of-range" }];
  });
