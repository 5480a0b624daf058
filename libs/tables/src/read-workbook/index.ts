import { Counted } from "../grid/index.ts";
import type { Aside, Book, Cell, Grid, Row } from "../grid/index.ts";
import { readXml } from "../read-xml/index.ts";
import { TableRefusal } from "../refused/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";
import { fillMerged } from "./merged.ts";
import { numberFormats } from "./number-formats.ts";
import { partsOf, relationsOf } from "./package.ts";
import type { Parts, Relation } from "./package.ts";
import { pinnedNotes, sharedStrings } from "./strings.ts";
import { cellPlace, readWorksheet } from "./worksheet.ts";
import type { Shown } from "./worksheet.ts";

type Listed = { readonly name: string; readonly relation: string; readonly hidden: boolean };
type Workbook = { readonly sheets: readonly Listed[]; readonly from1904: boolean };

const workbookOf = (text: string, part: string): Workbook => {
  const sheets: Listed[] = [];
  let from1904 = false;
  readXml(text, part, {
    open: (name, attributes) => {
      if (name === "workbookPr") from1904 = ["1", "true"].includes(attributes["date1904"] ?? "");
      if (name !== "sheet") return;
      const relation = Object.entries(attributes).find(([key]) => key.endsWith(":id"))?.[1] ?? "";
      const hidden = (attributes["state"] ?? "visible") !== "visible";
      sheets.push({ name: attributes["name"] ?? "", relation, hidden });
    },
    text: () => undefined,
    close: () => undefined,
  });
  return { sheets, from1904 };
};

const partOf = (relations: readonly Relation[], kind: string): string | undefined =>
  relations.find((relation) => relation.kind === kind && !relation.outside)?.target;

const shownOf = (parts: Parts, relations: readonly Relation[], from1904: boolean): Shown => {
  const [strings, styles] = [partOf(relations, "sharedStrings"), partOf(relations, "styles")];
  return {
    strings: strings === undefined ? [] : sharedStrings(parts.find(strings), strings),
    formats: styles === undefined ? [] : numberFormats(parts.find(styles), styles),
    from1904,
  };
};

/** A note pinned to a cell that holds nothing stands in it. */
const pin = (rows: Map<number, Cell[]>, notes: ReadonlyMap<string, string>, counted: Counted): void => {
  for (const [name, note] of notes) {
    const at = cellPlace(name);
    if (at === undefined || note === "") continue;
    counted.cell(note, at.row + 1, at.column + 1);
    const cells = rows.get(at.row + 1) ?? [];
    if (!rows.has(at.row + 1)) {
      counted.row();
      rows.set(at.row + 1, cells);
    }
    while (cells.length <= at.column) cells.push({ text: "" });
    cells[at.column] = { ...(cells[at.column] ?? { text: "" }), note };
  }
};

const rowsInOrder = (rows: ReadonlyMap<number, readonly Cell[]>): Row[] =>
  [...rows].toSorted(([a], [b]) => a - b).map(([number, cells]) => ({ number, cells }));

const gridOf = (
  parts: Parts,
  part: string,
  name: string,
  shown: Shown,
  counted: Counted,
): { readonly grid: Grid; readonly formulas: number } => {
  const sheet = readWorksheet(parts.get(part), part, shown, counted);
  const rows = new Map(sheet.rows);
  const notes = partOf(relationsOf(parts, part), "comments");
  const text = notes === undefined ? undefined : parts.find(notes);
  if (notes !== undefined && text !== undefined) pin(rows, pinnedNotes(text, notes), counted);
  fillMerged(rows, sheet.merges, TABLE_LIMITS.columns);
  return { grid: { name, rows: rowsInOrder(rows) }, formulas: sheet.formulas };
};

const asideOf = (parts: Parts, sheets: readonly Listed[], formulas: number): Aside[] => {
  const links = parts.names.filter((name) => /(^|\/)externallinks\/[^/]+\.xml$/i.test(name)).length;
  const macros = parts.names.some((name) => /vbaproject\.bin$|(^|\/)macrosheets\//i.test(name));
  return [
    ...(formulas === 0 ? [] : [{ kind: "formulas", count: formulas } as const]),
    ...(links === 0 ? [] : [{ kind: "external-links", count: links } as const]),
    ...(macros ? [{ kind: "macros" } as const] : []),
    ...sheets.flatMap(({ hidden, name }) => (hidden ? [{ kind: "hidden-worksheet", name } as const] : [])),
  ];
};

/** What else an archive may be, said by its name where it is known. */
const notAWorkbook = (parts: Parts): TableRefusal => {
  const mimetype = parts.names.includes("mimetype") ? (parts.find("mimetype") ?? "") : "";
  return new TableRefusal({
    reason: mimetype.includes("opendocument") ? "open-document" : "other-archive",
  });
};

/**
 * A workbook (XLSX, ECMA-376) as tables of text: cells as they are shown, merged ones filled, notes with their cells. Nothing is computed,
 * nothing outside of the file is asked for, macros are not looked at; what was left aside is said.
 *
 * @throws {TableRefusal} where it is no workbook, is damaged or locked, or larger than `TABLE_LIMITS`
 */
export const readWorkbook = (bytes: Uint8Array): Book => {
  const parts = partsOf(bytes);
  const main = partOf(relationsOf(parts, ""), "officeDocument");
  if (main === undefined || !/\.xml$/i.test(main)) throw notAWorkbook(parts);
  const text = parts.get(main);
  const { sheets, from1904 } = workbookOf(text, main);
  if (sheets.length === 0) throw notAWorkbook(parts);
  if (sheets.length > TABLE_LIMITS.worksheets)
    throw new TableRefusal({ reason: "worksheets", found: sheets.length, most: TABLE_LIMITS.worksheets });
  const relations = relationsOf(parts, main);
  const [shown, counted] = [shownOf(parts, relations, from1904), new Counted()];
  const read = sheets.flatMap(({ name, relation, hidden }) => {
    const target = relations.find(({ id, kind }) => id === relation && kind === "worksheet")?.target;
    return hidden || target === undefined ? [] : [gridOf(parts, target, name, shown, counted)];
  });
  const formulas = read.reduce((sum, one) => sum + one.formulas, 0);
  return { form: "xlsx", grids: read.map(({ grid }) => grid), aside: asideOf(parts, sheets, formulas) };
};
