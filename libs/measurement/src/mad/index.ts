import { median } from "../median/index.ts";

/** What makes the median absolute deviation of a normal sample estimate its σ: 1/Φ⁻¹(¾) (Hampel 1974). */
export const NORMAL_CONSISTENCY = 1.482602218505602;

/**
 * Median absolute deviation from the median, unscaled; times {@link NORMAL_CONSISTENCY} it estimates the
 * standard deviation of a normal sample and is not moved by a few values far out. In the unit of the values.
 *
 * @throws {RangeError} for an empty list
 * @example mad([1, 1, 2, 2, 4, 6, 9]) // 1
 */
export const mad = (values: readonly number[]): number => {
  const center = median(values);
  return median(values.map((value) => Math.abs(value - center)));
};
