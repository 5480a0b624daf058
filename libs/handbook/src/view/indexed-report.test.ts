import { expect, it } from "vitest";
import type { FindingInput } from "@evenhand/shared/finding";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { code, report } from "../../testing/small-report.ts";
import { answeredBy, findAt, indexReport, isSpokenOf } from "./indexed-report.ts";

const sheet = compileSheet(sheetVersion1);
const indexed = (...findings: readonly FindingInput[]) => indexReport(report(findings), sheet, "b");
const size = (text: string, corner: string) => code("wheels.tire-size", text, corner);

it("finds by item and position, also where findings of one item do not stand together", () => {
  const tires = indexed(
    size("6.00-16", "left-front"),
    code("identity.bill-date", "1999-03-04", "block"),
    size("6.50-16", "right-front"),
  );
  const sizes = answeredBy(tires, "wheels.tire-size");
  expect(sizes.map(({ side, position, answer }) => [side, position, answer])).toEqual([
    ["b", "left-front", { kind: "code", text: "6.00-16" }],
    ["b", "right-front", { kind: "code", text: "6.50-16" }],
  ]);
  expect(findAt(sizes, "right-front")?.finding).toBe(tires.report.findings[2]);
  expect(findAt(sizes, "left-rear")).toBeUndefined();
  expect(findAt(answeredBy(tires, "identity.bill-date"), "block")?.item).toBe("identity.bill-date");
  expect(answeredBy(tires, "wheels.tire-age")).toEqual([]);
  expect(answeredBy(tires, "of no sheet")).toEqual([]);
});

it("gives one object for a finding, however often it is asked for", () => {
  const tires = indexed(size("6.00-16", "left-front"));
  expect(answeredBy(tires, "wheels.tire-size")[0]).toBe(answeredBy(tires, "wheels.tire-size")[0]);
});

it("takes the last of two at one place", () => {
  const tires = indexed(size("6.00-16", "left-front"), size("6.50-16", "left-front"));
  expect(findAt(answeredBy(tires, "wheels.tire-size"), "left-front")?.finding).toBe(tires.report.findings[1]);
});

const placeOf = (item: string): number => sheet.items.get(item)?.order ?? -1;

it("knows what is spoken of", () => {
  const tires = indexed(size("6.00-16", "left-front"));
  expect(isSpokenOf(tires, placeOf("wheels.tire-size"))).toBe(true);
  expect(isSpokenOf(tires, placeOf("wheels.tire-age"))).toBe(false);
  expect(isSpokenOf(tires, placeOf("of no sheet"))).toBe(false);
});

it("reads no number where words stand for one, and words where words are asked for", () => {
  const words = indexed(
    code("identity.vin", "MV72-330914", "main-plate"),
    code("identity.vin", "same", "body-tag"),
    code("identity.gearbox-kind", "manual"),
  );
  expect(answeredBy(words, "identity.vin").map(({ position }) => position)).toEqual(["main-plate"]);
  expect(answeredBy(words, "identity.gearbox-kind")).toHaveLength(1);
});
