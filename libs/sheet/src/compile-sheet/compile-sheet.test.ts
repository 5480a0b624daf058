import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { compileSheet } from "./index.ts";

const itemOf = (id: string) => compileSheet({ ...sheet }).items.get(id);

const shapesOf = (list: readonly (object | undefined)[]): number =>
  new Set(list.filter((one) => one !== undefined).map((one) => Object.keys(one).join(" "))).size;

describe("compileSheet", () => {
  it("is made once for a sheet, and anew for another", () => {
    const compiled = compileSheet(sheet);
    expect(compileSheet(sheet)).toBe(compiled);
    expect(compileSheet({ ...sheet })).not.toBe(compiled);
  });

  it("holds every item with its place in the sheet", () => {
    const compiled = compileSheet({ ...sheet });
    expect([...compiled.items.keys()]).toEqual(sheet.items.map(({ id }) => id));
    expect([...compiled.items.values()].map(({ order }) => order)).toEqual(
      sheet.items.map((_, index) => index),
    );
    expect(itemOf("wheels.tread-depth")?.item).toEqual(
      sheet.items.find(({ id }) => id === "wheels.tread-depth"),
    );
    expect(itemOf("wheels.tread-depth")?.positionSet?.id).toBe("corners-and-spare");
    expect(itemOf("electrics.horn")?.positionSet).toBeUndefined();
  });

  it("holds items, particulars, limits and options in one shape each, and as the sheet has them", () => {
    const items = Array.from(compileSheet({ ...sheet }).items.values(), ({ item }) => item);
    const readings = items.flatMap(({ reading }) => reading ?? []);
    expect([
      shapesOf(items),
      shapesOf(readings),
      shapesOf(readings.flatMap(({ limits, alarms }) => [...limits, ...alarms])),
      shapesOf(items.map(({ choice }) => choice)),
      shapesOf(items.flatMap(({ choice }) => choice?.options ?? [])),
      shapesOf(items.map(({ faults }) => faults)),
      shapesOf(items.map(({ presence }) => presence)),
    ]).toEqual([1, 1, 1, 1, 1, 1, 1]);
    expect(items).toEqual(sheet.items);
  });

  it.each([
    ["wheels.tread-depth", "left-front", 0],
    ["wheels.tread-depth", "right-front", 4],
    ["wheels.tread-depth", "", undefined],
    ["electrics.horn", "", 0],
    ["electrics.horn", "left", undefined],
    ["engine.compression", "cylinder-1", 0],
    ["engine.compression", "cylinder-12", 11],
    ["engine.compression", "cylinder-0", undefined],
    ["engine.compression", "cylinder-01", undefined],
    ["engine.compression", "cylinder-", undefined],
    ["engine.compression", "cylinder-1a", undefined],
    ["engine.compression", "pot-1", undefined],
    ["engine.compression", "chamber--1", undefined],
  ])("puts %s at %j in place %j", (item, position, order) => {
    expect(itemOf(item)?.positionOrder(position)).toBe(order);
  });

  it("counts numbered positions after listed ones", () => {
    const sets = sheet.positionSets.map((set) =>
      set.id === "cylinders" ? { ...set, positions: [{ id: "all", words: set.words }] } : set,
    );
    const order = compileSheet({ ...sheet, positionSets: sets }).items.get(
      "engine.compression",
    )?.positionOrder;
    expect([order?.("all"), order?.("cylinder-1"), order?.("cylinder-2")]).toEqual([0, 1, 2]);
  });

  it("ranks options from the most claimed", () => {
    expect([...(itemOf("brakes.pedal-sink")?.options ?? [])]).toEqual([
      ["holds", { rank: 0, call: "good", bad: false }],
      ["slow", { rank: 1, call: "danger", bad: true }],
      ["to-floor", { rank: 2, call: "danger", bad: true }],
      ["not-known", { rank: 3, call: "no-yardstick", bad: false }],
    ]);
    expect(itemOf("electrics.horn")?.options.size).toBe(0);
  });

  it("holds the fault kinds an item asks for, and no others", () => {
    expect([...(itemOf("underbody.jacking-damage")?.faultKinds.keys() ?? [])].toSorted()).toEqual([
      "bend",
      "buckle",
      "crushed-seam",
      "dent",
    ]);
    expect(itemOf("electrics.horn")?.faultKinds.size).toBe(0);
    expect(compileSheet({ ...sheet }).faultKinds.size).toBe(sheet.faultKinds.length);
  });

  it("measures between the cells of a drawing", () => {
    const drawing = itemOf("body.faults")?.drawing;
    expect(drawing?.drawing.id).toBe("panel");
    expect(drawing?.distance("upper-front", "upper-front")).toBe(0);
    expect(drawing?.distance("upper-front", "upper-rear")).toBe(2);
    expect(drawing?.distance("upper-front", "lower-rear")).toBeCloseTo(Math.sqrt(8), 12);
    expect(drawing?.distance("upper-front", "nowhere")).toBeUndefined();
    expect(drawing?.distance("nowhere", "upper-front")).toBeUndefined();
    expect(drawing?.span).toBeCloseTo(Math.sqrt(8), 12);
    expect(drawing?.cellOrder.get("upper-center")).toBe(1);
    expect(itemOf("steering.ball-joint-seals")?.drawing).toBeUndefined();
    expect(compileSheet({ ...sheet }).drawings.size).toBe(sheet.drawings.length);
  });
});
