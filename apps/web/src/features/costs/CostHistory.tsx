import type { CostRow } from "@evenhand/shared/cost-table";
import type { CostTableHistory } from "@evenhand/shared/http/summaries";
import { useQuery } from "@tanstack/react-query";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { Loading } from "../../ui/Loading";
import { moneyText } from "../../ui/money";
import { Panel } from "../../ui/Page";
import { ProblemNotice } from "../../ui/ProblemNotice";
import styles from "./Costs.module.css";
import { costHistoryQuery } from "./queries";

type Version = CostTableHistory["items"][number];

const useChangeText = (currency: string) => {
  const [t, intl] = [useText(), useIntl()];
  const said = (minor: number): string => moneyText(intl, { minor, currency });
  const amounts = ({ low, likely, high }: Pick<CostRow, "low" | "likely" | "high">): string =>
    t("costs.range", { low: said(low), likely: said(likely), high: said(high) });
  const range = ({ small, ...whole }: CostRow): string =>
    small === undefined
      ? amounts(whole)
      : t("costs.range.small", { whole: amounts(whole), small: amounts(small) });
  return ({ words, before, after }: Version["changes"][number]): string => {
    if (before === null)
      return t("costs.history.added", { words, after: after === null ? "" : range(after) });
    if (after === null) return t("costs.history.removed", { words, before: range(before) });
    if (range(before) === range(after)) return t("costs.history.due", { words });
    return t("costs.history.changed", { words, before: range(before), after: range(after) });
  };
};

const OneVersion = ({
  version: { revision, name, currency, savedBy, savedAt, changes },
}: {
  readonly version: Version;
}) => {
  const [t, intl] = [useText(), useIntl()];
  const textOf = useChangeText(currency);
  const when = intl.formatDate(savedAt, { dateStyle: "medium", timeStyle: "short" });
  return (
    <li className={styles.version}>
      <details>
        <summary>
          {t("costs.history.version", { revision, name })}
          <span className={styles.hint}>{t("costs.history.by", { when, who: savedBy })}</span>
        </summary>
        {changes.length === 0 && <p className={styles.hint}>{t("costs.history.no-row")}</p>}
        <ul className={styles.changes}>
          {changes.map((change) => (
            <li key={change.row}>{textOf(change)}</li>
          ))}
        </ul>
      </details>
    </li>
  );
};

/** What was saved, the latest first: who changed which figures when. */
export const CostHistory = () => {
  const t = useText();
  const { data, error } = useQuery(costHistoryQuery);
  return (
    <Panel title={t("costs.history")}>
      {error !== null && <ProblemNotice error={error} />}
      {data === undefined && error === null && <Loading />}
      {data?.items.length === 0 && <p className={styles.hint}>{t("costs.history.none")}</p>}
      <ul className={styles.list}>
        {data?.items.map((version) => (
          <OneVersion key={version.revision} version={version} />
        ))}
      </ul>
    </Panel>
  );
};
