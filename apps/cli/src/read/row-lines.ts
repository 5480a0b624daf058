import type { Sheet } from "@evenhand/shared/sheet";
import { Answer } from "@evenhand/shared/answer";
import { becauseWords, noteWords } from "@evenhand/tables/because-words";
import type { RowOutcome, TableDraft } from "@evenhand/tables/read-table";
import { answerWords } from "@evenhand/wording/answer-words";
import { sheetWords } from "@evenhand/wording/sheet-words";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import { columns } from "../terminal/layout.ts";
import type { Terminal } from "../terminal/index.ts";
import { readWords } from "./words.ts";

const { say } = readWords;

type Line = { readonly becomes: string; readonly sure: string };

const findingLines = (row: RowOutcome, words: SheetWords, draft: TableDraft): Line[] =>
  row.findings.map(({ finding, sure }) => {
    const place = words.place(finding.item, finding.position ?? "");
    const context = { sheet: words, item: words.findItem(finding.item), scales: draft.scales };
    const answer = answerWords(Answer.parse(finding.answer), context);
    return {
      becomes: say("said-at", { place, answer }),
      sure: sure ? say("sure") : say("unsure"),
    };
  });

const refusedLines = (row: RowOutcome, words: SheetWords): Line[] =>
  row.refused.map(({ why, item }) => {
    const reason = becauseWords(why);
    const becomes =
      item === undefined
        ? say("refused-because", { reason })
        : say("refused-of", { item: words.place(item, ""), reason });
    return { becomes, sure: "" };
  });

const linesOf = (row: RowOutcome, words: SheetWords, draft: TableDraft): Line[] => {
  if (row.end === "note") return [{ becomes: noteWords(row.note ?? "remark"), sure: "" }];
  return [...findingLines(row, words, draft), ...refusedLines(row, words)];
};

/** Every row of a sheet with what it becomes, for a person to look through. */
export const rowLines = (draft: TableDraft, sheet: Sheet, { width, style }: Terminal): string[] => {
  const words = sheetWords(sheet);
  const [number, sure] = [5, 8];
  const rest = Math.max(40, width - number - sure - 6);
  const [left, middle] = [Math.floor(rest * 0.45), Math.ceil(rest * 0.55)];
  const line = (row: string, text: string, becomes: string, how: string): string[] =>
    columns([
      { text: row, width: number },
      { text, width: left },
      { text: becomes, width: middle },
      { text: how, width: sure },
    ]);
  const head = line(say("row-heading"), say("text-heading"), say("becomes-heading"), say("sure-heading")).map(
    style.strong,
  );
  let grid = "";
  const rows = draft.rows.flatMap((row) => {
    const opens = row.grid === grid ? [] : ["", style.strong(row.grid)];
    grid = row.grid;
    const lines = linesOf(row, words, draft).map((one, at) =>
      line(at === 0 ? String(row.row) : "", at === 0 ? row.text : "", one.becomes, one.sure),
    );
    return [...opens, ...lines.flat()];
  });
  return [...head, ...rows];
};

/** How many of each there are. */
export const countsOf = (draft: TableDraft) => {
  const findings = draft.rows.flatMap((row) => row.findings);
  return {
    rows: draft.rows.length,
    findings: findings.length,
    withFindings: draft.rows.filter(({ end }) => end === "finding").length,
    notes: draft.rows.filter(({ end }) => end === "note").length,
    refused: draft.rows.filter(({ end }) => end === "refused").length,
    open: findings.filter(({ sure }) => !sure).length,
  };
};
