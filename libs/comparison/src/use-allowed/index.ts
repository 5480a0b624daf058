import type { ReadingFigures, SideFigures } from "@evenhand/shared/comparison";
import type { ReadingSpec } from "@evenhand/shared/sheet";

type Read = Pick<ReadingFigures, "difference" | "useAllowed" | "correction">;

/**
 * A difference as it was read, with what corrections of the sides add to it.
 *
 * @example takenDifference({ difference: 1.8, correction: 0.3 }) // 2.1
 */
export const takenDifference = ({
  difference,
  correction,
}: Pick<ReadingFigures, "difference" | "correction">): number =>
  correction === undefined ? difference : difference + correction;

/**
 * What a side's reading was taken as: its mean, less what was corrected.
 *
 * @example takenMean({ mean: 6.2, taken: 5.9 }) // 5.9
 */
export const takenMean = ({ mean, taken = mean }: Pick<SideFigures, "mean" | "taken">): number => taken;

type Sided = Pick<ReadingFigures, "difference" | "correction"> & {
  readonly a: Pick<SideFigures, "mean" | "taken">;
  readonly b: Pick<SideFigures, "mean" | "taken">;
};

/** Both means and their difference as they were taken. */
export const asTaken = (figures: Sided) => {
  const { a, b, correction } = figures;
  if (correction === undefined) return figures;
  return { a: { mean: takenMean(a) }, b: { mean: takenMean(b) }, difference: takenDifference(figures) };
};

/**
 * What is left of a difference, corrected, after the use allowed between two visits.
 *
 * @example leftOf({ difference: -7, useAllowed: -4 }) // -3
 */
export const leftOf = (read: Read): number => {
  const { useAllowed = 0 } = read;
  const difference = takenDifference(read);
  return Math.sign(difference) * Math.max(0, Math.abs(difference) - Math.abs(useAllowed)) + 0;
};

/**
 * Where B's mean may lie and still be within what matters of A's: δ on either side, and the use allowed on one.
 *
 * @example allowedBand({ a: { mean: 8 }, delta: 2, useAllowed: 0.5 }) // { low: 5.5, high: 10 }
 */
export const allowedBand = ({
  a,
  delta,
  useAllowed = 0,
}: Pick<ReadingFigures, "delta" | "useAllowed"> & { readonly a: Pick<SideFigures, "mean" | "taken"> }): {
  readonly low: number;
  readonly high: number;
} => ({
  low: takenMean(a) - delta - Math.max(0, useAllowed),
  high: takenMean(a) + delta - Math.min(0, useAllowed),
});

/**
 * How far a reading that drifts may rightly move from one day to another, in the item's unit; δ where the sheet says nothing.
 *
 * @example dayToDayOf(tirePressure, { a: { mean: 30 }, b: { mean: 27 }, delta: 4 }) // 4
 */
export const dayToDayOf = (
  { dayToDay, dayToDayShare = 0 }: Pick<ReadingSpec, "dayToDay" | "dayToDayShare">,
  {
    a,
    b,
    delta,
  }: Pick<ReadingFigures, "delta"> & {
    readonly a: { readonly mean: number };
    readonly b: { readonly mean: number };
  },
): number =>
  dayToDay === undefined && dayToDayShare === 0
    ? delta
    : (dayToDay ?? 0) + dayToDayShare * Math.max(Math.abs(a.mean), Math.abs(b.mean));
