import { decodeText } from "../decode-text/index.ts";
import type { Book } from "../grid/index.ts";
import { readCsv } from "../read-csv/index.ts";
import { readWorkbook } from "../read-workbook/index.ts";
import { TableRefusal } from "../refused/index.ts";
import type { TableRefused } from "../refused/index.ts";
import { TABLE_LIMITS } from "../table-limits/index.ts";

export type ReadFile =
  { readonly ok: true; readonly book: Book } | { readonly ok: false; readonly refused: TableRefused };

const startsWith = (bytes: Uint8Array, ...start: readonly number[]): boolean =>
  start.every((byte, at) => bytes[at] === byte);

/** Files of other kinds by how they begin. */
const OTHERS: readonly (readonly [kind: string, ...start: number[]])[] = [
  ["a PDF", 0x25, 0x50, 0x44, 0x46],
  ["a PNG picture", 0x89, 0x50, 0x4e, 0x47],
  ["a JPEG picture", 0xff, 0xd8, 0xff],
  ["a RAR archive", 0x52, 0x61, 0x72, 0x21],
  ["a 7z archive", 0x37, 0x7a, 0xbc, 0xaf],
  ["a gzip archive", 0x1f, 0x8b],
  ["a program", 0x7f, 0x45, 0x4c, 0x46],
  ["a program", 0x4d, 0x5a, 0x90, 0x00],
];

/** Text has no control characters but tab and line ends; UTF-16 is told by its mark or zeros before this is asked. */
const isBinary = (text: string): boolean => {
  let odd = 0;
  const looked = text.slice(0, 4096);
  for (const sign of looked) {
    const code = sign.codePointAt(0) ?? 0;
    if (code < 9 || (code > 13 && code < 32) || code === 0xfffd) odd += 1;
  }
  return odd * 20 > looked.length;
};

const textBook = (bytes: Uint8Array): Book => {
  const text = decodeText(bytes);
  if (isBinary(text)) throw new TableRefusal({ reason: "other-file", kind: "no text" });
  if (/^\s*(<!doctype html|<html|<\?xml)/i.test(text.slice(0, 200)))
    throw new TableRefusal({ reason: "other-file", kind: "a page in markup" });
  return { form: "csv", grids: [readCsv(text)], aside: [] };
};

const bookOf = (bytes: Uint8Array): Book => {
  if (bytes.length === 0) throw new TableRefusal({ reason: "empty" });
  if (bytes.length > TABLE_LIMITS.bytes)
    throw new TableRefusal({
      reason: "bytes",
      found: Math.ceil(bytes.length / 2 ** 20),
      most: TABLE_LIMITS.bytes / 2 ** 20,
    });
  if (startsWith(bytes, 0xd0, 0xcf, 0x11, 0xe0)) throw new TableRefusal({ reason: "old-excel" });
  if (startsWith(bytes, 0x50, 0x4b)) return readWorkbook(bytes);
  const other = OTHERS.find(([, ...start]) => startsWith(bytes, ...start));
  if (other !== undefined) throw new TableRefusal({ reason: "other-file", kind: other[0] });
  return textBook(bytes);
};

/**
 * Reads a file of tables by what it is, whatever its name says: delimited text (any common delimiter and encoding) or a workbook (XLSX).
 *
 * @returns its tables, or why it is not read, for `tableRefusalWords`
 */
export const readFile = (bytes: Uint8Array): ReadFile => {
  try {
    const book = bookOf(bytes);
    return book.grids.every(({ rows }) => rows.length === 0)
      ? { ok: false, refused: { reason: "empty" } }
      : { ok: true, book };
  } catch (error) {
    if (error instanceof TableRefusal) return { ok: false, refused: error.refused };
    throw error;
  }
};
