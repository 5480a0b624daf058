import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { analyze } from "@evenhand/comparison/analyze";
import { Report, type ReportInput } from "@evenhand/shared/report";
import { expect, test } from "vitest";
import { sheetIndex } from "../../entities/sheet/sheet-index.ts";
import { byPressing, bySection, visibleRows } from "./filters.ts";
import { comparisonRows } from "../../entities/comparison/model.ts";

/** An invented car with a horn, tires and a hood to speak of. */
const report = (kind: "statement" | "inspection", findings: ReportInput["findings"]): Report =>
  Report.parse({
    format: "evenhand-report",
    version: 1,
    kind,
    sheet: { id: "evenhand", version: 1 },
    vehicle: {
      make: "Uthwick",
      model: "Alder",
      modelYear: 1958,
      identification: "A7K214883",
      form: {
        body: "sedan",
        doors: 4,
        cylinders: 6,
        construction: "body-on-frame",
        gearbox: "manual",
        driven: "rear",
        fuelSystem: "carburetor",
        systemVolts: 12,
        brakes: { front: "disc", rear: "drum" },
      },
    },
    author: { organization: "a firm", role: kind === "statement" ? "dealer" : "inspector" },
    visit: { started: "2026-05-04T15:00:00Z", zone: "America/Chicago" },
    findings,
  });

const horn = (value: "yes" | "no") => ({
  item: "electrics.horn",
  answer: { kind: "working" as const, value },
});
const hinges = (value: "yes" | "no") => ({
  item: "doors.latches",
  position: "left-front-door",
  answer: { kind: "working" as const, value },
});

const a = report("statement", [horn("yes"), hinges("yes")]);
const b = report("inspection", [horn("no"), hinges("yes")]);
const comparison = analyze(a, b, compileSheet(sheetVersion1));
const rows = comparisonRows({ index: sheetIndex(sheetVersion1), comparison, a, b });

const found = (q: string): string[] =>
  visibleRows(rows, { q }).map(({ entry }) => `${entry.item}@${entry.position}`);

test("a search finds by American and by British words", () => {
  expect(found("hood").length).toBeGreaterThan(0);
  expect(found("bonnet")).toContain("doors.lid-hinges@hood");
  expect(found("tyre").length).toBeGreaterThan(0);
  expect(found("zeppelin")).toEqual([]);
});

test("filters narrow together", () => {
  const differing = visibleRows(rows, { outcome: ["differ"] });
  expect(differing.map(({ entry }) => entry.item)).toEqual(["electrics.horn"]);
  expect(visibleRows(rows, { outcome: ["differ"], severity: "halt" })).toEqual([]);
  expect(visibleRows(rows, { severity: "repair" }).map(({ entry }) => entry.item)).toContain(
    "electrics.horn",
  );
  expect(visibleRows(rows, { station: differing[0]?.station }).length).toBeGreaterThan(1);
});

test("most pressing first lists discrepancies in the comparison's order, and everything else after them", () => {
  const shown = visibleRows(rows, {});
  const { pressing, rest } = byPressing(shown);
  expect(pressing.map(({ at }) => at)).toEqual(comparison.order);
  expect(pressing.length + rest.length).toBe(shown.length);
});

test("as on the sheet, sections come in walking order", () => {
  const numbers = bySection(visibleRows(rows, {})).map(({ number }) => number ?? -1);
  expect(numbers).toEqual(numbers.toSorted((one, other) => one - other));
});
