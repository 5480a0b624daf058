import type { LimitCall, LimitFigures } from "@evenhand/shared/comparison";
import type { Item, Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { isUnmet, limitsAt, limitValue } from "@evenhand/sheet/call";
import type { CallContext } from "@evenhand/sheet/call";
import { callConformity, probabilityOfConformity } from "@evenhand/measurement/conformity";
import { ROUNDING_SHARE } from "@evenhand/measurement/equivalence";
import type { Estimate } from "@evenhand/measurement/estimate";
import { deltaOf } from "../delta/index.ts";

/** A side against limits: its whole uncertainty (what is shared stays), and its extreme single readings. */
export type LimitSide = { readonly estimate: Estimate; readonly lowest: number; readonly highest: number };

/** A limit or alarm that judges at least one of two sides, with the figure that holds there. */
export type LimitInForce = {
  readonly limit: Limit;
  readonly value: number;
  readonly judgesA: boolean;
  readonly judgesB: boolean;
};

const NONE: readonly LimitInForce[] = [];

/** A side that the item's yardstick can judge under the conditions it noted. */
const judging = (
  { yardstickNeeds }: Pick<Item, "yardstickNeeds">,
  context: CallContext | undefined,
): CallContext | undefined =>
  context === undefined || yardstickNeeds === undefined
    ? context
    : yardstickNeeds.some((needed) => isUnmet(needed, context.conditions))
      ? undefined
      : context;

/**
 * Limits and alarm figures of an item that judge these two sides: those of the place and the car, under the conditions each side
 * noted; where a figure hangs on another answer, the found one decides.
 *
 * @returns none where the item has none, or its yardstick cannot judge
 */
export const limitsInForce = (
  item: Pick<Item, "reading" | "yardstickNeeds">,
  contextA: CallContext | undefined,
  contextB: CallContext | undefined,
): readonly LimitInForce[] => {
  const spec = item.reading;
  if (spec === undefined || (spec.limits.length === 0 && spec.alarms.length === 0)) return NONE;
  const judgingA = judging(item, contextA);
  const judgingB = judging(item, contextB);
  const inForce: LimitInForce[] = [];
  const there = limitsAt(spec, (contextA ?? contextB)?.position ?? "");
  for (let index = 0; index < there.length; index += 1) {
    const at = there[index];
    if (at === undefined) continue;
    const { limit, fixed } = at;
    const a = judgingA === undefined ? undefined : (fixed ?? limitValue(limit, judgingA));
    const b = judgingB === undefined ? undefined : (fixed ?? limitValue(limit, judgingB));
    const value = b ?? a;
    if (value === undefined) continue;
    inForce.push({ limit, value, judgesA: a !== undefined, judgesB: b !== undefined });
  }
  return inForce;
};

/** Plain pass or fail, as a regulation has it: every single reading, equality passing, rounding apart. */
const passesPlainly = (
  { limit, value }: LimitInForce,
  side: LimitSide,
  delta: ReadingSpec["delta"],
): boolean => {
  const rounding = ROUNDING_SHARE * deltaOf(delta, side.estimate.value, side.estimate.value);
  return limit.side === "min" ? side.lowest >= value - rounding : side.highest <= value + rounding;
};

/** The worst spot is judged by itself: its value, with the uncertainty of the whole. */
const worstOf = ({ limit }: LimitInForce, { estimate, lowest, highest }: LimitSide): number =>
  limit.side === "min" ? Math.min(estimate.value, lowest) : Math.max(estimate.value, highest);

const call = (inForce: LimitInForce, side: LimitSide, delta: ReadingSpec["delta"]): LimitCall => {
  const { limit, value } = inForce;
  const limits = limit.side === "min" ? { lower: value } : { upper: value };
  const probability = probabilityOfConformity(side.estimate, limits, worstOf(inForce, side));
  return {
    plain: passesPlainly(inForce, side, delta) ? "pass" : "fail",
    probability,
    call: callConformity(probability),
  };
};

/**
 * Each limit in force against each side that was read: plain pass or fail, and the probability of conformity
 * (JCGM 106:2012, 7.2) with the Student distribution of the side's estimate, the worst spot by itself.
 *
 * @returns one row a limit, in the sheet's order
 * @example limitFigures(treadSpec, limitsInForce(tread, {}, {}), side, null)[0].a // { plain: "pass", probability: 0.99…, … }
 */
export const limitFigures = (
  spec: ReadingSpec,
  inForce: readonly LimitInForce[],
  a: LimitSide | null,
  b: LimitSide | null,
): LimitFigures[] =>
  inForce.map((each) => ({
    side: each.limit.side,
    value: each.value,
    unit: spec.unit,
    source: each.limit.source.text,
    practice: each.limit.source.kind === "common-practice",
    severity: each.limit.severity,
    a: a !== null && each.judgesA ? call(each, a, spec.delta) : null,
    b: b !== null && each.judgesB ? call(each, b, spec.delta) : null,
  }));
