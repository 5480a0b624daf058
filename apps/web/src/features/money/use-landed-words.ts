import type { LandedLineKind, LandedRange, LandedSource, SetLandedLine } from "@evenhand/shared/landed-cost";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { moneyText } from "../../ui/money";

const useDate = (): ((at: string) => string) => {
  const intl = useIntl();
  return (at) => intl.formatDate(at, { dateStyle: "medium", timeZone: "UTC" });
};

/** An amount, or from where to where it goes. */
export const useRange = (): ((range: LandedRange, currency: string) => string) => {
  const t = useText();
  const intl = useIntl();
  return ({ low, likely, high }, currency) => {
    const money = (minor: number): string => moneyText(intl, { minor, currency });
    if (low === high) return money(likely);
    return t("landed.range", { low: money(low), likely: money(likely), high: money(high) });
  };
};

/** Where a figure comes from. */
export const useLandedSource = (): ((from: LandedSource) => string) => {
  const t = useText();
  const date = useDate();
  return (from) => {
    switch (from.of) {
      case "entry":
        return t("landed.source.entry", { words: from.words });
      case "asking":
        return t("landed.source.asking");
      case "offer":
        return t(from.agreed ? "landed.source.offer.agreed" : "landed.source.offer", {
          date: date(from.at),
          by: from.by,
        });
      case "cost-table": {
        const { name, revision, unsetRows: count } = from;
        const id = count === 0 ? "landed.source.cost-table" : "landed.source.cost-table.unset";
        return t(id, { name, revision, count });
      }
      case "booking":
        return t("landed.source.booking", { count: from.visits, shared: from.shared ? "yes" : "no" });
      case "rates":
        return t("landed.source.rates", { ...from });
    }
  };
};

/** At which rate another currency was converted; `null` where it was not. */
export const useConverted = (): ((line: SetLandedLine) => string | null) => {
  const t = useText();
  const intl = useIntl();
  const date = useDate();
  const range = useRange();
  return ({ amount, currency, converted }) => {
    if (converted === null) return null;
    const { rate, on, source } = converted.rate;
    return t("landed.converted", {
      amount: range(amount, currency),
      rate: intl.formatNumber(rate, { maximumSignificantDigits: 8 }),
      date: date(on),
      source,
    });
  };
};

/** Lines by their names, one after the other. */
export const useLineNames = (): ((lines: readonly LandedLineKind[]) => string) => {
  const t = useText();
  const intl = useIntl();
  return (lines) =>
    intl.formatList(
      lines.map((line) => t(`landed.line.${line}`).toLocaleLowerCase(intl.locale)),
      { type: "unit" },
    );
};
