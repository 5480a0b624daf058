import { strToU8, zipSync } from "fflate";

/** A workbook as programs of many kinds write it, for the tests of its reader: its parts as text, or bytes as they are. */
export type Parts = Readonly<Record<string, string | Uint8Array>>;

const MAIN = 'xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main"';
const OFFICE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const PACKAGE = "http://schemas.openxmlformats.org/package/2006/relationships";

export const relations = (
  ...list: readonly (readonly [kind: string, target: string, mode?: string])[]
): string =>
  `<Relationships xmlns="${PACKAGE}">${list
    .map(
      ([kind, target, mode], at) =>
        `<Relationship Id="rId${at + 1}" Type="${OFFICE}/${kind}" Target="${target}"${mode === undefined ? "" : ` TargetMode="${mode}"`}/>`,
    )
    .join("")}</Relationships>`;

/** A worksheet from its rows as XML, with what follows them. */
export const worksheet = (rows: string, after = ""): string =>
  `<worksheet ${MAIN}><sheetData>${rows}</sheetData>${after}</worksheet>`;

export const sharedStringsOf = (...strings: readonly string[]): string =>
  `<sst ${MAIN}>${strings.map((string) => `<si>${string}</si>`).join("")}</sst>`;

/** The parts of a workbook with one worksheet, shared strings and styles; others added or put in their place by name. */
export const workbookParts = (sheet: string, more: Parts = {}): Parts => ({
  "[Content_Types].xml": "<Types/>",
  "_rels/.rels": relations(["officeDocument", "xl/workbook.xml"]),
  "xl/workbook.xml": `<workbook ${MAIN} xmlns:r="${OFFICE}"><sheets><sheet name="Car" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  "xl/_rels/workbook.xml.rels": relations(
    ["worksheet", "worksheets/sheet1.xml"],
    ["sharedStrings", "sharedStrings.xml"],
    ["styles", "styles.xml"],
  ),
  "xl/worksheets/sheet1.xml": sheet,
  ...more,
});

export const packed = (parts: Parts): Uint8Array =>
  zipSync(
    Object.fromEntries(
      Object.entries(parts).map(([name, part]) => [name, typeof part === "string" ? strToU8(part) : part]),
    ),
  );

/** A cell with text of its own. */
export const text = (at: string, value: string): string =>
  `<c r="${at}" t="inlineStr"><is><t>${value}</t></is></c>`;
