import { listed } from "@evenhand/message/listed";
import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import type { Span } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { wearMilesRecord } from "./record.ts";

/** Condition as a stretch of 0 (spent) to 1 (as new). */
export type WornPart = { readonly part: string; readonly condition: Span; readonly retrimmed?: boolean };

export type WearMilesInput = { readonly parts: readonly WornPart[]; readonly miles?: Estimate };

/** Where heavy wear ends on the house scale of five equal grades. */
const HEAVY_UP_TO = 0.4;

const isHeavy = ({ condition }: WornPart): boolean => condition.high <= HEAVY_UP_TO;
const isUnclear = ({ condition }: WornPart): boolean =>
  condition.low < HEAVY_UP_TO && condition.high > HEAVY_UP_TO;

/**
 * Wear against miles: heavy wear of pedals, wheel rim or belts under a low reading asks whether the reading is the
 * whole of it. Parts that were retrimmed are left out.
 *
 * Source: common practice, no source. A hint only.
 *
 * @example
 * wearMiles({ parts: [{ part: "pedals", condition: { low: 0, high: 0.2 } }], miles: exactly(12000) }).reason
 * // "more-wear-than-miles"
 */
export const wearMiles = ({ parts, miles }: WearMilesInput, firm: FirmLimits = {}): RuleResult => {
  const limit = wearMilesRecord.limit("wear.low-miles", firm);
  const limits = [limit];
  if (miles === undefined || parts.length === 0) return wearMilesRecord.answer("too-few", { limits });
  const first = parts.filter(({ retrimmed }) => retrimmed !== true);
  const heavy = first.filter(isHeavy);
  const detail = {
    limits,
    figures: { miles: figure(miles.value, "mi") },
    words: { parts: listed((heavy.length > 0 ? heavy : first).map(({ part }) => part)) },
  };
  if (first.length === 0) return wearMilesRecord.answer("retrimmed", detail);
  const enough = judge(miles, { low: limit.value });
  if (enough === "holds" || (heavy.length === 0 && !first.some(isUnclear)))
    return wearMilesRecord.answer("fits-miles", detail);
  return wearMilesRecord.answer(
    heavy.length > 0 && enough === "breaks" ? "more-wear-than-miles" : "range-covers",
    detail,
  );
};
