import type { DistanceUnit, TransportRates } from "@evenhand/shared/landed-cost";
import { parseMoney, usualCurrency } from "../../ui/money";
import { amountText, isCurrency } from "./typed-money";

export interface TypedBand {
  readonly upTo: string;
  readonly open: string;
  readonly enclosed: string;
}
/** A buyer's transport rates as they stand in their fields. */
export interface TypedRates {
  readonly currency: string;
  readonly unit: DistanceUnit;
  readonly per: TransportRates["per"];
  readonly bands: readonly TypedBand[];
  readonly source: string;
}

export const emptyBand: TypedBand = { upTo: "", open: "", enclosed: "" };

export const typedRates = (rates: TransportRates | null): TypedRates => {
  if (rates === null)
    return { currency: usualCurrency, unit: "mi", per: "distance", bands: [emptyBand], source: "" };
  const { currency, unit, per, source } = rates;
  const text = (minor: number | null): string => (minor === null ? "" : amountText({ minor, currency }));
  const bands = rates.bands.map(({ upTo, open, enclosed }) => ({
    upTo: String(upTo),
    open: text(open),
    enclosed: text(enclosed),
  }));
  return { currency, unit, per, bands, source };
};

/** `null` where it cannot be saved as typed. */
export const ratesOf = ({ currency, unit, per, bands, source }: TypedRates): TransportRates | null => {
  if (!isCurrency(currency) || source.trim().length < 3) return null;
  const rate = (text: string): number | null | undefined =>
    text.trim() === "" ? null : parseMoney(text, currency)?.minor;
  const stored: TransportRates["bands"] = [];
  for (const { upTo: end, ...of } of bands) {
    const upTo = Number(end.replaceAll(/[\s,]/g, ""));
    const [open, enclosed] = [rate(of.open), rate(of.enclosed)];
    if (!(upTo > (stored.at(-1)?.upTo ?? 0)) || open === undefined || enclosed === undefined) return null;
    stored.push({ upTo, open, enclosed });
  }
  return { currency, unit, per, bands: stored, source: source.trim() };
};
