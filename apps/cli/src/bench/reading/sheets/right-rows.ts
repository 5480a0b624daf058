import { convert, dimensionOf } from "@evenhand/measurement/unit";
import { Answer } from "@evenhand/shared/answer";
import type { FindingInput } from "@evenhand/shared/finding";
import type { GradeScale } from "@evenhand/shared/report";
import { UnitSymbol } from "@evenhand/shared/unit";
import type { RowOutcome, TableDraft } from "@evenhand/tables/read-table";

/** What one row of a sheet comes to, as somebody wrote it down beside the sheet: `note`, `refused`, or findings. */
export type RightRow = { readonly grid: string; readonly row: number; readonly says: readonly string[] };

const lineOf = /^(\d+)(?:-(\d+))?\s+(.+)$/;

/** Reads a `right.txt` (`fixtures/sheets/README.md` says how it is written). */
export const readRight = (text: string): RightRow[] => {
  const rows = new Map<string, { grid: string; row: number; says: string[] }>();
  let grid = "";
  for (const line of text.split("\n")) {
    const opened = /^\[(.+)\]$/.exec(line.trim())?.[1];
    if (opened !== undefined) grid = opened;
    const [, from, to, says] = lineOf.exec(line.trim()) ?? [];
    if (from === undefined || says === undefined) continue;
    for (let row = Number(from); row <= Number(to ?? from); row += 1) {
      const key = `${grid} ${row}`;
      const known = rows.get(key) ?? { grid, row, says: [] };
      known.says.push(says);
      rows.set(key, known);
    }
  }
  return [...rows.values()];
};

const faultsText = ({ found }: Extract<Answer, { kind: "faults" }>): string =>
  found.length === 0
    ? "none"
    : found
        .map(({ kind, extent }) => (extent === undefined ? kind : `${kind} ${extent.value} ${extent.unit}`))
        .join(",");

const gradeText = (
  { scale, value }: Extract<Answer, { kind: "grade" }>,
  scales: readonly GradeScale[],
): string => {
  const own = scales.find(({ id }) => id === scale);
  return own === undefined
    ? `grade:${value} of ${scale}`
    : `grade:${value} of ${own.grades.map(({ id }) => id).join("|")}`;
};

const answerText = (answer: Answer, scales: readonly GradeScale[]): string => {
  switch (answer.kind) {
    case "reading":
      return `${answer.values.map(({ value }) => value).join(" ")} ${answer.unit}`;
    case "working":
    case "presence":
      return answer.value;
    case "choice":
      return `option:${answer.option}`;
    case "code":
      return `code:${answer.text}`;
    case "faults":
      return `faults:${faultsText(answer)}`;
    case "grade":
      return gradeText(answer, scales);
    case "not-seen":
      return `not-seen:${answer.reason}`;
    default:
      return answer.kind;
  }
};

/** A proposed finding as `right.txt` writes it. */
export const findingText = (
  { item, position = "", answer }: FindingInput,
  scales: readonly GradeScale[],
): string => `${item}${position === "" ? "" : `@${position}`} = ${answerText(Answer.parse(answer), scales)}`;

const readingIn = (text: string): { readonly values: number[]; readonly unit: UnitSymbol } | undefined => {
  const words = text.split(" ");
  const unit = UnitSymbol.safeParse(words.at(-1));
  const values = words.slice(0, -1).map(Number);
  return unit.success && values.length > 0 && values.every(Number.isFinite)
    ? { values, unit: unit.data }
    : undefined;
};

/** The same words, or the same readings in whatever unit of their kind. */
export const sameFinding = (a: string, b: string): boolean => {
  if (a === b) return true;
  const [[itemA, answerA = ""], [itemB, answerB = ""]] = [a.split(" = "), b.split(" = ")];
  const [one, other] = [readingIn(answerA), readingIn(answerB)];
  if (itemA !== itemB || one === undefined || other === undefined) return false;
  if (one.values.length !== other.values.length || dimensionOf(one.unit) !== dimensionOf(other.unit))
    return false;
  return one.values.every(
    (value, at) => Math.abs(convert(value, one.unit, other.unit) - (other.values[at] ?? NaN)) < 1e-6,
  );
};

const saysOf = (outcome: RowOutcome | undefined, draft: TableDraft): string[] =>
  outcome === undefined
    ? []
    : outcome.end === "finding"
      ? outcome.findings.map(({ finding }) => findingText(finding, draft.scales))
      : [outcome.end];

/** One row as it was read and as it is right. */
export type ScoredRow = {
  readonly right: RightRow;
  readonly read: readonly string[];
  readonly isRight: boolean;
  readonly sure: boolean;
};

/** Sets a draft against what is right, row by row: right is a row whose end and every finding are. */
export const scoreRows = (draft: TableDraft, right: readonly RightRow[]): ScoredRow[] =>
  right.map((row) => {
    const outcome = draft.rows.find(
      (one) => one.row === row.row && (row.grid === "" || one.grid === row.grid),
    );
    const read = saysOf(outcome, draft);
    const isRight =
      read.length === row.says.length && row.says.every((says) => read.some((one) => sameFinding(one, says)));
    return { right: row, read, isRight, sure: outcome?.findings.every(({ sure }) => sure) ?? false };
  });
