import { expect, test } from "vitest";
import { packed, relations, text, workbookParts, worksheet } from "../../testing/workbook.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";
import { readFile } from "./index.ts";

const bytesOf = (content: string) => new TextEncoder().encode(content);
const refusal = (bytes: Uint8Array) => {
  const read = readFile(bytes);
  return read.ok ? undefined : read.refused;
};
const sheet = worksheet(`<row>${text("A1", "tread")}</row>`);
const workbook = packed(workbookParts(sheet));

test("a file is what its bytes are, whatever it is called", () => {
  expect(readFile(workbook)).toMatchObject({ ok: true, book: { form: "xlsx" } });
  expect(readFile(bytesOf("tread,ok\n"))).toMatchObject({ ok: true, book: { form: "csv" } });
});

test("every workbook that was cut off anywhere is refused", () => {
  for (let length = 2; length < workbook.length; length += 7)
    expect(refusal(workbook.subarray(0, length))).toBeDefined();
});

test("a workbook with any one byte changed is read or refused, and throws nothing else", () => {
  for (let at = 0; at < workbook.length; at += 17) {
    const changed = workbook.slice();
    changed[at] = (changed[at] ?? 0) ^ 0x55;
    expect(() => readFile(changed)).not.toThrow();
  }
});

test("a bomb is refused by what it inflates to", () => {
  const zeros = new Uint8Array(TABLE_LIMITS.inflated + 1).fill(0x20);
  expect(refusal(packed(workbookParts(sheet, { "xl/worksheets/sheet1.xml": zeros })))).toEqual({
    reason: "inflated",
    most: 40,
  });
});

test("a bomb that lies about its size is refused as well", () => {
  const bomb = packed(workbookParts(sheet, { "xl/workbook.xml": new Uint8Array(TABLE_LIMITS.inflated + 1) }));
  const view = new DataView(bomb.buffer);
  for (let at = 0; at + 30 < bomb.length; at += 1) {
    if (view.getUint32(at, true) === 0x02014b50) view.setUint32(at + 24, 10, true);
    if (view.getUint32(at, true) === 0x04034b50) view.setUint32(at + 22, 10, true);
  }
  expect(refusal(bomb)).toEqual({ reason: "inflated", most: 40 });
});

test("declared entities are refused before anything of them is read", () => {
  const laughs = `<!DOCTYPE a [<!ENTITY a "ha"><!ENTITY b "&a;&a;">]>${sheet}`;
  expect(refusal(packed(workbookParts(sheet, { "xl/worksheets/sheet1.xml": laughs })))).toEqual({
    reason: "declarations",
    part: "xl/worksheets/sheet1.xml",
  });
  const outside = `<!DOCTYPE a SYSTEM "file:///etc/hostname">${sheet}`;
  expect(refusal(packed(workbookParts(sheet, { "xl/worksheets/sheet1.xml": outside })))?.reason).toBe(
    "declarations",
  );
});

test("an undeclared entity is damage", () => {
  const odd = worksheet(`<row>${text("A1", "&swell;")}</row>`);
  expect(refusal(packed(workbookParts(odd)))).toEqual({
    reason: "damaged",
    part: "xl/worksheets/sheet1.xml",
  });
});

test("elements nested without end are refused", () => {
  expect(refusal(packed(workbookParts("<a>".repeat(200_000))))).toEqual({ reason: "depth" });
});

test("a worksheet that is an address is not asked for", () => {
  const parts = workbookParts(sheet, {
    "xl/_rels/workbook.xml.rels": relations(["worksheet", "http://192.0.2.1/sheet.xml", "External"]),
  });
  expect(refusal(packed(parts))?.reason).toBe("damaged");
});

test("a million columns are refused, in either kind of file", () => {
  const wide = worksheet(`<row>${text("A1", "x")}${text("XFD1", "y")}</row>`);
  expect(refusal(packed(workbookParts(wide)))).toEqual({ reason: "columns", found: 16_384, most: 256 });
  expect(refusal(bytesOf(`${",".repeat(1_000_000)}x\n`))).toMatchObject({ reason: "columns" });
});

test("empty columns without end are no columns", () => {
  expect(readFile(bytesOf(`tread,ok${",".repeat(1_000_000)}\n`))).toMatchObject({ ok: true });
});

test("a giant cell is refused with its row", () => {
  const giant = "x".repeat(40_000);
  expect(refusal(bytesOf(`a,b\n${giant},c\n`))).toEqual({
    reason: "characters",
    row: 2,
    found: 40_000,
    most: 32_767,
  });
});

test("more rows than any sheet has are refused", () => {
  expect(refusal(bytesOf("a,b\n".repeat(TABLE_LIMITS.rows + 1)))).toEqual({
    reason: "rows",
    most: TABLE_LIMITS.rows,
  });
});

test("more cells than any sheet has are refused", () => {
  const row = `${"a,".repeat(255)}a\n`;
  expect(refusal(bytesOf(row.repeat(4_000)))).toEqual({ reason: "cells", most: TABLE_LIMITS.cells });
});

test("a merged range over the whole worksheet fills nothing that is empty", () => {
  const merged = worksheet(
    `<row>${text("A1", "x")}</row>`,
    '<mergeCells><mergeCell ref="A1:XFD1048576"/></mergeCells>',
  );
  const read = readFile(packed(workbookParts(merged)));
  expect(read.ok && read.book.grids[0]?.rows).toHaveLength(1);
});

test.each([
  ["nothing", new Uint8Array(0), { reason: "empty" }],
  ["blank lines", bytesOf("\n\n , \n"), { reason: "empty" }],
  ["an old workbook", Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1]), { reason: "old-excel" }],
  [
    "a picture named .xlsx",
    Uint8Array.from([0xff, 0xd8, 0xff, 0xe0]),
    { reason: "other-file", kind: "a JPEG picture" },
  ],
  ["a paper named .csv", bytesOf("%PDF-1.7"), { reason: "other-file", kind: "a PDF" }],
  ["a page named .csv", bytesOf("<html><table>"), { reason: "other-file", kind: "a page in markup" }],
  [
    "bytes",
    Uint8Array.from({ length: 400 }, (_, at) => (at * 7) % 9),
    { reason: "other-file", kind: "no text" },
  ],
  ["an archive", packed({ "a.txt": "x" }), { reason: "other-archive" }],
  [
    "an OpenDocument",
    packed({ mimetype: "application/vnd.oasis.opendocument.spreadsheet" }),
    { reason: "open-document" },
  ],
])("%s is refused by what it is", (_, bytes, refused) => {
  expect(refusal(bytes)).toEqual(refused);
});

test("a locked part is refused as locked", () => {
  const locked = workbook.slice();
  const view = new DataView(locked.buffer);
  for (let at = 0; at + 30 < locked.length; at += 1)
    if (view.getUint32(at, true) === 0x02014b50) view.setUint16(at + 8, 1, true);
  expect(refusal(locked)).toEqual({ reason: "locked" });
});
