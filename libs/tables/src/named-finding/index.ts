import type { Report } from "@evenhand/shared/report";
import type { Sheet } from "@evenhand/shared/sheet";
import { answerWords } from "@evenhand/wording/answer-words";
import { sheetWords } from "@evenhand/wording/sheet-words";
import type { Named } from "../report-table/index.ts";

/**
 * How each finding of a report reads for whoever opens its table.
 *
 * @returns what names a finding: its section, item, place and answer in words
 */
export const namedFinding = (
  report: Pick<Report, "scales">,
  sheet: Sheet,
): ((finding: Report["findings"][number]) => Named) => {
  const words = sheetWords(sheet);
  const sections = new Map(sheet.sections.map((section) => [section.id, section.words.american]));
  return ({ item, position, answer }) => {
    const known = words.findItem(item);
    return {
      section: sections.get(known?.section ?? "") ?? "",
      item: words.place(item, ""),
      place: position === "" ? "" : words.place(item, position),
      answer: answerWords(answer, { sheet: words, item: known, scales: report.scales }),
    };
  };
};
