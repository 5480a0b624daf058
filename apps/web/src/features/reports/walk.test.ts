import type { Answer } from "@evenhand/shared/answer";
import { Finding } from "@evenhand/shared/finding";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { describe, expect, test } from "vitest";
import { sheetIndex } from "../../entities/sheet/sheet-index.ts";
import {
  likePlace,
  likeStop,
  mayBeSaidAgain,
  nextOpen,
  progressOf,
  scopeOf,
  together,
  walkOf,
  workingTogether,
  type Findings,
  type WalkStage,
} from "./walk.ts";

const index = sheetIndex(sheetVersion1);
const form = {
  body: "coupe",
  doors: 2,
  cylinders: 8,
  construction: "unit-body",
  gearbox: "manual",
  driven: "rear",
  fuelSystem: "carburetor",
  systemVolts: 12,
  brakes: { front: "disc", rear: "drum" },
  leftHandDrive: true,
  frontPivots: "ball-joints",
} as const;
const walk = walkOf(index, form, scopeOf("first-look", null));
const stage = (id: string): WalkStage => {
  const found = walk.find((one) => one.stage === id);
  if (found === undefined) throw new Error(`no stage ${id}`);
  return found;
};
const answered = (...said: (readonly [key: string, answer: Answer])[]): Findings =>
  new Map(
    said.map(([key, answer]) => {
      const [item = "", position = ""] = key.split("@");
      return [key, { finding: Finding.parse({ item, position, answer }) }];
    }),
  );
const works = { kind: "working", value: "yes" } as const;
const line = (of: WalkStage, key: string) => {
  const found = of.lines.find((one) => one.key === key);
  if (found === undefined) throw new Error(`no line ${key}`);
  return found;
};

const size = (text: string) => ({ kind: "code", text }) as const;

describe("what may be said again of another place", () => {
  test("is what was looked at, and never a measurement nor a fault that was found", () => {
    const said: readonly (readonly [Answer, boolean])[] = [
      [works, true],
      [{ kind: "code", text: "P205/70R14" }, true],
      [{ kind: "not-seen", reason: "covered" }, true],
      [{ kind: "faults", found: [], denied: "all" }, true],
      [{ kind: "faults", found: [{ kind: "crack" }], denied: [] }, false],
      [{ kind: "reading", unit: "1/32in", values: [{ value: 7 }] }, false],
    ];
    expect(said.map(([answer]) => mayBeSaidAgain(answer))).toEqual(said.map(([, may]) => may));
  });

  test("comes from across the car, else from the place before", () => {
    const daylight = stage("daylight");
    const rear = line(daylight, "wheels.tire-size@right-rear");
    const both = answered(
      ["wheels.tire-size@left-front", size("G70-14")],
      ["wheels.tire-size@left-rear", size("H70-14")],
    );
    expect(likePlace(rear, daylight.lines, both)?.position).toBe("left-rear");
    const one = answered(["wheels.tire-size@left-front", size("G70-14")]);
    expect(likePlace(rear, daylight.lines, one)?.position).toBe("left-front");
    expect(likePlace(rear, daylight.lines, answered())).toBeUndefined();
  });
});

test("a corner takes over what was looked at across the car, in one press, and never a measured depth", () => {
  const daylight = stage("daylight");
  const corner = daylight.stops.find(({ id }) => id === "right-quarter")?.lines ?? [];
  const said = answered(
    ["wheels.tire-size@left-rear", { kind: "code", text: "G70-14" }],
    ["wheels.tire-faults@left-rear", { kind: "faults", found: [], denied: "all" }],
    ["wheels.tread-depth@left-rear", { kind: "reading", unit: "1/32in", values: [{ value: 7 }] }],
  );
  const like = likeStop(corner, daylight.lines, said);
  expect(like?.of).toBe("left rear");
  expect(like?.said.map(({ place }) => place.key)).toEqual([
    "wheels.tire-size@right-rear",
    "wheels.tire-faults@right-rear",
  ]);
  expect(likeStop(corner, daylight.lines, answered())).toBeUndefined();
});

test("what works together is what is open and of that kind, and more than one", () => {
  const cabin = stage("daylight").stops.find(({ id }) => id === "cabin");
  const lamps = cabin?.lines.filter(({ item }) => item.answer === "working") ?? [];
  expect(lamps.map(({ item }) => item.id)).toEqual(Array<string>(6).fill("electrics.lamps"));
  const [first, ...rest] = lamps.map(({ key }) => key);
  const after = workingTogether(lamps, answered([first ?? "", works]));
  expect(after.map(({ key }) => key)).toEqual(rest);
  expect(workingTogether(lamps.slice(0, 1), answered())).toEqual([]);
});

describe("the progress of a stage", () => {
  test("counts an item's minutes by its open lines, and raising the car until something was seen under it", () => {
    const lift = stage("lift");
    const before = progressOf(lift, answered());
    expect(before).toMatchObject({ done: 0, all: lift.lines.length });
    expect(before.minutesLeft).toBeCloseTo(30, 9);
    const hoses = lift.lines.filter(({ item }) => item.id === "brakes.hoses");
    const none: Answer = { kind: "faults", found: [], denied: "all" };
    const half = progressOf(
      lift,
      answered(...hoses.slice(0, hoses.length / 2).map(({ key }) => [key, none] as const)),
    );
    expect(half.minutesLeft).toBeCloseTo(30 - 5 - 0.5, 9);
  });

  test("ends at no minutes, and only when all is answered", () => {
    const road = stage("road");
    const all = answered(
      ...road.lines.map(({ key }) => [key, { kind: "not-seen", reason: "unsafe" }] as const),
    );
    expect(progressOf(road, all)).toEqual({
      done: road.lines.length,
      all: road.lines.length,
      minutesLeft: 0,
    });
  });
});

test("the next line is the next open one, and what was passed over comes round again", () => {
  const { lines } = stage("hot");
  const [a, b, c] = lines.map(({ key }) => key);
  expect(nextOpen(lines, answered(), a)?.key).toBe(b);
  expect(nextOpen(lines, answered([b ?? "", works]), a)?.key).toBe(c);
  expect(nextOpen(lines, answered([c ?? "", works]), c)?.key).toBe(a);
  expect(nextOpen(lines, answered([a ?? "", works], [b ?? "", works]), c)).toBeUndefined();
});

test("while the gate to the road is shut nothing of the road is offered as working, with one press or as elsewhere", () => {
  const road = stage("road");
  const stops = road.stops.filter(({ lines }) => workingTogether(lines, answered()).length > 1);
  expect(stops.length).toBeGreaterThan(0);
  for (const { lines } of stops) {
    expect(together(lines, road.lines, answered(), true).working.length).toBeGreaterThan(1);
    expect(together(lines, road.lines, answered(), false)).toEqual({ like: undefined, working: [] });
  }
});
