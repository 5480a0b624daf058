import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { indexReport } from "../view/index.ts";
import type { View } from "../view/index.ts";
import { rules } from "./index.ts";

const folder = new URL("../../../../fixtures/demo/reports/", import.meta.url);
const read = (file: string): Report => Report.parse(JSON.parse(readFileSync(new URL(file, folder), "utf8")));
const files = readdirSync(folder);
const pairs = files
  .filter((file) => file.endsWith("-inspection.json"))
  .map((file) => [read(file.replace("inspection", "statement")), read(file)] as const);

const sheet = compileSheet(sheetVersion1);
const without = (report: Report, item: string | undefined, side: "a" | "b") =>
  indexReport(
    { ...report, findings: report.findings.filter((finding) => finding.item !== item) },
    sheet,
    side,
  );

/** Each side by itself and A against B, as two reports are read, an item left out of both. */
const viewsOf = ([a, b]: (typeof pairs)[number], item?: string): View[] => {
  const reports = { a: without(a, item, "a"), b: without(b, item, "b") };
  const { limits: firm = {}, maker } = b.handbook ?? {};
  const views = [
    ["a", ["a"]],
    ["b", ["b"]],
    ["a", ["b", "a"]],
  ] as const;
  return views.map(([claims, readings]) => ({
    sheet,
    reports,
    firm,
    maker: maker?.data ?? {},
    claims,
    readings,
    kept: [],
  }));
};

const looked = (): never => {
  throw new Error("looked for");
};
const needing = rules.filter(({ needs }) => needs.length > 0);

describe("what a rule needs", () => {
  it.each(needing.map((rule) => [rule.id, rule] as const))("%s finds nothing without it", (_id, rule) => {
    for (const item of rule.needs) {
      expect(sheet.items.has(item)).toBe(true);
      const found = pairs.flatMap((pair) => viewsOf(pair, item).flatMap((view) => rule.find(view)));
      expect(found).toEqual([]);
    }
  });

  it("keeps no rule from what it finds, and most of them find something in these reports", () => {
    const views = pairs.flatMap((pair) => viewsOf(pair));
    const finding = rules.filter((rule) => {
      const found = views.map((view) => rule.find(view).length);
      expect(views.map((view) => rule.rule([view]).length)).toEqual(found);
      return found.some((count) => count > 0);
    });
    expect(finding.length).toBeGreaterThan(30);
  });

  it("is asked for first, and nothing is looked for where it is not answered", () => {
    const [pair] = pairs;
    if (pair === undefined) throw new Error("no pair");
    const none = indexReport({ ...pair[0], findings: [] }, sheet, "a");
    const silent = Object.defineProperty({ ...none }, "asked", { get: looked });
    for (const view of viewsOf(pair)) {
      for (const rule of needing) {
        const unanswered = { ...view, reports: { a: silent, b: silent } };
        expect(rule.rule([unanswered])).toEqual([]);
      }
    }
  });
});
