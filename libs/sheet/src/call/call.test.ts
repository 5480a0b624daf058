import { describe, expect, test } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import type { GradeScale } from "@evenhand/shared/report";
import type { ConditionNeeded, Item, Limit } from "@evenhand/shared/sheet";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { callOf, isUnmet, limitValue, mirrorImage } from "./index.ts";
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

const limit = (more: Partial<Limit>): Limit => ({
  side: "max",
  value: 2,
  severity: "danger",
  source: { kind: "common-practice", text: "common practice, no source" },
  ...more,
});
const wheel = (answer: Answer): CallContext => ({ other: () => answer });
const coolant = (option: string, ...also: string[]) =>
  callOf({ kind: "choice", option, also }, itemOf("engine.coolant"));
const servo = (value: "yes" | "not-known") => callOf({ kind: "working", value }, itemOf("brakes.servo"));
const floodLine = (value: "present" | "absent" | "not-known") =>
  callOf({ kind: "presence", value }, itemOf("interior.flood-line"));
const rails = (denied: string[]) => callOf({ kind: "faults", found: [], denied }, itemOf("underbody.rails"));

describe("a condition that is needed", () => {
  const fast = { condition: "engine-speed", atLeast: 1500, atMost: 2500 };

  test.each([
    ["was noted as it is needed", { condition: "warm", is: true }, { warm: true }, false],
    ["was noted otherwise", { condition: "warm", is: true }, { warm: false }, true],
    [
      "was not noted, beside another that was",
      { condition: "warm", is: true },
      { "engine-speed": 900 },
      false,
    ],
    ["was not noted at all", { condition: "warm", is: true }, undefined, false],
    ["lies at the lower bound", fast, { "engine-speed": 1500 }, false],
    ["lies below it", fast, { "engine-speed": 1499 }, true],
    ["lies at the upper bound", fast, { "engine-speed": 2500 }, false],
    ["lies above it", fast, { "engine-speed": 2501 }, true],
    [
      "has a lower bound alone",
      { condition: "engine-speed", atLeast: 1500 },
      { "engine-speed": 9000 },
      false,
    ],
    ["has an upper bound alone", { condition: "engine-speed", atMost: 2500 }, { "engine-speed": 0 }, false],
    ["was noted in words where a figure is asked for", fast, { "engine-speed": "100 or so" }, false],
  ] satisfies [string, ConditionNeeded, Finding["conditions"], boolean][])(
    "%s",
    (_, needed, conditions, unmet) => {
      expect(isUnmet(needed, conditions)).toBe(unmet);
    },
  );
});

describe("the figure a limit asks for", () => {
  const rows = [
    { upTo: 16, value: 2 },
    { upTo: 18, value: 2.25 },
  ];
  const byWheel = limit({
    value: 3,
    byReading: { item: "interior.steering-wheel-diameter", unit: "in", rows },
  });

  test.each([
    ["up to and with the row's own figure", inches(16), 2],
    ["in the next row", inches(16.5), 2.25],
    ["past the last row", inches(20), 3],
    ["by the mean of several readings", millimeters(400, 420), 2.25],
    ["where what was read is no length", { kind: "reading", unit: "psi", values: [{ value: 17 }] }, 3],
    ["where it was not read", { kind: "not-seen", reason: "no-time" }, 3],
  ] satisfies [string, Answer, number][])("hangs on another reading: %s", (_, answer, wanted) => {
    expect(limitValue(byWheel, wheel(answer))).toBe(wanted);
  });

  test("speaks only where what it needs is fitted", () => {
    const fitted = limit({ needsFitted: "brakes.servo" });
    expect(limitValue(fitted, { other: () => ({ kind: "not-fitted" }) })).toBeUndefined();
    expect(limitValue(fitted, { other: () => ({ kind: "working", value: "yes" }) })).toBe(2);
    expect(limitValue(fitted, { other: () => undefined })).toBe(2);
    expect(limitValue(limit({}), { other: () => ({ kind: "not-fitted" }) })).toBe(2);
  });

  test("one condition that is not met is enough to be silent", () => {
    const when = [
      { condition: "warm", is: true },
      { condition: "engine-speed", atLeast: 1500 },
    ];
    const needed = limit({ when });
    expect(limitValue(needed, { conditions: { warm: true, "engine-speed": 700 } })).toBeUndefined();
    expect(limitValue(needed, { conditions: { warm: true, "engine-speed": 1800 } })).toBe(2);
  });
});

describe("several options at once", () => {
  test("are as bad as the worst, and good only where each is", () => {
    expect(coolant("low", "oily")).toBe("worth");
    expect(coolant("clean", "low")).toBe("small");
    expect(coolant("clean")).toBe("good");
    expect([coolant("clean", "not-known"), coolant("not-known", "clean")]).toEqual([
      "no-yardstick",
      "no-yardstick",
    ]);
    expect([coolant("oily", "low"), coolant("low", "clean"), coolant("low", "not-known")]).toEqual([
      "worth",
      "small",
      "small",
    ]);
  });
});

test("what an item calls good is good, what nobody knows has no yardstick", () => {
  expect([servo("yes"), servo("not-known")]).toEqual(["good", "no-yardstick"]);
  expect([floodLine("absent"), floodLine("present"), floodLine("not-known")]).toEqual([
    "good",
    "halt",
    "no-yardstick",
  ]);
});

test("faults denied are good, and none named and none denied says nothing", () => {
  expect([rails(["corrosion"]), rails([])]).toEqual(["good", "no-yardstick"]);
});
