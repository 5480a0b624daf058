import { expect, test } from "vitest";
import { delimiterOf, readCsv } from "./index.ts";

const texts = (text: string) => readCsv(text).rows.map(({ cells }) => cells.map((cell) => cell.text));

test.each([
  ["item,LF,RF\ntread,7,6\n", ","],
  ["item;LF;RF\ntread;5,5;5,0\n", ";"],
  ["item\tLF\tRF\ntread, all around\t7\t6\n", "\t"],
  ["item|LF\ntread|7\n", "|"],
  ["sep=;\na;b\n", ";"],
  ["nothing parted\n", ","],
])("the delimiter of %j is %j", (text, delimiter) => {
  expect(delimiterOf(text)).toBe(delimiter);
});

test("an inch mark is no quotation mark", () => {
  expect(texts('tread LF,7/32",ok\ntread RF,"7/32""",ok\n')).toEqual([
    ["tread LF", '7/32"', "ok"],
    ["tread RF", '7/32"', "ok"],
  ]);
});

test("a quotation mark that never closes does not swallow the rows after it", () => {
  const rows = Array.from({ length: 60 }, (_, at) => `row ${at},ok`).join("\n");
  expect(texts(`a,"open\n${rows}\n`)).toHaveLength(61);
});

test("rows keep the number they have in the file, and empty ones are left out", () => {
  expect(readCsv("sep=,\na,b\n,,\n\nc\n").rows.map(({ number }) => number)).toEqual([2, 5]);
});

test("a line end inside quotation marks stays in its cell", () => {
  expect(texts('note,"first\r\nsecond"\r\n')).toEqual([["note", "first\r\nsecond"]]);
});
