import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Comparison } from "@evenhand/shared/comparison";
import { Report } from "@evenhand/shared/report";
import { sheet } from "../../testing/small-reports.ts";
import { sentence, sentenceContext } from "../sentence/index.ts";
import { analyze } from "./index.ts";

const demo = new URL("../../../../fixtures/demo/reports/", import.meta.url);
const demoReport = (name: string): Report =>
  Report.parse(JSON.parse(readFileSync(new URL(name, demo), "utf8")));
const demoPairs = readdirSync(demo)
  .filter((name) => name.endsWith("-inspection.json"))
  .map(
    (name) =>
      [
        name.replace("-inspection.json", ""),
        demoReport(name.replace("inspection", "statement")),
        demoReport(name),
      ] as const,
  );

describe("the demo's pairs of reports", () => {
  it.each(demoPairs)("makes a comparison by contract of the demo's %s", (_name, a, b) => {
    const result = analyze(a, b, sheet);
    expect(Comparison.parse(JSON.parse(JSON.stringify(result)))).toEqual(JSON.parse(JSON.stringify(result)));
  });

  it.each(demoPairs)("have a sentence for every entry, with nothing left unfilled: %s", (_name, a, b) => {
    const { entries } = analyze(a, b, sheet);
    const sentences = entries.map((entry) => sentence(entry, sentenceContext(entry, sheet.sheet, a, b)));
    expect(
      sentences.filter((text) => !/^[A-Z0-9].*\.$/.test(text) || /[{}]|undefined|NaN/.test(text)),
    ).toEqual([]);
  });
});
