import type { Fault } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import { useText } from "../../strings/text";
import {
  answerWords,
  denialText,
  faultText,
  type AnswerContext,
  type AnswerWords,
} from "../../entities/sheet/answer-text";
import styles from "./LineRow.module.css";
import type { ComparisonSource, Row } from "../../entities/comparison/model";

export type Side = "a" | "b";

const faultAt = (row: Row, side: Side): Fault | undefined => {
  const { atom } = row.entry;
  const answer = row[side]?.answer;
  if (atom.of !== "fault" || answer?.kind !== "faults") return undefined;
  const at = atom[side];
  return at === undefined ? undefined : answer.found[at];
};

/** What this side says on this line: of a finding with several faults only the one the line is about. */
export const sideWords = (context: AnswerContext, row: Row, side: Side): AnswerWords | null => {
  const finding = row[side];
  if (!finding) return null;
  const { atom } = row.entry;
  if (finding.answer.kind !== "faults" || atom.of === "answer") return answerWords(context, finding.answer);
  if (atom.of === "denial") {
    return atom.by === side || atom.by === "both"
      ? { text: denialText(context, atom.kind) }
      : answerWords(context, finding.answer);
  }
  const fault = faultAt(row, side);
  if (fault) return { text: faultText(context, fault) };
  const { denied } = finding.answer;
  if (denied === "all") return { text: denialText(context, "all") };
  if (denied.includes(atom.kind)) return { text: denialText(context, atom.kind) };
  return { text: "—", faint: true };
};

const scalesOf = (source: ComparisonSource, side: Side): readonly GradeScale[] => source[side].scales;

interface Props {
  readonly side: Side;
  readonly row: Row;
  readonly source: ComparisonSource;
}

export const SideAnswer = ({ side, row, source }: Props) => {
  const t = useText();
  const words = sideWords({ index: source.index, item: row.item, scales: scalesOf(source, side) }, row, side);
  const firmness = row.entry.firmness[side];
  const label = t(side === "a" ? "side.stated" : "side.found");
  if (!words) {
    return (
      <p className={styles.silent}>
        <span className={styles.side}>{label}</span>
        {t(side === "a" ? "entry.silent.stated" : "entry.silent.found")}
      </p>
    );
  }
  return (
    <div>
      <p className={words.faint === true ? styles.faint : styles.answer} data-code={words.code === true}>
        <span className={styles.side}>{label}</span>
        {words.text}
      </p>
      {firmness !== null && firmness !== "asserted" && (
        <p className={styles.firmness}>{t(`firmness.${firmness}`)}</p>
      )}
    </div>
  );
};
