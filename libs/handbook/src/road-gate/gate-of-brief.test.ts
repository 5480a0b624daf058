import { describe, expect, it } from "vitest";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { choice, reading, report } from "../../testing/small-report.ts";
import { GATE_ITEMS, gateOfBrief } from "./index.ts";

const sheet = compileSheet(sheetVersion1);
const brief = [
  { item: "wheels.tread-depth", positions: ["left-rear", "right-rear"] },
  { item: "wheels.pressure" },
];
const draft = (...findings: Parameters<typeof report>[0]) => report(findings, { kind: "inspection" });

describe("the gate to the road as a visit stands", () => {
  it("is every gate item of the brief, unseen, before anything is written", () => {
    const all = gateOfBrief([...brief, { item: "road.shifts" }], undefined, sheet);
    expect(all.map(({ item }) => item)).toEqual(["wheels.tread-depth", "wheels.pressure"]);
    expect(all.every(({ seen, safetyOpen, position }) => !seen && !safetyOpen && position === "")).toBe(true);
    expect(
      gateOfBrief(
        GATE_ITEMS.map((item) => ({ item })),
        undefined,
        sheet,
      ).length,
    ).toBe(GATE_ITEMS.length);
  });

  it("asks no position the brief does not, and takes what was not seen as not looked at", () => {
    const gate = gateOfBrief(
      brief.slice(0, 1),
      draft(reading("wheels.tread-depth", "1/32in", [8, 8, 8], "left-rear"), {
        item: "wheels.tread-depth",
        position: "right-rear",
        answer: { kind: "not-seen", reason: "not-reached" },
      }),
      sheet,
    );
    expect(gate).toEqual([
      { item: "wheels.tread-depth", position: "left-rear", seen: true, safetyOpen: false },
      { item: "wheels.tread-depth", position: "right-rear", seen: false, safetyOpen: false },
    ]);
  });

  it("is closed by what was found, whether the brief asked for it or not", () => {
    const gate = gateOfBrief([], draft(choice("brakes.pedal-feel", "spongy")), sheet);
    expect(gate).toEqual([{ item: "brakes.pedal-feel", position: "", seen: true, safetyOpen: true }]);
  });
});
