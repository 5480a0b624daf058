import type { Mark } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { EntryFigures } from "../../entities/comparison/EntryFigures";
import { LimitCalls } from "./LimitCalls";
import styles from "./EntryDetail.module.css";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { checkSentence, entrySentence } from "../../entities/comparison/sentences";
import { SideFacts } from "./SideFacts";

interface Props {
  readonly row: Row;
  readonly source: ComparisonSource;
}

/** Readings of one side alone that would settle a line that is consistent or in doubt. */
const Settle = ({ row }: { readonly row: Row }) => {
  const t = useText();
  const { figures, outcome } = row.entry;
  if (figures?.of !== "reading" || figures.settle === undefined) return null;
  if (outcome !== "consistent" && outcome !== "doubtful") return null;
  const { a, b } = figures.settle;
  if (a === null && b === null) return <p className={styles.settle}>{t("settle.none")}</p>;
  return (
    <p className={styles.settle}>
      {b !== null && t("settle.found", { count: b })} {a !== null && t("settle.stated", { count: a })}
    </p>
  );
};

const Chance = ({ row }: { readonly row: Row }) => {
  const t = useText();
  const intl = useIntl();
  const { figures, outcome } = row.entry;
  if (figures?.of !== "reading" || outcome !== "doubtful" || figures.qValue === null) return null;
  const q = intl.formatNumber(figures.qValue, { maximumSignificantDigits: 2 });
  return <p className={styles.settle}>{t("settle.chance", { q })}</p>;
};

const said = [
  "both-bad",
  "over-limit",
  "by-eye",
  "hedged",
  "second-hand",
  "no-yardstick",
  "only-as-declared",
  "perhaps-unit",
  "perhaps-other-side",
] as const satisfies readonly Mark[];

/** Marks that the line's standing and sentence do not say already. */
const isSaid = (mark: Mark): mark is (typeof said)[number] => said.some((one) => one === mark);

/** What lies behind one line: the sentence, the figures, both sides' grounds, limits, rules, and what would settle it. */
export const EntryDetail = ({ row, source }: Props) => {
  const t = useText();
  const { entry, broken } = row;
  const marks = entry.marks.filter(isSaid);
  return (
    <div className={styles.detail}>
      <p className={styles.sentence}>{entrySentence(source, row)}</p>
      {marks.length > 0 && (
        <p className={styles.settle}>{marks.map((mark) => t(`mark.${mark}`)).join(" · ")}</p>
      )}
      {entry.figures && (
        <div className={styles.figures}>
          <EntryFigures figures={entry.figures} limits={entry.limits ?? []} />
        </div>
      )}
      {entry.limits && entry.limits.length > 0 && <LimitCalls limits={entry.limits} />}
      {broken.length > 0 && (
        <section className={styles.rules}>
          <h4>{t("entry.rules", { count: broken.length })}</h4>
          <ul>
            {broken.map((check) => (
              <li key={`${check.rule}${check.reason}`}>{checkSentence(check)}</li>
            ))}
          </ul>
        </section>
      )}
      <div className={styles.sides}>
        <SideFacts side="a" row={row} source={source} />
        <SideFacts side="b" row={row} source={source} />
      </div>
      <Settle row={row} />
      <Chance row={row} />
      {row.item && (
        <p className={styles.how}>
          <OutcomeSign outcome={entry.outcome} size={18} bare /> {t(`outcome.${entry.outcome}.means`)}{" "}
          {t("entry.how", { how: row.item.how })}
        </p>
      )}
    </div>
  );
};
