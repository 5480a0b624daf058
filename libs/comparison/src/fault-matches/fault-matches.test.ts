import { describe, expect, it } from "vitest";
import type { Fault } from "@evenhand/shared/answer";
import { frame } from "../../testing/small-items.ts";
import { extentOf, matchFaults } from "./index.ts";

const dent = (spot?: string, millimeters?: number): Fault => ({
  kind: "dent",
  spot,
  extent: millimeters === undefined ? undefined : { value: millimeters, unit: "mm" },
});
const match = (a: Fault[], b: Fault[]) => matchFaults(a, b, frame);

describe("matchFaults", () => {
  it("matches a kind at its spot and at the neighboring ones, cornerwise too", () => {
    expect(match([dent("1-1")], [dent("1-1")])).toEqual([{ a: 0, b: 0 }]);
    expect(match([dent("1-1")], [dent("2-1")])).toEqual([{ a: 0, b: 0 }]);
    expect(match([dent("1-1", 10)], [dent("2-2", 90)])).toEqual([{ a: 0, b: 0 }]);
  });

  it("does not match two cells apart", () => {
    expect(match([dent("1-1")], [dent("3-1")])).toEqual([{ a: 0 }, { b: 0 }]);
  });

  it("never matches another kind", () => {
    expect(match([{ kind: "crack", spot: "1-1" }], [dent("1-1")])).toEqual([{ b: 0 }, { a: 0 }]);
  });

  it("matches where one side names no spot, but prefers a named one", () => {
    expect(match([dent()], [dent("3-3")])).toEqual([{ a: 0, b: 0 }]);
    expect(match([dent(), dent("3-3")], [dent("3-3")])).toEqual([{ a: 0 }, { a: 1, b: 0 }]);
  });

  it("takes the least total, not the nearest first", () => {
    const [a, b] = [
      [dent("2-1", 100), dent("2-1", 10)],
      [dent("2-1", 60), dent("3-1", 110)],
    ];
    expect(match(a, b)).toEqual([
      { a: 1, b: 0 },
      { a: 0, b: 1 },
    ]);
  });

  it("tells faults at one spot apart by extent", () => {
    expect(match([dent("1-1", 10), dent("1-1", 100)], [dent("1-1", 95)])).toEqual([{ a: 0 }, { a: 1, b: 0 }]);
    expect(match([dent("1-1"), dent("1-1", 100)], [dent("1-1", 200)])).toEqual([{ a: 0 }, { a: 1, b: 0 }]);
    expect(match([dent("1-1", 0)], [dent("1-1", 0)])).toEqual([{ a: 0, b: 0 }]);
  });

  it("breaks ties by the sheet's order, not by the order of writing", () => {
    expect(match([dent("1-1"), dent("3-1")], [dent("2-1")])).toEqual([{ a: 0, b: 0 }, { a: 1 }]);
    expect(match([dent("3-1"), dent("1-1")], [dent("2-1")])).toEqual([{ a: 1, b: 0 }, { a: 0 }]);
    expect(match([dent("2-1")], [dent("3-1"), dent("1-1")])).toEqual([{ a: 0, b: 1 }, { b: 0 }]);
  });

  it("keeps the order of the item's kinds, unknown ones last", () => {
    const a: Fault[] = [{ kind: "bulge" }, { kind: "crack" }, { kind: "dent" }];
    expect(match(a, []).map(({ a: index }) => a[index ?? -1]?.kind)).toEqual(["dent", "crack", "bulge"]);
    expect(match([], a).map(({ b: index }) => a[index ?? -1]?.kind)).toEqual(["dent", "crack", "bulge"]);
    const both = match(a, [{ kind: "corrosion" }, { kind: "crack" }]);
    expect(both).toEqual([{ a: 2 }, { b: 0 }, { a: 1, b: 1 }, { a: 0 }]);
  });

  it("keeps the order of cells, then of extents, then of writing", () => {
    const a = [dent("2-1", 5), dent("1-1", 9), dent("1-1", 3), dent("1-1"), dent(), dent("1-1", 3)];
    expect(match(a, []).map(({ a: index }) => index)).toEqual([4, 3, 2, 5, 1, 0]);
  });

  it("counts a missing extent half of what unlike ones can", () => {
    expect(match([dent("1-1", 10)], [dent("1-1"), dent("1-1", 10)])).toEqual([{ a: 0, b: 1 }, { b: 0 }]);
    expect(match([dent("1-1", 10)], [dent("1-1"), dent("1-1", 1000)])).toEqual([{ a: 0, b: 0 }, { b: 1 }]);
    expect(match([dent("1-1")], [dent("1-1", 10), dent("1-1")])).toEqual([{ a: 0, b: 1 }, { b: 0 }]);
    expect(match([dent("1-1", 10)], [dent("1-1"), dent("1-1", 16)])).toEqual([{ a: 0, b: 1 }, { b: 0 }]);
  });

  it("knows no distance between spots the drawing does not hold, or without a drawing", () => {
    expect(match([dent("elsewhere")], [dent("elsewhere")])).toEqual([{ a: 0, b: 0 }]);
    expect(match([dent("elsewhere")], [dent("1-1")])).toEqual([{ a: 0 }, { b: 0 }]);
    const bare = { ...frame, drawing: undefined };
    expect(matchFaults([dent("1-1")], [dent("2-1")], bare)).toEqual([{ a: 0 }, { b: 0 }]);
    expect(matchFaults([dent("1-1"), dent()], [dent("1-1")], bare)).toEqual([{ a: 0, b: 0 }, { a: 1 }]);
  });

  it("matches the same faults when the sides are exchanged", () => {
    const [a, b] = [
      [dent("1-1"), dent("2-2"), dent("3-3")],
      [dent("2-1"), dent("2-3")],
    ];
    const mirrored = match(b, a).map((one) => ({ a: one.b, b: one.a }));
    expect(mirrored.map((one) => JSON.stringify(one)).sort()).toEqual(
      match(a, b)
        .map((one) => JSON.stringify(one))
        .sort(),
    );
  });

  it("matches one fault a side as it would beside a fault of another family", () => {
    const spots = [undefined, "1-1", "2-1", "3-3", "elsewhere"];
    const some = ["dent", "corrosion", "unheard-of"].flatMap((kind) =>
      spots.flatMap((spot) => [10, 90].map((size) => ({ ...dent(spot, size), kind }))),
    );
    const other: Fault = { kind: "crack", spot: "2-2" };
    for (const a of some) {
      for (const b of some) {
        const beside = match([a], [b, other]).filter((one) => one.b !== 1);
        expect(match([a], [b])).toEqual(beside);
      }
    }
  });

  it("has nothing to match in nothing", () => {
    expect(match([], [])).toEqual([]);
  });
});

describe("extentOf", () => {
  it("is in the unit of the kind", () => {
    expect(extentOf({ kind: "dent", extent: { value: 2, unit: "in" } }, frame)).toBe(50.8);
    expect(extentOf({ kind: "dent" }, frame)).toBeUndefined();
    expect(extentOf({ kind: "bulge", extent: { value: 2, unit: "in" } }, frame)).toBeUndefined();
  });
});
