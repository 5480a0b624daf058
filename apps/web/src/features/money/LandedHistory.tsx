import type { LandedCostHistory } from "@evenhand/shared/http/money";
import type { LandedChange } from "@evenhand/shared/landed-cost";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { moneyText } from "../../ui/money";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Money.module.css";
import { landedHistoryQuery } from "./queries";

type Version = LandedCostHistory["items"][number];
type Told = { readonly what: string; readonly before: string | null; readonly after: string | null };

/** Says what stands on either side of a change, where something does. */
const both = <T,>(what: string, { before, after }: Sides<T>, say: (one: T) => string): Told => ({
  what,
  before: before === null ? null : say(before),
  after: after === null ? null : say(after),
});
type Sides<T> = { readonly before: T | null; readonly after: T | null };

const useTold = (): ((change: LandedChange) => Told) => {
  const [t, intl] = [useText(), useIntl()];
  const date = (on: string): string => intl.formatDate(on, { dateStyle: "medium", timeZone: "UTC" });
  const number = (rate: number): string => intl.formatNumber(rate, { maximumSignificantDigits: 8 });
  return (change) => {
    switch (change.of) {
      case "line":
        return both(t(`landed.line.${change.line}`), change, ({ amount, source }) =>
          t("landed.history.figure", { figure: moneyText(intl, amount), source }),
        );
      case "trip":
        return both(t("landed.trip"), change, (trip) => t("landed.history.trip", { ...trip }));
      case "limit":
        return both(t("landed.limit"), change, (limit) => moneyText(intl, limit));
      case "currency":
        return both(t("landed.exchange.to"), change, (code) => code);
      case "rate":
        return both(
          t("landed.history.rate", { from: change.from, to: change.to }),
          change,
          ({ rate, on, source }) =>
            t("landed.history.rate.figure", { rate: number(rate), date: date(on), source }),
        );
    }
  };
};

const useChangeText = (): ((change: LandedChange) => string) => {
  const t = useText();
  const told = useTold();
  return (change) => {
    const { what, before, after } = told(change);
    if (before === null) return t("landed.history.first", { what, after: after ?? "" });
    if (after === null) return t("landed.history.gone", { what, before });
    return t("landed.history.change", { what, before, after });
  };
};

const OneVersion = ({ version: { revision, savedBy, savedAt, changes } }: { readonly version: Version }) => {
  const [t, intl] = [useText(), useIntl()];
  const textOf = useChangeText();
  const when = intl.formatDate(savedAt, { dateStyle: "medium", timeStyle: "short" });
  return (
    <li className={styles.version}>
      <p>
        {t("landed.history.version", { revision })}
        <span className={styles.hint}>{t("landed.history.by", { when, who: savedBy })}</span>
      </p>
      {changes.length === 0 && <p className={styles.hint}>{t("landed.history.same")}</p>}
      <ul>
        {changes.map(textOf).map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </li>
  );
};

/** Who entered what for a car and when, the latest first. */
export const LandedHistory = ({ id }: { readonly id: string }) => {
  const t = useText();
  const { data, error } = useQuery(landedHistoryQuery(id));
  return (
    <Panel title={t("landed.history")}>
      {error !== null && <ProblemNotice error={error} />}
      {data === undefined && error === null && <Loading />}
      {data?.items.length === 0 && <p className={styles.hint}>{t("landed.history.none")}</p>}
      <ul className={styles.list}>
        {data?.items.map((version) => (
          <OneVersion key={version.revision} version={version} />
        ))}
      </ul>
    </Panel>
  );
};
