import type { LandedCost, LandedLine } from "@evenhand/shared/landed-cost";
import { Link } from "@tanstack/react-router";
import { useText } from "../../strings/text";
import { Panel } from "../../ui/Page";
import styles from "./Money.module.css";
import { useConverted, useLandedSource, useLineNames, useRange } from "./use-landed-words";

type Unset = Extract<LandedLine, { unset: unknown }>;

const UnsetLine = ({ line: { line, unset } }: { readonly line: Unset }) => {
  const t = useText();
  return (
    <tr data-unset="true">
      <th scope="row">
        {t(`landed.line.${line}`)}
        <span className={styles.hint}>
          {t(`landed.unset.${unset}`)}{" "}
          {unset === "no-cost-table" && <Link to="/costs">{t("landed.unset.no-cost-table.do")}</Link>}
        </span>
      </th>
      <td>{t("landed.unset")}</td>
    </tr>
  );
};

const SetLine = ({ line }: { readonly line: Exclude<LandedLine, Unset> }) => {
  const t = useText();
  const [range, source] = [useRange(), useLandedSource()];
  const converted = useConverted()(line);
  return (
    <tr>
      <th scope="row">
        {t(`landed.line.${line.line}`)}
        <span className={styles.hint}>{source(line.source)}</span>
        {converted !== null && <span className={styles.hint}>{converted}</span>}
      </th>
      <td className="figures">
        {line.converted === null
          ? range(line.amount, line.currency)
          : range(line.converted.amount, line.converted.rate.to)}
      </td>
    </tr>
  );
};

const Totals = ({ cost: { totals, without } }: { readonly cost: LandedCost }) => {
  const t = useText();
  const [range, names] = [useRange(), useLineNames()];
  return totals.map(({ currency, amount }) => (
    <tr key={currency} className={styles.total}>
      <th scope="row">
        {totals.length === 1 ? t("landed.total") : t("landed.total.in", { currency })}
        {without.length > 0 && (
          <span className={styles.without}>{t("landed.without", { lines: names(without) })}</span>
        )}
      </th>
      <td className="figures">{range(amount, currency)}</td>
    </tr>
  ));
};

/** Every line with its source, what is unset said so, and the total with what it is without. */
export const LandedLines = ({ cost }: { readonly cost: LandedCost }) => {
  const t = useText();
  return (
    <Panel title={t("landed.lines")} hint={t("landed.plain")}>
      <table className={styles.lines}>
        <tbody>
          {cost.lines.map((line, at) =>
            "unset" in line ? <UnsetLine key={at} line={line} /> : <SetLine key={at} line={line} />,
          )}
          <Totals cost={cost} />
        </tbody>
      </table>
      {cost.totals.length === 0 && <p className={styles.note}>{t("landed.none")}</p>}
      {cost.totals.length > 1 && <p className={styles.note}>{t("landed.apart")}</p>}
    </Panel>
  );
};
