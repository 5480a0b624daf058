import { describe, expect, test } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { Item } from "@evenhand/shared/sheet";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { callOf, mirrorImage } from "./index.ts";
import type { CallContext } from "./index.ts";

function itemOf(id: string): Item {
  const item = sheetVersion1.items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`the sheet has no ${id}`);
  return item;
}
const millimeters = (...values: number[]): Answer => ({
  kind: "reading",
  unit: "mm",
  values: values.map((value) => ({ value })),
});
const inches = (value: number): Answer => ({ kind: "reading", unit: "in", values: [{ value }] });

const height = (left: number, right: number | undefined, position = "left-rear") =>
  callOf(millimeters(left), itemOf("steering.ride-height"), {
    position,
    other: (item, at) =>
      item === "steering.ride-height" && at === mirrorImage(position) && right !== undefined
        ? millimeters(right)
        : undefined,
  });

test.each([
  ["as high as the other", 350, 352, "good"],
  ["a little lower", 350, 363, "no-yardstick"],
  ["35 mm lower", 345, 380, "repair"],
  ["35 mm higher", 380, 345, "repair"],
  ["the other one not read", 345, undefined, "no-yardstick"],
])("%s", (_, left, right, wanted) => {
  expect(height(left, right)).toBe(wanted);
});

describe("a reading beside the one on the other side of the car", () => {
  test("a diagonal has its image in the other diagonal, and a hood has none", () => {
    expect(mirrorImage("left-front-right-rear")).toBe("right-front-left-rear");
    expect(mirrorImage("hood")).toBeUndefined();
  });
});

describe("figures another yardstick hangs on", () => {
  test.each([
    ["an ordinary rim", "interior.steering-wheel-diameter", 17.5, "good"],
    ["no rim a car has", "interior.steering-wheel-diameter", 9, "no-yardstick"],
    ["the figure of an ordinary drum", "brakes.drum-cast-figure", 9.06, "good"],
    ["a figure no drum carries", "brakes.drum-cast-figure", 5, "no-yardstick"],
  ])("%s", (_, item, value, wanted) => {
    expect(callOf(inches(value), itemOf(item))).toBe(wanted);
  });
});

const path = (option: string, otherCall: CallContext["otherCall"]) =>
  callOf({ kind: "choice", option }, itemOf("engine.leak-down-path"), {
    position: "cylinder-4",
    otherCall,
  });

const leaksBadly: CallContext["otherCall"] = (item, position) =>
  item === "engine.leak-down" && position === "cylinder-4" ? "worth" : undefined;

test("air past the rings is as bad as the leak of its cylinder", () => {
  expect(path("crankcase", leaksBadly)).toBe("worth");
  expect(path("crankcase", () => "good")).toBe("no-yardstick");
  expect(path("crankcase", undefined)).toBe("no-yardstick");
  expect(path("none", leaksBadly)).toBe("good");
  expect(path("not-known", leaksBadly)).toBe("no-yardstick");
});

const scale = (count: number): GradeScale[] => [
  {
    id: "own",
    name: "own",
    grades: Array.from({ length: count }, (_, rank) => ({ id: `g${rank}`, name: `g${rank}` })),
  },
];

const belts = (value: string, count: number) =>
  callOf({ kind: "grade", scale: "own", value }, itemOf("engine.belts"), { scales: scale(count) });

describe("a grade on a scale of fewer words", () => {
  test("is bad or good only where its whole share is, and its worst word is always bad", () => {
    expect(itemOf("engine.belts").grade?.badFrom).toBe("heavy-wear");
    expect([belts("g0", 4), belts("g1", 4), belts("g2", 4)]).toEqual(["repair", "no-yardstick", "good"]);
    expect([belts("g0", 2), belts("g1", 2)]).toEqual(["repair", "good"]);
  });
});
