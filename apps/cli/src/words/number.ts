import { UNITS } from "@evenhand/shared/unit";
import type { UnitSymbol } from "@evenhand/shared/unit";

const plain = new Intl.NumberFormat("en-US", { maximumSignificantDigits: 6, useGrouping: "min2" });

/**
 * A number as it is written in a report, without more digits than it was given with.
 *
 * @example formatNumber(0.30000000000000004) // "0.3"
 */
export const formatNumber = (value: number): string => plain.format(value);

/** Signs that stand against the number with no space between. */
const tight = (text: string): boolean => text === "" || /^[⁄°%]/.test(text);

/**
 * A quantity with its unit.
 *
 * @example formatQuantity(7, "1/32in") // "7⁄32 in"
 */
export const formatQuantity = (value: number | string, unit: UnitSymbol): string => {
  const { text } = UNITS[unit];
  const number = typeof value === "string" ? value : formatNumber(value);
  return tight(text) && !text.startsWith("°C") && !text.startsWith("°F")
    ? `${number}${text}`
    : `${number} ${text}`;
};

/** A share in per cent: `formatShare(0.8231)` is `82 %`. */
export const formatShare = (share: number): string => `${Math.round(share * 100)} %`;
