import * as fc from "fast-check";
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { Report } from "@evenhand/shared/report";
import { readFile } from "../read-file/index.ts";
import { armored, bared } from "./armor.ts";
import { isReportTable, reportCsv, reportFromTable, reportTable, reportWorkbook } from "./index.ts";

const demo = Report.parse(
  JSON.parse(
    readFileSync(new URL("../../../../fixtures/demo/reports/orrin-inspection.json", import.meta.url), "utf8"),
  ),
);
const named = () => ({ section: "=section", item: "item", place: "-place", answer: "@answer" });
const bookOf = (bytes: Uint8Array) => {
  const read = readFile(bytes);
  if (!read.ok) throw new Error(read.refused.reason);
  return read.book;
};
const back = (report: Report) => {
  const table = reportTable(report, named);
  return [
    reportFromTable(bookOf(new TextEncoder().encode(reportCsv(table)))),
    reportFromTable(bookOf(reportWorkbook(table))),
  ];
};

test("a report of the demo comes back whole from both kinds of file", () => {
  expect(back(demo)).toEqual([demo, demo]);
});

const dangerous = fc.oneof(
  fc.string({ unit: "grapheme", minLength: 1, maxLength: 40 }),
  fc
    .tuple(
      fc.constantFrom("=", "+", "-", "@", "\t", "\r", "\n", "'", " ", "|", "＝", "_x0041_"),
      fc.string({ unit: "grapheme" }),
    )
    .map((parts) => parts.join("")),
);

const finding = fc.record(
  {
    item: fc.constantFrom("wheels.pressure", "body.faults", "engine.oil"),
    position: fc.constantFrom("", "left-front", "hood"),
    answer: fc.oneof(
      fc.record({
        kind: fc.constant("reading" as const),
        unit: fc.constantFrom("psi" as const, "mm" as const),
        values: fc.array(
          fc.record({ value: fc.double({ noNaN: true, noDefaultInfinity: true }).map((value) => value + 0) }),
          { minLength: 1, maxLength: 4 },
        ),
      }),
      fc.record({
        kind: fc.constant("code" as const),
        text: dangerous.map((text) => text.trim()).filter((text) => text !== ""),
      }),
      fc.record({ kind: fc.constant("not-fitted" as const) }),
    ),
    firmness: fc.constantFrom("asserted" as const, "hedged" as const),
    note: dangerous,
    time: fc.constant("2026-05-06T13:10:00Z"),
  },
  { requiredKeys: ["item", "position", "answer"] },
);

test("whatever stands in a report comes back the same from CSV and XLSX", () => {
  fc.assert(
    fc.property(fc.array(finding, { maxLength: 3 }), dangerous, (findings, terms) => {
      const report = Report.parse({ ...demo, terms, findings, instruments: [], evidence: [] });
      expect(back(report)).toEqual([report, report]);
    }),
    { numRuns: 1000 },
  );
});

test("no cell of any report can be taken for a formula, and every text comes back", () => {
  fc.assert(
    fc.property(dangerous, (text) => {
      expect(armored(text)).not.toMatch(/^[=+\-@\t\r\n]/);
      expect(bared(armored(text))).toBe(text);
    }),
    { numRuns: 2000 },
  );
});

test("no cell of the written table starts a formula", () => {
  const cells = reportTable(demo, named).flat();
  expect(cells.filter((cell) => /^[=+\-@\t\r\n]/.test(cell))).toEqual([]);
});

test("a table that was changed so that it is none any more gives no report", () => {
  const [first = [], ...rest] = reportTable(demo, named);
  const broken = [[first[0] ?? "", "{"], ...rest];
  const book = bookOf(new TextEncoder().encode(reportCsv(broken)));
  expect(isReportTable(book)).toBe(true);
  expect(reportFromTable(book)).toBeUndefined();
});
