import type { ReadingFigures } from "@evenhand/shared/comparison";

type Read = Pick<ReadingFigures, "difference" | "useAllowed">;

/**
 * What is left of a difference after the use allowed between two visits.
 *
 * @example leftOf({ difference: -7, useAllowed: -4 }) // -3
 */
export const leftOf = ({ difference, useAllowed = 0 }: Read): number =>
  Math.sign(difference) * Math.max(0, Math.abs(difference) - Math.abs(useAllowed)) + 0;

/**
 * Where B's mean may lie and still be within what matters of A's: δ on either side, and the use allowed on one.
 *
 * @example allowedBand({ a: { mean: 8 }, delta: 2, useAllowed: 0.5 }) // { low: 5.5, high: 10 }
 */
export const allowedBand = ({
  a,
  delta,
  useAllowed = 0,
}: Pick<ReadingFigures, "delta" | "useAllowed"> & { readonly a: { readonly mean: number } }): {
  readonly low: number;
  readonly high: number;
} => ({ low: a.mean - delta - Math.max(0, useAllowed), high: a.mean + delta - Math.min(0, useAllowed) });
