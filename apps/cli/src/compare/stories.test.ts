import { readFileSync } from "node:fs";
import { analyze } from "@evenhand/comparison/analyze";
import { singleReportChecks } from "@evenhand/handbook/cross-checks";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import { Report } from "@evenhand/shared/report";
import { expect, test } from "vitest";
import { filesOf } from "../../../../fixtures/golden/pairs.ts";
import type { pairs } from "../../../../fixtures/golden/pairs.ts";

type Pair = (typeof pairs)[number];

const report = (file: URL): Report => Report.parse(JSON.parse(readFileSync(file, "utf8")));

/** Rules that the statement's own figures break, with no inspector's help. */
const brokenAlone = (pair: Pair): string[] => {
  const checks = singleReportChecks(report(filesOf(pair).a), sheetVersion1);
  const broken = checks.filter(({ verdict, strength }) => verdict === "breaks" && strength === "contradicts");
  return [...new Set(broken.map(({ rule }) => rule))].sort();
};

const contradicts = ({ verdict, strength }: CrossCheck): boolean =>
  verdict === "breaks" && strength === "contradicts";

test("the dealer who overstates is contradicted by his own figures under ten rules", () => {
  expect(brokenAlone("sovrano")).toEqual([
    "charging",
    "claims-against-dates",
    "compression",
    "cranking",
    "date-correct",
    "date-order",
    "displacement",
    "odometer",
    "original-paint",
    "road-ratio",
  ]);
});

test.each(["larksong", "windrow"] as const)(
  "the honest dealer's statement on the %s breaks no rule",
  (pair) => {
    expect(brokenAlone(pair)).toEqual([]);
  },
);

test("nor does the inspection contradict the honest dealer's figures", () => {
  const { a, b } = filesOf("larksong");
  const { crossChecks, tally } = analyze(report(a), report(b), compileSheet(sheetVersion1));
  expect(crossChecks.filter(contradicts)).toEqual([]);
  expect(tally.differ).toBeLessThan(5);
  expect(tally.agree).toBeGreaterThan(400);
});

test("what is hidden under the older car comes out as not stated or differing, most of it what the price rests on", () => {
  const { a, b } = filesOf("windrow");
  const { entries } = analyze(report(a), report(b), compileSheet(sheetVersion1));
  const hidden = entries.filter(
    ({ outcome, severity }) => (outcome === "unstated" || outcome === "differ") && severity === "worth",
  );
  expect(hidden.length).toBeGreaterThan(15);
  expect(hidden.map(({ item }) => item)).toContain("body.fender-inner-face");
});
