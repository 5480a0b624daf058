import { readFileSync, readdirSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { Report } from "@evenhand/shared/report";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { roadGate } from "./index.ts";

const folder = new URL("../../../../fixtures/demo/reports/", import.meta.url);
const sheet = compileSheet(sheetVersion1);
const inspections = readdirSync(folder)
  .filter((file) => file.endsWith("-inspection.json"))
  .map((file) => [file, Report.parse(JSON.parse(readFileSync(new URL(file, folder), "utf8")))] as const);

const seenOf = (report: Report, isAsked: (item: string) => boolean): string[] =>
  report.findings
    .filter(({ item, answer }) => isAsked(item) && answer.kind !== "not-seen")
    .map(({ item, position }) => `${item} ${position}`.trim());

/** What is seen only of a wheel that hangs, which a drive-on lift does not give. */
const HANGING = [
  "driveline.axle-turns",
  "driveline.limited-slip",
  "steering.ball-joint-play",
  "steering.king-pin-play",
  "steering.linkage-play",
  "steering.wheel-bearing-play",
  "wheels.runout-lateral",
  "wheels.runout-radial",
  "brakes.disc-runout",
];

describe("the inspectors of the demo", () => {
  it("have one who finds the gate shut, and one who finds it open", () => {
    const open = inspections.map(([, report]) => roadGate(report, sheet).length === 0);
    expect(new Set(open)).toEqual(new Set([true, false]));
  });

  it.each(inspections)(
    "%s: drive no car the gate keeps off the road, and say why they saw nothing there",
    (_, report) => {
      if (roadGate(report, sheet).length === 0) return;
      const isRoad = (item: string): boolean => sheet.items.get(item)?.item.needs.includes("road") === true;
      expect(seenOf(report, isRoad)).toEqual([]);
      const reasons = report.findings
        .filter(({ item }) => isRoad(item))
        .map(({ answer }) => (answer.kind === "not-seen" ? answer.reason : ""));
      expect(new Set(reasons)).toEqual(new Set(["unsafe"]));
    },
  );

  it.each(inspections)("%s: lift no car by a point that is soft or patched", (_, report) => {
    const points = report.findings.filter(({ item }) => item === "underbody.lift-points");
    const bad = points.filter(
      ({ answer }) => answer.kind === "choice" && ["patched", "soft"].includes(answer.option),
    );
    if (bad.length === 0) return;
    expect(bad.every(({ note }) => note?.includes("on its wheels on a drive-on lift"))).toBe(true);
    expect(seenOf(report, (item) => HANGING.includes(item))).toEqual([]);
  });
});
