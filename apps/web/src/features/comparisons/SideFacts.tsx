import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { conditionText } from "../../entities/sheet/condition-text";
import { quantity } from "../../entities/sheet/answer-text";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { SideAnswer, type Side } from "./SideAnswer";
import styles from "./SideFacts.module.css";

interface Props {
  readonly side: Side;
  readonly row: Row;
  readonly source: ComparisonSource;
}

const useInstrumentWords = (): ((source: ComparisonSource, side: Side, id: string) => string) => {
  const t = useText();
  const intl = useIntl();
  return (source, side, id) => {
    const instrument = source[side].instruments.find((one) => one.id === id);
    if (!instrument) return id;
    const { resolution, accuracy, calibrated } = instrument;
    const parts = [
      resolution && t("instrument.resolution", { step: quantity(resolution.value, resolution.unit) }),
      accuracy?.absolute &&
        t("instrument.accuracy", { within: quantity(accuracy.absolute.value, accuracy.absolute.unit) }),
      accuracy !== undefined &&
        accuracy.share > 0 &&
        t("instrument.share", { share: intl.formatNumber(accuracy.share * 100) }),
      calibrated !== undefined &&
        t("instrument.calibrated", {
          date: intl.formatDate(calibrated, { dateStyle: "medium", timeZone: "UTC" }),
        }),
    ].filter((part) => typeof part === "string");
    return parts.length > 0
      ? t("instrument.with", { name: instrument.name, facts: intl.formatList(parts, { type: "unit" }) })
      : instrument.name;
  };
};

/** The grounds of one side: how firmly, on what basis, with which instrument, by whom, when and in which circumstances. */
export const SideFacts = ({ side, row, source }: Props) => {
  const t = useText();
  const intl = useIntl();
  const instrumentWords = useInstrumentWords();
  const finding = row[side];
  const report = source[side];
  const rows: (readonly [string, ReactNode])[] = [];
  if (finding) {
    rows.push([t("facts.firmness"), t(`firmness.${finding.firmness}`)]);
    rows.push([t("facts.basis"), t(`basis.${finding.basis}`)]);
    if (finding.instrument !== undefined)
      rows.push([t("facts.instrument"), instrumentWords(source, side, finding.instrument)]);
    else if (finding.answer.kind === "reading") rows.push([t("facts.instrument"), t("facts.by-eye")]);
    const person = report.persons.find(({ id }) => id === finding.person)?.name;
    if (person !== undefined) rows.push([t("facts.person"), person]);
    if (finding.time !== undefined) {
      rows.push([
        t("facts.time"),
        intl.formatDate(finding.time, {
          dateStyle: "medium",
          timeStyle: "short",
          timeZone: report.visit.zone,
        }),
      ]);
    }
    const conditions = conditionText(intl, source.index, finding.conditions ?? {});
    if (conditions !== "") rows.push([t("facts.conditions"), conditions]);
    if (finding.blind !== undefined && side === "b")
      rows.push([t("facts.blind"), t(finding.blind ? "facts.blind.yes" : "facts.blind.no")]);
    if (finding.note !== undefined) rows.push([t("facts.note"), finding.note]);
  }
  return (
    <section className={styles.side} data-side={side}>
      <h4>
        {t(side === "a" ? "side.stated.by" : "side.found.by", { organization: report.author.organization })}
      </h4>
      <SideAnswer side={side} row={row} source={source} />
      {rows.length > 0 && (
        <dl className={styles.facts}>
          {rows.map(([term, text]) => (
            <div key={term}>
              <dt>{term}</dt>
              <dd>{text}</dd>
            </div>
          ))}
        </dl>
      )}
    </section>
  );
};
