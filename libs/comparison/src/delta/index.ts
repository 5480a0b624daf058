import type { ReadingSpec } from "@evenhand/shared/sheet";

/**
 * δ for readings of this size: the greater of the item's absolute part and its share of the mean of both sizes.
 *
 * @example deltaOf({ absolute: 75, share: 0.3 }, 300, 500) // 120
 */
export const deltaOf = (delta: ReadingSpec["delta"], a: number, b: number): number =>
  Math.max(delta.absolute, (delta.share * (Math.abs(a) + Math.abs(b))) / 2);
