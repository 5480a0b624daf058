import type { Verdict } from "@evenhand/shared/cross-check";
import { judgeSpan } from "../interval/index.ts";
import type { Span } from "../interval/index.ts";

/** The ratio claimed, and those the maker offered, where they are known. */
export type RatioClaim = { readonly claimed: number; readonly makers?: readonly number[] };

/** Two quoted ratios this close are one ratio rounded differently. */
const SAME_RATIO = 0.015;

/**
 * The values nearer to the claimed ratio than to its neighbors on the maker's list. At an end of the list it reaches
 * as far as on the other side, and without any neighbor by the given share of the ratio.
 *
 * @example ratioZone({ claimed: 3.58, makers: [3.23, 3.58, 3.73] }, 0.025) // { low: 3.405, high: 3.655 }
 * @example ratioZone({ claimed: 3.23, makers: [3.23, 3.58] }, 0.025) // { low: 3.055, high: 3.405 }
 */
export const ratioZone = ({ claimed, makers = [] }: RatioClaim, spacingShare: number): Span => {
  const gaps = makers.map((ratio) => ratio - claimed).filter((gap) => Math.abs(gap) > SAME_RATIO);
  const lower = Math.min(...gaps.filter((gap) => gap < 0).map((gap) => -gap));
  const upper = Math.min(...gaps.filter((gap) => gap > 0));
  const reach = (gap: number, other: number): number => {
    if (Number.isFinite(gap)) return gap;
    return Number.isFinite(other) ? other : 2 * spacingShare * claimed;
  };
  return { low: claimed - reach(lower, upper) / 2, high: claimed + reach(upper, lower) / 2 };
};

const REASONS = {
  holds: "claimed-ratio",
  breaks: "other-ratio",
  "cannot-tell": "cannot-separate",
} as const satisfies Record<Verdict, string>;

/**
 * How a stretch of possible ratios stands to the claim: the claimed one, another one, or not separable from its
 * neighbors.
 *
 * @example judgeRatio({ low: 3.1, high: 3.3 }, { claimed: 3.58, makers: [3.23, 3.58] }, 0.025) // "other-ratio"
 */
export const judgeRatio = (span: Span, claim: RatioClaim, spacingShare: number): (typeof REASONS)[Verdict] =>
  REASONS[judgeSpan(span, ratioZone(claim, spacingShare))];

/** The maker's ratios a stretch holds, as they are quoted. */
export const ratiosWithin = ({ low, high }: Span, makers: readonly number[] = []): string[] =>
  makers.filter((ratio) => ratio >= low && ratio <= high).map((ratio) => ratio.toFixed(2));
