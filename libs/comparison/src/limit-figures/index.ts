import type { LimitCall, LimitFigures } from "@evenhand/shared/comparison";
import type { Item, Limit, ReadingSpec } from "@evenhand/shared/sheet";
import { isAnyUnmet, limitsAt, limitValue } from "@evenhand/sheet/call";
import type { CallContext, LimitAt } from "@evenhand/sheet/call";
import { callConformity, probabilityOfConformity } from "@evenhand/measurement/conformity";
import { ROUNDING_SHARE } from "@evenhand/measurement/equivalence";
import type { Estimate } from "@evenhand/measurement/estimate";
import { deltaOf } from "../delta/index.ts";

/** A side against limits: its whole uncertainty (what is shared stays), and its extreme single readings. */
export type LimitSide = {
  readonly estimate: Estimate;
  readonly extremes: { readonly lowest: number; readonly highest: number };
};

/** A limit or alarm with the figure that holds at a place. */
type LimitInForce = { readonly limit: Limit; readonly value: number };

/** A side that the item's yardstick can judge under the conditions it noted. */
const judging = (
  { yardstickNeeds }: Pick<Item, "yardstickNeeds">,
  context: CallContext | undefined,
): CallContext | undefined =>
  context !== undefined && isAnyUnmet(yardstickNeeds, context.conditions) ? undefined : context;

/** Plain pass or fail, as a regulation has it: every single reading, equality passing, rounding apart. */
const passesPlainly = (
  { limit, value }: LimitInForce,
  side: LimitSide,
  delta: ReadingSpec["delta"],
): boolean => {
  const rounding = ROUNDING_SHARE * deltaOf(delta, side.estimate.value, side.estimate.value);
  const { lowest, highest } = side.extremes;
  return limit.side === "min" ? lowest >= value - rounding : highest <= value + rounding;
};

/** The worst spot is judged by itself: its value, with the uncertainty of the whole. */
const worstOf = ({ limit }: LimitInForce, { estimate, extremes }: LimitSide): number =>
  limit.side === "min"
    ? Math.min(estimate.value, extremes.lowest)
    : Math.max(estimate.value, extremes.highest);

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

/** What a limit asks of a side that the yardstick can judge; `undefined` where it does not speak of it. */
const askedOf = ({ limit, fixed }: LimitAt, context: CallContext | undefined): number | undefined =>
  context === undefined ? undefined : (fixed ?? limitValue(limit, context));

/** Whether an item has a limit or alarm figure at a place at all; most readings need not be set against any. */
export const hasLimits = ({ reading }: Pick<Item, "reading">, position = ""): boolean =>
  reading !== undefined &&
  (reading.limits.length > 0 || reading.alarms.length > 0) &&
  limitsAt(reading, position).length > 0;

/**
 * Each limit and alarm figure of an item that judges at least one of two sides, against each side that was read: plain pass or fail,
 * and the probability of conformity (JCGM 106:2012, 7.2) with the Student distribution of the side's estimate, the worst spot by
 * itself. Those of the place and the car, under the conditions each side noted; where a figure hangs on another answer, the found
 * one decides.
 *
 * @param contextA what of report A a limit may hang on; `undefined` where A says nothing of the place
 * @returns one row a limit, in the sheet's order; none where the item has none, or its yardstick cannot judge
 * @example limitFigures(tread, {}, {}, side, null)[0].a // { plain: "pass", probability: 0.99…, … }
 */
export const limitFigures = (
  item: Pick<Item, "reading" | "yardstickNeeds">,
  contextA: CallContext | undefined,
  contextB: CallContext | undefined,
  a: LimitSide | null,
  b: LimitSide | null,
): LimitFigures[] => {
  const position = (contextA ?? contextB)?.position;
  if (item.reading === undefined || !hasLimits(item, position)) return [];
  const { unit, delta } = item.reading;
  const judgingA = judging(item, contextA);
  const judgingB = judging(item, contextB);
  let rows: LimitFigures[] | undefined;
  for (const at of limitsAt(item.reading, position ?? "")) {
    const askedA = askedOf(at, judgingA);
    const askedB = askedOf(at, judgingB);
    const value = askedB ?? askedA;
    if (value === undefined) continue;
    const { limit } = at;
    const inForce: LimitInForce = { limit, value };
    const row: LimitFigures = {
      side: limit.side,
      value,
      unit,
      source: limit.source.text,
      practice: limit.source.kind === "common-practice",
      severity: limit.severity,
      a: a !== null && askedA !== undefined ? call(inForce, a, delta) : null,
      b: b !== null && askedB !== undefined ? call(inForce, b, delta) : null,
    };
    // A list of just one is by far the most frequent.
    if (rows === undefined) rows = [row];
    else rows.push(row);
  }
  return rows ?? [];
};
