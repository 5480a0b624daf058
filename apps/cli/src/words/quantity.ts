import { formatExact, formatUnit } from "@evenhand/wording/format-figure";
import type { UnitSymbol } from "@evenhand/shared/unit";

/**
 * A quantity as a report gives it, with its unit and no more digits than it has.
 *
 * @example formatQuantity(7, "1/32in") // "7⁄32 in"
 */
export const formatQuantity = (value: number | string, unit: UnitSymbol): string =>
  (typeof value === "number" ? formatExact(value) : value) + formatUnit(unit);

/** A share in per cent: `formatShare(0.8231)` is `82 %`. */
export const formatShare = (share: number): string => `${Math.round(share * 100)} %`;
