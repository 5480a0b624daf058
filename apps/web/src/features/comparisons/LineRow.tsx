import type { SettlementState } from "@evenhand/shared/settlement";
import { Checkbox } from "@mantine/core";
import { memo } from "react";
import { OutcomeSign } from "../../ui/OutcomeSign";
import { useText } from "../../strings/text";
import { EntryDetail } from "./EntryDetail";
import styles from "./LineRow.module.css";
import { cameOf } from "../../entities/comparison/came-of";
import type { ComparisonSource, Row } from "../../entities/comparison/model";
import { SideAnswer } from "./SideAnswer";
import { useSeverityWords } from "../../entities/comparison/use-severity-words";

export interface LineWays {
  readonly onToggle: (at: number) => void;
  /** Lays the line before the dealer; absent for whoever may not. */
  readonly onLay?: (at: number) => void;
}

interface Props extends LineWays {
  readonly row: Row;
  readonly source: ComparisonSource;
  readonly open: boolean;
  /** While choosing what to lay before the dealer: whether this line is chosen; absent when it cannot be. */
  readonly chosen?: boolean;
  readonly onChoose?: (at: number, chosen: boolean) => void;
  /** How it stands with the dealer; absent while it was not laid before them. */
  readonly settled?: SettlementState;
}

/** What came of the line; what was settled is never said to differ and no more. */
const Word = ({ row: { entry }, settled }: Pick<Props, "row" | "settled">) => {
  const t = useText();
  const outcome = t(cameOf(entry));
  return (
    <>
      <OutcomeSign outcome={entry.outcome} size={20} />
      <span className={styles.word}>
        {settled === undefined
          ? outcome
          : t("settle.line", { outcome, state: t(`release.state.${settled}`) })}
      </span>
    </>
  );
};

const Name = ({ row, open, onToggle }: Pick<Props, "row" | "open" | "onToggle">) => {
  const grave = useSeverityWords()(row.entry);
  return (
    <div className={styles.name}>
      <h3>
        <button
          type="button"
          className={styles.opener}
          aria-expanded={open}
          aria-controls={open ? `detail-${row.at}` : undefined}
          onClick={() => onToggle(row.at)}
        >
          {row.name} {row.place !== "" && <span className={styles.place}>{row.place}</span>}
        </button>
      </h3>
      {grave !== null && <p className={styles.standing}>{grave}</p>}
    </div>
  );
};

const Choose = ({ row, chosen, onChoose }: Pick<Props, "row" | "chosen" | "onChoose">) => {
  const t = useText();
  if (onChoose === undefined || chosen === undefined) return null;
  return (
    <div className={styles.choose}>
      <Checkbox
        size="sm"
        checked={chosen}
        onChange={(event) => onChoose(row.at, event.currentTarget.checked)}
        aria-label={t("release.choose", { item: [row.name, row.place].filter(Boolean).join(", ") })}
      />
    </div>
  );
};

/** One line of the facing pages: it reads across as an equation, stated · sign · found. */
export const LineRow = memo(({ row, source, open, chosen, onChoose, onToggle, onLay, settled }: Props) => {
  return (
    <div
      className={styles.row}
      data-outcome={row.entry.outcome}
      data-open={open}
      data-choosing={onChoose !== undefined}
      id={`entry-${row.at}`}
    >
      <div className={styles.line}>
        <Name row={row} open={open} onToggle={onToggle} />
        <div className={styles.stated}>
          <SideAnswer side="a" row={row} source={source} />
        </div>
        <div className={styles.spine}>
          <Word row={row} settled={settled} />
        </div>
        <div className={styles.found}>
          <SideAnswer side="b" row={row} source={source} />
        </div>
        <Choose row={row} chosen={chosen} onChoose={onChoose} />
      </div>
      {open && (
        <div id={`detail-${row.at}`} className={styles.detail}>
          <EntryDetail row={row} source={source} onLay={onLay} />
        </div>
      )}
    </div>
  );
});
LineRow.displayName = "LineRow";
