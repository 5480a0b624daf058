import { byPressing, bySection } from "./filters";
import type { Row } from "../../entities/comparison/model";

/** What stands in the list, one under the other: headings and lines. */
export type ListPart =
  | { readonly is: "heading"; readonly key: string; readonly title: HeadingTitle; readonly count: number }
  | { readonly is: "line"; readonly key: string; readonly row: Row };

type HeadingTitle =
  | { readonly of: "pressing" | "rest" }
  | { readonly of: "section"; readonly id: string; readonly number: number | null; readonly words: string };

const lineOf = (row: Row): ListPart => ({ is: "line", key: `line-${row.at}`, row });

const block = (key: string, title: HeadingTitle, rows: readonly Row[]): readonly ListPart[] =>
  rows.length === 0 ? [] : [{ is: "heading", key, title, count: rows.length }, ...rows.map(lineOf)];

/**
 * Lines under their headings: most pressing first with the rest behind, or section by section as on the sheet.
 *
 * @example listParts(rows, "pressing").map(({ is }) => is) // ["heading", "line", "line", "heading", "line"]
 */
export const listParts = (rows: readonly Row[], order: "pressing" | "sheet"): readonly ListPart[] => {
  if (order === "sheet") {
    return bySection(rows).flatMap(({ id, number, title, rows: of }) =>
      block(`section-${id}`, { of: "section", id, number, words: title }, of),
    );
  }
  const { pressing, rest } = byPressing(rows);
  return [...block("pressing", { of: "pressing" }, pressing), ...block("rest", { of: "rest" }, rest)];
};
