import { say } from "@evenhand/wording/say";
import { manyReports } from "@evenhand/comparison/many-reports";
import type { Row, RowState, WhoSaysWhat } from "@evenhand/comparison/many-reports";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { columns, indented } from "../terminal/layout.ts";
import type { Terminal } from "../terminal/index.ts";
import { answerWords } from "@evenhand/wording/answer-words";
import { catalog } from "../words/catalog.ts";
import { sheetWords } from "@evenhand/wording/sheet-words";
import type { SheetWords } from "@evenhand/wording/sheet-words";

const STATES: readonly RowState[] = ["disputed", "in-doubt", "agreed", "one-party"];
const stateWidth = 12;

const authorOf = (report: Report): string =>
  catalog.author({
    organization: report.author.organization,
    kind: say(`kind.${report.kind}`),
    day: report.visit.started.slice(0, 10),
  });

const sayingLines = (row: Row, reports: readonly Report[], words: SheetWords, width: number): string[] =>
  row.says.flatMap((saying, index) => {
    const report = reports[index];
    const finding = saying === null ? undefined : report?.findings[saying.finding];
    if (report === undefined || finding === undefined) return [];
    const context = { sheet: words, item: words.findItem(row.item), scales: report.scales };
    return indented(
      catalog.labelled(authorOf(report), answerWords(finding.answer, context)),
      stateWidth + 2,
      width,
    );
  });

const rowLines = (row: Row, reports: readonly Report[], words: SheetWords, terminal: Terminal): string[] => {
  const { width, style } = terminal;
  const own = row.within.some(({ outcome }) => outcome === "differ") ? `; ${catalog.ownReportsDiffer}` : "";
  const head = columns([
    { text: catalog.rowState[row.state], width: stateWidth },
    { text: `${words.place(row.item, row.position)}${own}`, width: width - stateWidth - 2 },
  ]);
  return [...head.map(style.strong), ...sayingLines(row, reports, words, width)];
};

/** Where parties are at odds, and where one party says one thing and then another. */
const isOpen = ({ state, within }: Row): boolean =>
  state === "disputed" || state === "in-doubt" || within.some(({ outcome }) => outcome === "differ");

/**
 * Three or more reports on one car as lines: who wrote them, how many places stand how, and every place in dispute or doubt with
 * what each report says of it.
 */
export const whoSaysWhatLines = (
  { parties, rows }: WhoSaysWhat,
  reports: readonly Report[],
  sheet: Sheet,
  terminal: Terminal,
): string[] => {
  const words = sheetWords(sheet);
  const counted = STATES.map((state) => {
    const count = rows.filter((row) => row.state === state).length;
    return `${catalog.rowState[state]} ${count}`;
  });
  return [
    catalog.whoSaysWhat(parties.length, reports.length),
    ...reports.flatMap((report, index) => indented(`${index + 1}. ${authorOf(report)}`, 2, terminal.width)),
    "",
    counted.join(" · "),
    "",
    ...rows.filter(isOpen).flatMap((row) => rowLines(row, reports, words, terminal)),
    "",
    ...indented(catalog.notCounted, 0, terminal.width),
  ];
};

const spelledAlike = (number: string): string => number.replaceAll(/[\s-]/g, "").toUpperCase();

/** The table itself. @throws {RangeError} where the reports are not all of one car */
export const whoSaysWhat = (reports: readonly Report[], sheet: Sheet): WhoSaysWhat => {
  const numbers = new Set(reports.map(({ vehicle }) => spelledAlike(vehicle.identification)));
  if (numbers.size > 1)
    throw new RangeError(`The reports are of ${numbers.size} cars: ${[...numbers].join(", ")}.`);
  return manyReports(reports, compileSheet(sheet));
};
