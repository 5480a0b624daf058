import { describe, expect, it } from "vitest";
import type { Item } from "@evenhand/shared/sheet";
import { compileSheet } from "@evenhand/sheet/compile-sheet";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { partedSeverity, worstSeverity } from "./index.ts";

/** The worst an answer at a place can be, and how grave it is that two good ones part; of an item as `more` would have it. */
const graveness = (id: string, position = "", more: Partial<Item> = {}): string => {
  const items = sheetVersion1.items.filter((item) => item.id === id).map((item) => ({ ...item, ...more }));
  const compiled = compileSheet({ ...sheetVersion1, items }).items.get(id);
  if (compiled === undefined) throw new Error(`no item ${id}`);
  const worst = worstSeverity(compiled, position);
  // Asked twice, as many comparisons ask it.
  expect(worstSeverity(compiled, position)).toBe(worst);
  return `${worst}, parted ${partedSeverity(compiled, position)}`;
};

describe("how grave a place can be", () => {
  it.each<[string, Parameters<typeof graveness>, string]>([
    ["a code: as its item", ["identity.paint-code"], "worth, parted worth"],
    ["a color: as its item", ["body.color", "hood"], "worth, parted worth"],
    ["a dimension with no limit: as its item", ["engine.bore"], "repair, parted repair"],
    [
      "a reading: as its limits",
      ["wheels.tread-depth", "left-front", { severity: "small" }],
      "danger, parted small",
    ],
    ["at a place where a limit is milder", ["wheels.tread-depth", "spare"], "small, parted small"],
    ["a grade: as its worn end", ["interior.headliner", "", { severity: "halt" }], "small, parted small"],
    [
      "a grade that is worse where it is spent",
      ["interior.headliner", "", { grade: { severity: "repair", spent: "danger", badFrom: "heavy-wear" } }],
      "danger, parted small",
    ],
    ["what works: as its failing", ["electrics.horn", "", { severity: "danger" }], "repair, parted repair"],
    [
      "what is milder where it works at times",
      ["electrics.horn", "", { working: { severity: "danger", intermittent: "small" }, severity: "halt" }],
      "danger, parted small",
    ],
    ["a lamp", ["electrics.lamps", "left-headlamp", { severity: "small" }], "danger, parted small"],
    ["at a place where failing is milder", ["electrics.lamps", "reverse"], "small, parted small"],
    ["a jack: as its absence", ["trunk.jack", "", { severity: "danger" }], "small, parted small"],
    [
      "a list: from its least to its worst bad option",
      ["driveline.pinion-seal", "", { severity: "halt" }],
      "repair, parted small",
    ],
    [
      "at a place where an option is graver",
      ["driveline.leaks-before", "fuel", { severity: "halt" }],
      "danger, parted danger",
    ],
    ["and at any other", ["driveline.leaks-before", "oil-pan", { severity: "halt" }], "repair, parted small"],
    [
      "a list with nothing bad on it: as its item",
      ["visit.light", "", { severity: "worth" }],
      "worth, parted worth",
    ],
    [
      "glass that is seen through",
      ["brightwork.glass-faults", "windshield", { severity: "halt" }],
      "danger, parted small",
    ],
    [
      "glass that is not",
      ["brightwork.glass-faults", "rear-window", { severity: "halt" }],
      "repair, parted small",
    ],
    ["a seat", ["interior.seat-faults", "driver", { severity: "halt" }], "repair, parted small"],
    [
      "an item that is milder than any bad answer",
      ["brakes.parking-brake", "", { severity: "small" }],
      "danger, parted small",
    ],
  ])("%s", (_name, place, expected) => {
    expect(graveness(...place)).toBe(expected);
  });
});
