import type { Money } from "@evenhand/shared/identifier";
import type { IntlShape } from "react-intl";
import type { z } from "zod";

/** Where nothing says in which. */
export const usualCurrency = "USD";

const digitsOf = new Map<string, number>();

/** How many digits a currency's minor unit has: 2 for dollars, 0 for yen. */
export const minorDigits = (currency: string): number => {
  const known = digitsOf.get(currency);
  if (known !== undefined) return known;
  const { maximumFractionDigits: digits = 2 } = new Intl.NumberFormat("en", {
    style: "currency",
    currency,
  }).resolvedOptions();
  digitsOf.set(currency, digits);
  return digits;
};

/** Whole amounts show no cents. */
export const moneyText = (intl: IntlShape, { minor, currency }: z.infer<typeof Money>): string => {
  const amount = minor / 10 ** minorDigits(currency);
  return intl.formatNumber(amount, { style: "currency", currency, trailingZeroDisplay: "stripIfInteger" });
};

/** An amount as typed, `54,500` or `54500.50`, in whole minor units; `null` where it is none, or has more digits than the currency. */
export const parseMoney = (text: string, currency: string): z.infer<typeof Money> | null => {
  const plain = text.replaceAll(/[\s,$€£]/g, "");
  const digits = minorDigits(currency);
  const [, , after = ""] = /^(\d+)(?:\.(\d*))?$/.exec(plain) ?? [];
  if (!/^\d+(\.\d*)?$/.test(plain) || after.length > digits) return null;
  return { minor: Math.round(Number(plain) * 10 ** digits), currency };
};
