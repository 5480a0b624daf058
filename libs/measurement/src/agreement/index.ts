import { normalQuantile } from "../normal-distribution/index.ts";
import { coverageFactor } from "../student-factor/index.ts";

/** Below this many items nothing is said of how well two people agree. Common practice, no source. */
export const LEAST_ITEMS = 10;

export type EstimatedAgreement = {
  readonly kind: "estimated";
  readonly coefficient: number;
  readonly standardError: number;
  /** Ends of the interval; no agreement is over 1 or under −1. */
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
 * - `tooFew`: fewer items than `least`, 10 unless the caller says otherwise
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

const within = (value: number): number => Math.min(1, Math.max(-1, value));

/**
 * A coefficient with its interval: ± the standard error times the normal factor, or Student's where degrees of
 * freedom are given; cut at −1 and 1.
 *
 * @example
 * agreementFrom({ coefficient: 0.5, standardError: 0.1, observed: 0.7, expected: 0.4, items: 50 }, 0.95)
 * // { kind: "estimated", …, low: 0.304…, high: 0.695… }
 */
export const agreementFrom = (
  figures: Omit<EstimatedAgreement, "kind" | "low" | "high">,
  confidence = 0.95,
  degreesOfFreedom?: number,
): EstimatedAgreement => {
  const factor =
    degreesOfFreedom === undefined
      ? normalQuantile((1 + confidence) / 2)
      : coverageFactor(degreesOfFreedom, confidence);
  const reach = factor * figures.standardError;
  return {
    kind: "estimated",
    ...figures,
    low: within(figures.coefficient - reach),
    high: within(figures.coefficient + reach),
  };
};
