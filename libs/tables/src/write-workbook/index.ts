import { strToU8, zipSync } from "fflate";

/** What one cell is written as: text as text, never as a formula; a number as a number. */
export type WrittenCell = string | number;

/** One worksheet to be written. */
export type WrittenSheet = {
  readonly name: string;
  readonly rows: readonly (readonly WrittenCell[])[];
  /** Widths of columns in characters, from the first on. */
  readonly widths?: readonly number[];
};

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const RELATIONS = "http://schemas.openxmlformats.org/package/2006/relationships";
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

/** The time every part of a workbook bears, so that the same report gives the same bytes: the earliest an archive can hold. */
const EARLIEST = "1980-01-01T00:00:00";

const ESCAPES: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Characters XML 1.0 has no way to write. */
const NOT_XML = /[^\t\n\r\u{20}-\u{d7ff}\u{e000}-\u{fffd}\u{10000}-\u{10ffff}]/gu;

const xml = (text: string): string => text.replaceAll(/[&<>"]/g, (sign) => ESCAPES[sign] ?? sign);

/**
 * Text as a spreadsheet keeps what XML cannot write (ECMA-376 Part 1, 22.9.2.19): `_x000D_` is a return, and a text that looks like that
 * has its underscore written so.
 */
const cellText = (text: string): string =>
  xml(
    text
      .replaceAll(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
      .replaceAll("\r", "_x000D_")
      .replaceAll(
        NOT_XML,
        (sign) => `_x${(sign.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}_`,
      ),
  );

const columnName = (index: number): string => {
  let [name, left] = ["", index + 1];
  while (left > 0) {
    name = String.fromCodePoint(65 + ((left - 1) % 26)) + name;
    left = Math.floor((left - 1) / 26);
  }
  return name;
};

const cellXml = (cell: WrittenCell, row: number, column: number): string => {
  const at = `${columnName(column)}${row + 1}`;
  if (typeof cell === "number") return `<c r="${at}"><v>${String(cell)}</v></c>`;
  if (cell === "") return "";
  return `<c r="${at}" s="1" t="inlineStr"><is><t xml:space="preserve">${cellText(cell)}</t></is></c>`;
};

const columnsXml = (widths: readonly number[]): string =>
  widths.length === 0
    ? ""
    : `<cols>${widths.map((width, at) => `<col min="${at + 1}" max="${at + 1}" width="${width}" customWidth="1"/>`).join("")}</cols>`;

const sheetXml = ({ rows, widths = [] }: WrittenSheet): string =>
  [
    `${HEAD}<worksheet xmlns="${MAIN}">${columnsXml(widths)}<sheetData>`,
    ...rows.map(
      (cells, row) =>
        `<row r="${row + 1}">${cells.map((cell, column) => cellXml(cell, row, column)).join("")}</row>`,
    ),
    "</sheetData></worksheet>",
  ].join("");

/** Style 1 is text (format 49, `@`) with `quotePrefix`: what is typed over it stays text as well. */
const STYLES = `${HEAD}<styleSheet xmlns="${MAIN}"><fonts count="1"><font/></fonts><fills count="1"><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" xfId="0"/><xf numFmtId="49" xfId="0" quotePrefix="1" applyNumberFormat="1"/></cellXfs></styleSheet>`;

const relation = (id: number, kind: string, target: string): string =>
  `<Relationship Id="rId${id}" Type="${OFFICE}/${kind}" Target="${target}"/>`;

const relationsXml = (relations: readonly string[]): string =>
  `${HEAD}<Relationships xmlns="${RELATIONS}">${relations.join("")}</Relationships>`;

const contentTypes = (count: number): string => {
  const spreadsheet = "application/vnd.openxmlformats-officedocument.spreadsheetml";
  const sheets = Array.from(
    { length: count },
    (_, at) =>
      `<Override PartName="/xl/worksheets/sheet${at + 1}.xml" ContentType="${spreadsheet}.worksheet+xml"/>`,
  );
  return `${HEAD}<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${spreadsheet}.sheet.main+xml"/><Override PartName="/xl/styles.xml" ContentType="${spreadsheet}.styles+xml"/>${sheets.join("")}</Types>`;
};

const workbookXml = (sheets: readonly WrittenSheet[]): string =>
  `${HEAD}<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets>${sheets
    .map(({ name }, at) => `<sheet name="${xml(name)}" sheetId="${at + 1}" r:id="rId${at + 1}"/>`)
    .join("")}</sheets></workbook>`;

/**
 * A workbook (XLSX) of plain text and numbers: no formula can be in it, and the same tables give the same bytes.
 *
 * @param sheets names of at most 31 characters, none of them `[ ] : * ? / \`
 */
export const writeWorkbook = (sheets: readonly WrittenSheet[]): Uint8Array => {
  const relations = sheets.map((_, at) => relation(at + 1, "worksheet", `worksheets/sheet${at + 1}.xml`));
  const parts: Record<string, string> = {
    "[Content_Types].xml": contentTypes(sheets.length),
    "_rels/.rels": relationsXml([relation(1, "officeDocument", "xl/workbook.xml")]),
    "xl/workbook.xml": workbookXml(sheets),
    "xl/_rels/workbook.xml.rels": relationsXml([
      ...relations,
      relation(sheets.length + 1, "styles", "styles.xml"),
    ]),
    "xl/styles.xml": STYLES,
  };
  for (const [at, sheet] of sheets.entries()) parts[`xl/worksheets/sheet${at + 1}.xml`] = sheetXml(sheet);
  const files = Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]));
  return zipSync(files, { level: 6, mtime: EARLIEST });
};
