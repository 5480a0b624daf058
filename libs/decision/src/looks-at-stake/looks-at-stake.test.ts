import { readFileSync } from "node:fs";
import { analyze } from "@evenhand/comparison/analyze";
import { compiledSheet } from "@evenhand/record/report-document";
import { CostTable } from "@evenhand/shared/cost-table";
import { Report } from "@evenhand/shared/report";
import { expect, test } from "vitest";
import { looksAtStake, lookUncertainty } from "./index.ts";

const demo = new URL("../../../../fixtures/demo/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, demo), "utf8"));
const statement = Report.parse(read("reports/sovrano-statement.json"));
const found: Report = { ...Report.parse(read("reports/sovrano-inspection.json")), findings: [] };

const isRead = (items: readonly string[]): boolean[] =>
  items.map((item) => compiledSheet.items.get(item)?.item.answer === "reading");

test("what eyes tell is told for certain, what is read only as well as its instrument reads", () => {
  const looks = looksAtStake({
    comparison: analyze(statement, found, compiledSheet),
    found,
    sheet: compiledSheet.sheet,
    table: CostTable.parse(read("cost-table.json")),
  });
  const readOnly = looks.filter(({ items }) => isRead(items).every(Boolean));
  const open = readOnly.filter(({ probability }) => probability > 0 && probability < 1);
  expect(open.length).toBeGreaterThan(3);
  for (const { reading } of open)
    expect(Math.min(reading?.spread ?? 0, reading?.uncertainty ?? 0)).toBeGreaterThan(0);
  const byEye = looks.filter(({ items }) => !isRead(items).some(Boolean));
  expect(byEye.length).toBeGreaterThan(3);
  expect(byEye.filter(({ reading }) => reading !== undefined)).toEqual([]);
});

test("a look is as uncertain as what it is read with", () => {
  const spec = compiledSheet.items.get("wheels.tread-depth")?.item.reading;
  if (spec === undefined) throw new Error("the sheet reads no tread");
  const ordinary = lookUncertainty(spec, 6);
  expect(ordinary).toBeGreaterThan(0);
  const coarse = { id: "x", name: "rule", resolution: { value: 4, unit: spec.unit } };
  expect(lookUncertainty(spec, 6, coarse)).toBeGreaterThan(ordinary);
});
