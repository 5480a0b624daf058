import { chanceInterval } from "./chance-interval.ts";
import type { ChanceInterval } from "./chance-interval.ts";

/** Below this many items nothing is said of how well two people agree. Common practice, no source. */
export const LEAST_ITEMS = 10;

export type EstimatedAgreement = {
  readonly kind: "estimated";
  readonly coefficient: number;
  readonly standardError: number;
  /** Ends of the interval; no agreement is over 1 or under −1, and the coefficient itself is always held. */
  readonly low: number;
  readonly high: number;
  /** Share of agreement seen, weighted. */
  readonly observed: number;
  /** Share of agreement chance would give, as this coefficient reckons it. */
  readonly expected: number;
  readonly items: number;
};

/**
 * What a coefficient of agreement answers:
 *
 * - `estimated`
 * - `tooFew`: fewer items than `least`, 10 unless the caller says otherwise; or so like each other that chance alone would
 *   give fewer disagreements than half of `least`, and then `least` says how many such items would do
 * - `noVariation`: every answer is in one category, so chance alone would agree fully
 */
export type Agreement =
  | EstimatedAgreement
  | { readonly kind: "tooFew"; readonly items: number; readonly least: number }
  | { readonly kind: "noVariation"; readonly items: number };

/** What all coefficients of agreement can be told. */
export type AgreementOptions = {
  /** The share of such intervals that would hold the true coefficient. 0.95 when left out. */
  readonly confidence?: number;
  /** The fewest items that are answered for. 10 when left out. */
  readonly least?: number;
};

/**
 * `tooFew` where chance alone would give fewer than half of `least` disagreements: where nearly everything is given one
 * grade, how far a coefficient lies from what chance gives hangs on a handful of items. Five is the usual least expected
 * count of a table (common practice, no source).
 *
 * @param chance the share of items on which chance alone would disagree
 * @example tooAlike(12, 0.25, 10) // { kind: "tooFew", items: 12, least: 20 }
 */
export const tooAlike = (
  items: number,
  chance: number,
  least: number,
): Extract<Agreement, { kind: "tooFew" }> | undefined =>
  items * chance < least / 2
    ? { kind: "tooFew", items, least: Math.max(least, Math.ceil(least / 2 / chance)) }
    : undefined;

/**
 * A coefficient with its interval, see `chanceInterval`.
 *
 * @example
 * agreementFrom({ coefficient: 1, standardError: 0, observed: 1, expected: 0.5, items: 10 }, interval, 0.95)
 * // { kind: "estimated", …, low: 0.383…, high: 1 }
 */
export const agreementFrom = (
  figures: Omit<EstimatedAgreement, "kind" | "low" | "high">,
  interval: ChanceInterval,
  confidence = 0.95,
): EstimatedAgreement => {
  const { low, high } = chanceInterval(interval, confidence);
  const { coefficient } = figures;
  return {
    kind: "estimated",
    ...figures,
    low: Math.max(-1, Math.min(low, coefficient)),
    high: Math.max(high, coefficient),
  };
};
