import type { Finding } from "@evenhand/shared/finding";
import type { ReactNode } from "react";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { conditionText } from "../../entities/sheet/condition-text";
import { answerWords, quantity } from "../../entities/sheet/answer-text";
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

type Fact = readonly [term: string, text: ReactNode];

/** With what a reading was taken; by eye, where nothing is named. */
const useInstrumentFact = (): ((
  finding: Finding,
  source: ComparisonSource,
  side: Side,
) => string | undefined) => {
  const t = useText();
  const instrumentWords = useInstrumentWords();
  return ({ instrument, answer }, source, side) => {
    if (instrument !== undefined) return instrumentWords(source, side, instrument);
    return answer.kind === "reading" ? t("facts.no-instrument") : undefined;
  };
};

/** What was answered at the first look and at the second, where there were two. */
const useLooksFact = (): ((
  finding: Finding,
  row: Row,
  source: ComparisonSource,
  side: Side,
) => string | undefined) => {
  const t = useText();
  return ({ first, answer }, row, source, side) => {
    if (first === undefined) return undefined;
    const { index } = source;
    const words = (one: Finding["answer"]): string =>
      answerWords({ index, item: row.item, scales: source[side].scales }, one).text;
    const [before, now] = [words(first.answer), words(answer)];
    return before === now
      ? t("facts.looks.same", { first: before })
      : t("facts.looks.what", { first: before, second: now });
  };
};

/** How firmly, on what basis, with which instrument, by whom, when and in which circumstances; what is not known is left out. */
const useFacts = ({ side, row, source }: Props): readonly Fact[] => {
  const t = useText();
  const intl = useIntl();
  const instrumentFact = useInstrumentFact();
  const looksFact = useLooksFact();
  const finding = row[side];
  if (!finding) return [];
  const { persons, visit } = source[side];
  const { firmness, basis, person, time, blind, note, conditions = {} } = finding;
  const facts: readonly Fact[] = [
    [t("facts.firmness"), t(`firmness.${firmness}`)],
    [t("facts.basis"), t(`basis.${basis}`)],
    [t("facts.instrument"), instrumentFact(finding, source, side)],
    [t("facts.person"), persons.find(({ id }) => id === person)?.name],
    [
      t("facts.time"),
      time && intl.formatDate(time, { dateStyle: "medium", timeStyle: "short", timeZone: visit.zone }),
    ],
    [t("facts.conditions"), conditionText(intl, source.index, conditions) || undefined],
    [
      t("facts.blind"),
      side === "b" && blind !== undefined ? t(blind ? "facts.blind.yes" : "facts.blind.no") : undefined,
    ],
    [t("facts.looks"), looksFact(finding, row, source, side)],
    [t("facts.note"), note],
  ];
  return facts.filter(([, text]) => text !== undefined);
};

/** The grounds of one side. */
export const SideFacts = ({ side, row, source }: Props) => {
  const t = useText();
  const facts = useFacts({ side, row, source });
  const { organization } = source[side].author;
  return (
    <section className={styles.side} data-side={side}>
      <h4>{t(side === "a" ? "side.stated.by" : "side.found.by", { organization })}</h4>
      <SideAnswer side={side} row={row} source={source} />
      {facts.length > 0 && (
        <dl className={styles.facts}>
          {facts.map(([term, text]) => (
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
