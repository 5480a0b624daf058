import type {
  ExchangeRate,
  LandedCostEntries,
  LandedRange,
  SetLandedLine,
} from "@evenhand/shared/landed-cost";

/** How many digits a currency's minor unit has (ISO 4217, as the Unicode CLDR lists them): 2 for dollars, 0 for yen. */
const minorDigits = (currency: string): number =>
  new Intl.NumberFormat("en", { style: "currency", currency }).resolvedOptions().maximumFractionDigits ?? 2;

const convert = (minor: number, { from, to, rate }: ExchangeRate): number =>
  Math.round(minor * rate * 10 ** (minorDigits(to) - minorDigits(from)));

/**
 * An amount in the currency the total is asked for in, at the rate entered for exactly that way; `null` where it is in it already,
 * or no such rate was entered. Of several rates of one pair the one of the latest day counts.
 */
export function convertedTo(
  { currency, amount }: Pick<SetLandedLine, "currency" | "amount">,
  entries: Pick<LandedCostEntries, "currency" | "rates">,
): { amount: LandedRange; rate: ExchangeRate } | null {
  if (entries.currency === null || currency === entries.currency) return null;
  const [rate] = entries.rates
    .filter(({ from, to }) => from === currency && to === entries.currency)
    .toSorted((a, b) => (a.on < b.on ? 1 : -1));
  if (rate === undefined) return null;
  const { low, likely, high } = amount;
  return {
    amount: { low: convert(low, rate), likely: convert(likely, rate), high: convert(high, rate) },
    rate,
  };
}
