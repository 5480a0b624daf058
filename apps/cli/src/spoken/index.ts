import { listed } from "@evenhand/message/listed";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { Vehicle } from "@evenhand/shared/report";
import { answerWords } from "@evenhand/wording/answer-words";
import { say as term } from "@evenhand/wording/say";
import { sheetWords } from "@evenhand/wording/sheet-words";
import { done, unusable } from "../shell.ts";
import type { Shell } from "../shell.ts";
import { columns, wrap } from "../terminal/layout.ts";
import { readSpoken } from "./draft.ts";
import type { SpokenDraft } from "./draft.ts";
import { spokenWords } from "./words.ts";

const { say } = spokenWords;

const QUESTIONS = 20;
const [SOURCE, FIRMNESS, GAPS] = [8, 12, 12];

const tableLines = ({ report, rows }: SpokenDraft, width: number): string[] => {
  const sheet = sheetWords(sheetVersion1);
  const wide = Math.max(20, Math.floor((width - SOURCE - FIRMNESS - GAPS) / 4));
  return rows.flatMap(({ source, item, position, index, firmness, words, remarks }) => {
    const answer = report.findings[index]?.answer;
    const said =
      answer === undefined ? "" : answerWords(answer, { sheet, item: sheet.findItem(item), scales: [] });
    return columns([
      { text: source, width: SOURCE },
      { text: sheet.place(item, position), width: wide },
      { text: said, width: wide },
      { text: term(`firmness.${firmness}`), width: FIRMNESS },
      { text: words, width: wide },
      { text: listed(remarks), width: wide },
    ]);
  });
};

const questionLines = ({ unmentioned }: SpokenDraft, width: number): string[] => {
  const sheet = sheetWords(sheetVersion1);
  const named = listed(unmentioned.slice(0, QUESTIONS).map((id) => sheet.item(id)));
  const more = unmentioned.length - QUESTIONS;
  const items = more > 0 ? say("questions.more", { items: named, count: more }) : named;
  return unmentioned.length === 0 ? [] : ["", ...wrap(say("questions", { items }), width)];
};

/** That it is a draft, and what else whoever reads it must know. */
export const draftLines = (path: string, { report, cautions }: SpokenDraft): string[] => [
  say("draft", { path, count: report.findings.length }),
  ...cautions,
];

/** `read` of captions: prints the draft as a report, or as a table; 2 where the file cannot be read into one. */
export const readSpokenFile = (
  { file, table, vehicle }: { file: string; table: boolean; vehicle: Vehicle | undefined },
  shell: Shell,
): number => {
  const read = readSpoken(file, vehicle);
  if (!read.ok) {
    shell.error(read.reason);
    return unusable;
  }
  const { draft } = read;
  shell.error(draftLines(file, draft).join("\n"));
  const { width } = shell.terminal;
  shell.out(
    table
      ? [...tableLines(draft, width), ...questionLines(draft, width)].join("\n")
      : JSON.stringify(draft.report, null, 1),
  );
  return done;
};
