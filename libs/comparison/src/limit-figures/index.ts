import type { LimitCall, LimitFigures } from "@evenhand/shared/comparison";
import type { Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { callConformity, probabilityOfConformity } from "@evenhand/measurement/conformity";
import { ROUNDING_SHARE } from "@evenhand/measurement/equivalence";
import type { Estimate } from "@evenhand/measurement/estimate";
import { deltaOf } from "../delta/index.ts";

/** A side against limits: its whole uncertainty (what is shared stays), and its extreme single readings. */
export type LimitSide = { readonly estimate: Estimate; readonly lowest: number; readonly highest: number };

/** Plain pass or fail, as a regulation has it: every single reading, equality passing, rounding apart. */
const passesPlainly = (limit: Limit, side: LimitSide, delta: ReadingSpec["delta"]): boolean => {
  const rounding = ROUNDING_SHARE * deltaOf(delta, side.estimate.value, side.estimate.value);
  return limit.side === "min"
    ? side.lowest >= limit.value - rounding
    : side.highest <= limit.value + rounding;
};

const call = (limit: Limit, side: LimitSide, delta: ReadingSpec["delta"]): LimitCall => {
  const limits = limit.side === "min" ? { lower: limit.value } : { upper: limit.value };
  const probability = probabilityOfConformity(side.estimate, limits);
  return {
    plain: passesPlainly(limit, side, delta) ? "pass" : "fail",
    probability,
    call: callConformity(probability),
  };
};

/**
 * Each limit of an item against each side that was read: the regulation's own pass or fail, and the probability
 * of conformity (JCGM 106:2012, 7.2) with the Student distribution of the side's estimate.
 *
 * @returns one row a limit, in the sheet's order; none where the item has no limit
 * @example limitFigures(treadSpec, side, null)[0].a // { plain: "pass", probability: 0.99…, call: "meets" }
 */
export const limitFigures = (spec: ReadingSpec, a: LimitSide | null, b: LimitSide | null): LimitFigures[] =>
  spec.limits.map((limit) => ({
    side: limit.side,
    value: limit.value,
    unit: spec.unit,
    source: limit.source.text,
    a: a && call(limit, a, spec.delta),
    b: b && call(limit, b, spec.delta),
  }));

const fails = (limitCall: LimitCall): boolean => limitCall.plain === "fail" || limitCall.call === "fails";

/**
 * How the two sides stand against the limits together.
 *
 * - `opposite`: one meets a limit, the other fails it, both surely
 * - `same-failure`: both fail the same limit
 * - `one-fails`: one fails, the other does not, and not both surely
 * - `clear`: no limit failed by either
 */
export type LimitConflict = "opposite" | "same-failure" | "one-fails" | "clear";

const conflictAt = ({ a, b }: LimitFigures): LimitConflict => {
  if (a === null || b === null) return "clear";
  if ((a.call === "meets" && b.call === "fails") || (a.call === "fails" && b.call === "meets"))
    return "opposite";
  if (fails(a) && fails(b)) return "same-failure";
  return fails(a) || fails(b) ? "one-fails" : "clear";
};

const PRESSING: readonly LimitConflict[] = ["opposite", "one-fails", "same-failure", "clear"];

/**
 * The most pressing conflict over all limits of an item; a disagreement about a limit outranks a failure both
 * see.
 *
 * @example limitConflict([]) // "clear"
 */
export const limitConflict = (limits: readonly LimitFigures[]): LimitConflict => {
  let most = PRESSING.length - 1;
  for (const limit of limits) most = Math.min(most, PRESSING.indexOf(conflictAt(limit)));
  return PRESSING[most] ?? "clear";
};

/** Whether a side fails any limit. */
export const failsLimit = (limits: readonly LimitFigures[], side: "a" | "b"): boolean =>
  limits.some((limit) => {
    const limitCall = limit[side];
    return limitCall !== null && fails(limitCall);
  });
