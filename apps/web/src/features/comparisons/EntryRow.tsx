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

/** One line of the facing pages: it reads across as an equation, stated · sign · found. */
export const EntryRow = memo(({ row, source, open, onToggle, chosen, onChoose }: Props) => {
  const t = useText();
  const { entry } = row;
  const grave = useSeverityWords()(entry);
  const contradicted = entry.standing === "contradicted-by-figures";
  return (
    <li
      className={styles.row}
      data-outcome={entry.outcome}
      data-open={open}
      data-choosing={onChoose !== undefined}
      id={`entry-${row.at}`}
    >
      <div className={styles.line}>
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
            {t(`standing.${entry.standing}`)}
          </p>
        </div>
        <div className={styles.stated}>
          <SideAnswer side="a" row={row} source={source} />
        </div>
        <div className={styles.spine}>
          <OutcomeSign outcome={entry.outcome} />
          <span className={styles.word}>{t(`outcome.${entry.outcome}`)}</span>
          {contradicted && <span className={styles.contradicted}>{t("entry.contradicted")}</span>}
        </div>
        <div className={styles.found}>
          <SideAnswer side="b" row={row} source={source} />
        </div>
        {onChoose && chosen !== undefined && (
          <div className={styles.choose}>
            <Checkbox
              size="md"
              checked={chosen}
              onChange={(event) => onChoose(row.at, event.currentTarget.checked)}
              aria-label={t("release.choose", { item: [row.name, row.place].filter(Boolean).join(", ") })}
            />
          </div>
        )}
      </div>
      {open && (
        <div id={`detail-${row.at}`} className={styles.detail}>
          <EntryDetail row={row} source={source} />
        </div>
      )}
    </li>
  );
});
EntryRow.displayName = "EntryRow";
