import { Sheet } from "@evenhand/shared/sheet";
import { describe, expect, it } from "vitest";
import { applicablePlaces } from "../expand/index.ts";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { transportSheet1 as sheet } from "./index.ts";

const ids = (list: readonly { id: string }[]) => list.map(({ id }) => id);
const used = (values: readonly (string | null | undefined)[]) =>
  [...new Set(values.filter((value) => value !== undefined && value !== null))].toSorted();

describe("the transport sheet", () => {
  it("is what its contract reads, with nothing left to default, and cannot be changed", () => {
    expect(Sheet.parse(sheet)).toEqual(sheet);
    expect(sheet.items.every((item) => Object.isFrozen(item) && Object.isFrozen(item.words))).toBe(true);
  });

  it.each([
    ["position sets", sheet.positionSets, used(sheet.items.map(({ positions }) => positions))],
    ["cautions", sheet.cautions, used(sheet.items.flatMap(({ cautions }) => cautions))],
    ["fault kinds", sheet.faultKinds, used(sheet.items.flatMap(({ faults }) => faults?.kinds))],
    ["drawings", sheet.drawings, used(sheet.items.map(({ faults }) => faults?.drawing))],
    ["sections", sheet.sections, used(sheet.items.map(({ section }) => section))],
  ])("uses all its %s and no others, each named once", (_, list, uses) => {
    expect(ids(list).toSorted()).toEqual(uses);
  });

  it("takes fifteen to twenty minutes beside the car", () => {
    const minutes = sheet.items.reduce((sum, item) => sum + item.minutes, 0);
    expect(minutes).toBeGreaterThanOrEqual(15);
    expect(minutes).toBeLessThanOrEqual(20);
  });

  it("calls dark, wet, dirty and covered unseen for all that is looked at, and for nothing that is read or tried", () => {
    const unseen = sheet.items.flatMap(({ qualifies }) => Object.entries(qualifies?.unseen ?? {}));
    expect(unseen).toEqual([
      ["dim", "dark"],
      ["dark", "dark"],
      ["wet", "wet"],
      ["dirty", "dirty"],
      ["covered", "covered"],
    ]);
    const spoiled = new Set(sheet.items.flatMap(({ qualifies }) => qualifies?.sections ?? []));
    const looked = sheet.items.filter(({ section }) => spoiled.has(section));
    expect(looked.every(({ answer }) => answer === "faults")).toBe(true);
    expect(sheet.items.filter(({ answer }) => answer === "faults")).toEqual(looked);
  });

  it("asks of the roof of a closed car, and of the top of an open one", () => {
    const form = {
      doors: 2,
      cylinders: 6,
      construction: "body-on-frame",
      gearbox: "manual",
      driven: "rear",
      fuelSystem: "carburetor",
      systemVolts: 12,
      brakes: { front: "disc", rear: "drum" },
      leftHandDrive: true,
    } as const;
    const positions = (body: "sedan" | "convertible") =>
      applicablePlaces(sheet, { ...form, body }).map(({ position }) => position);
    expect(positions("sedan")).toContain("roof");
    expect(positions("sedan")).not.toContain("soft-top");
    expect(positions("convertible")).toContain("soft-top");
    expect(positions("convertible")).not.toContain("roof");
  });

  it("never asks what a caution forbids: nobody goes under the car, and what is on a ramp stays alone", () => {
    const text = sheet.items.map(({ how }) => how).join(" ");
    expect(text).not.toMatch(/under the car\b(?! as it stood)|crawl|jack it|lift it/i);
    for (const id of ["underbody.edge-faults", "lashing.ground-clearance", "road.leaks"]) {
      expect(sheet.items.find((item) => item.id === id)?.cautions).toContain("under-ramp");
    }
    expect(sheet.items.find(({ id }) => id === "lashing.tie-down-points")?.cautions).toContain("winch");
  });

  it("means by an item the inspection sheet has too what that one means", () => {
    const inspected = new Map(sheetVersion1.items.map(({ id, answer }) => [id, answer]));
    const both = sheet.items.filter(({ id }) => inspected.has(id));
    expect(both.length).toBeGreaterThan(5);
    expect(both.map(({ id, answer }) => [id, answer])).toEqual(both.map(({ id }) => [id, inspected.get(id)]));
  });
});
