import type { Mark } from "@evenhand/shared/comparison";
import { useIntl } from "react-intl";
import { useText } from "../../strings/text";
import { PlacePictures } from "../../entities/evidence/PlacePictures";
import { EntryFigures } from "../../entities/comparison/EntryFigures";
import { LineActions } from "./LineActions";
import { LimitCalls } from "./LimitCalls";
import styles from "./EntryDetail.module.css";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { marks } from "../../entities/comparison/terms";
import { checkSentence, entrySentence } from "../../entities/comparison/sentences";
import { SideFacts } from "./SideFacts";

interface Props {
  readonly row: Row;
  readonly source: ComparisonSource;
  readonly onLay?: (at: number) => void;
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

/** Marks that the line's standing and sentence do not say already. */
const isSaid = (mark: Mark): mark is (typeof marks)[number] => marks.some((one) => one === mark);

const Rules = ({ broken }: Pick<Row, "broken">) => {
  const t = useText();
  if (broken.length === 0) return null;
  return (
    <section className={styles.rules}>
      <h4>{t("entry.rules", { count: broken.length })}</h4>
      <ul>
        {broken.map((check) => (
          <li key={`${check.rule}${check.reason}`}>{checkSentence(check)}</li>
        ))}
      </ul>
    </section>
  );
};

/** Figures stand folded: words come first. */
const Arithmetic = ({ row }: { readonly row: Row }) => {
  const t = useText();
  const { figures, limits = [] } = row.entry;
  if (figures === undefined && limits.length === 0) return null;
  return (
    <>
      {figures && (
        <div className={styles.figures}>
          <EntryFigures figures={figures} limits={limits} />
        </div>
      )}
      {limits.length > 0 && <LimitCalls limits={limits} />}
      <Settle row={row} />
      <details className={styles.settle}>
        <summary>{t("whole.arithmetic")}</summary>
        <Chance row={row} />
        <p>{t(`outcome.${row.entry.outcome}.means`)}</p>
      </details>
    </>
  );
};

/** What lies behind one line: the sentence, the figures, both sides' grounds, limits, rules, what would settle it and what to do. */
export const EntryDetail = ({ row, source, onLay }: Props) => {
  const t = useText();
  const said = row.entry.marks.filter(isSaid);
  return (
    <div className={styles.detail}>
      <p className={styles.sentence}>{entrySentence(source, row)}</p>
      {said.length > 0 && (
        <p className={styles.settle}>{said.map((mark) => t(`mark.${mark}`)).join(" · ")}</p>
      )}
      <PlacePictures places={[row.entry]} />
      <LineActions row={row} onLay={onLay} />
      <Arithmetic row={row} />
      <Rules broken={row.broken} />
      <div className={styles.sides}>
        <SideFacts side="a" row={row} source={source} />
        <SideFacts side="b" row={row} source={source} />
      </div>
    </div>
  );
};
