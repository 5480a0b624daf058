import type { RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { callsOf, measured } from "../in-use/index.ts";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { inUseFreePlayRecord } from "./record.ts";

export type InUseFreePlayInput = {
  /** At the rim, in. */
  readonly play: Estimate;
  /** Of the steering wheel, in. */
  readonly wheelDiameter?: number;
};

const ROWS = [
  { diameter: 16, limit: "in-use.free-play-16" },
  { diameter: 18, limit: "in-use.free-play-18" },
  { diameter: 20, limit: "in-use.free-play-20" },
  { diameter: 22, limit: "in-use.free-play-22" },
] as const;

/**
 * The figure of the row at or before the wheel's diameter, and of the row at or after it: the same one where the
 * table has the wheel, and no second one where it ends. The least figure where the diameter is not known.
 */
const freePlayLimits = (diameter?: number) => {
  const strict = ROWS.findLast((row) => diameter !== undefined && row.diameter <= diameter) ?? ROWS[0];
  const lax = ROWS.find((row) => diameter !== undefined && row.diameter >= diameter);
  return {
    strict: inUseFreePlayRecord.limit(strict.limit),
    lax: lax === undefined ? undefined : inUseFreePlayRecord.limit(lax.limit),
  };
};

/**
 * Steering free play in use, by the diameter of the steering wheel. The table has rows for 16 in or less, 18, 20
 * and 22 in and no rule between: there the stricter row passes, the laxer fails, and nothing else is said.
 *
 * Source: 49 CFR 570.7(a) table 1. Local inspection law decides.
 *
 * @param play at the rim, in
 * @param diameter of the steering wheel, in
 * @example inUseFreePlay(exactly(2.1), 17).reason // "between-rows"
 */
export const inUseFreePlay = (play: Estimate, diameter?: number): RuleResult => {
  const { strict, lax } = freePlayLimits(diameter);
  const { words, probability } = callsOf(play, { upper: strict.value });
  const detail = {
    figures: {
      reading: measured(play, "in"),
      probability,
      ...(diameter === undefined ? {} : { wheelDiameter: figure(diameter, "in") }),
    },
    words,
    limits: lax === undefined || lax.id === strict.id ? [strict] : [strict, lax],
  };
  if (judge(play, { high: strict.value }) === "holds") return inUseFreePlayRecord.answer("meets", detail);
  if (lax !== undefined && judge(play, { high: lax.value }) === "breaks") {
    return inUseFreePlayRecord.answer("over-limit", detail);
  }
  if (diameter === undefined) return inUseFreePlayRecord.answer("wheel-unknown", detail);
  return inUseFreePlayRecord.answer(lax?.id === strict.id ? "range-covers" : "between-rows", detail);
};
