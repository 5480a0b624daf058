import { Checkbox } from "@mantine/core";
import { memo } from "react";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { useText } from "../../strings/text";
import { EntryDetail } from "./EntryDetail";
import styles from "./EntryRow.module.css";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { SideAnswer } from "./SideAnswer";
import { useSeverityWords } from "../../entities/comparison/use-severity-words";

interface Props {
  readonly row: Row;
  readonly source: ComparisonSource;
  readonly open: boolean;
  readonly onToggle: (at: number) => void;
  /** While choosing what to lay before the dealer: whether this line is chosen; absent when it cannot be. */
  readonly chosen?: boolean;
  readonly onChoose?: (at: number, chosen: boolean) => void;
}

/** What the line is about; pressing it shows what lies behind. */
const Name = ({ row, open, onToggle }: Pick<Props, "row" | "open" | "onToggle">) => {
  const t = useText();
  const grave = useSeverityWords()(row.entry);
  return (
    <div className={styles.name}>
      <h3>
        <button
          type="button"
          className={styles.opener}
          aria-expanded={open}
          aria-controls={`detail-${row.at}`}
          onClick={() => onToggle(row.at)}
        >
          {row.name} {row.place !== "" && <span className={styles.place}>{row.place}</span>}
        </button>
      </h3>
      <p className={styles.standing}>
        {grave !== null && `${grave} · `}
        {t(`standing.${row.entry.standing}`)}
      </p>
    </div>
  );
};

const Spine = ({ row: { entry } }: Pick<Props, "row">) => {
  const t = useText();
  const contradicted = entry.standing === "contradicted-by-figures";
  return (
    <div className={styles.spine}>
      <OutcomeSign outcome={entry.outcome} />
      <span className={styles.word}>{t(`outcome.${entry.outcome}`)}</span>
      {contradicted && <span className={styles.contradicted}>{t("entry.contradicted")}</span>}
    </div>
  );
};

const Choose = ({ row, chosen, onChoose }: Pick<Props, "row" | "chosen" | "onChoose">) => {
  const t = useText();
  if (!onChoose || chosen === undefined) return null;
  return (
    <div className={styles.choose}>
      <Checkbox
        size="md"
        checked={chosen}
        onChange={(event) => onChoose(row.at, event.currentTarget.checked)}
        aria-label={t("release.choose", { item: [row.name, row.place].filter(Boolean).join(", ") })}
      />
    </div>
  );
};

const Line = ({ source, ...line }: Props) => (
  <div className={styles.line}>
    <Name {...line} />
    <div className={styles.stated}>
      <SideAnswer side="a" row={line.row} source={source} />
    </div>
    <Spine row={line.row} />
    <div className={styles.found}>
      <SideAnswer side="b" row={line.row} source={source} />
    </div>
    <Choose {...line} />
  </div>
);

/** One line of the facing pages: it reads across as an equation, stated · sign · found. */
export const EntryRow = memo((line: Props) => {
  const { row, source, open, onChoose } = line;
  return (
    <li
      className={styles.row}
      data-outcome={row.entry.outcome}
      data-open={open}
      data-choosing={onChoose !== undefined}
      id={`entry-${row.at}`}
    >
      <Line {...line} />
      {open && (
        <div id={`detail-${row.at}`} className={styles.detail}>
          <EntryDetail row={row} source={source} />
        </div>
      )}
    </li>
  );
});
EntryRow.displayName = "EntryRow";
