import type { Finding } from "@evenhand/shared/finding";
import type { CautionsRead } from "@evenhand/shared/report";
import { sheetVersion1 } from "@evenhand/sheet/sheet-version-1";
import { expect, test } from "vitest";
import { sheetIndex } from "../../../entities/sheet/sheet-index.ts";
import { scopeOf, walkOf, type Findings } from "../walk.ts";
import { walkSearchAfter, walkView, type WalkMove } from "./walk-view.ts";

const walk = walkOf(
  sheetIndex(sheetVersion1),
  {
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
  },
  scopeOf("first-look", null),
);
const none: Findings = new Map();
const finding: Finding = {
  item: "a",
  position: "",
  answer: { kind: "working", value: "yes" },
  firmness: "asserted",
  basis: "seen",
};
const road = walk.find(({ stage }) => stage === "road");
const time = "2031-04-05T10:00:00Z";
const read: readonly CautionsRead[] = [{ stage: "road", time }];
const after = (move: WalkMove, cautionsRead: readonly CautionsRead[] = [], findings = none) => {
  const view = walkView(walk, "road", findings, cautionsRead);
  if (view === undefined) throw new Error("nothing is walked");
  return walkSearchAfter(view, findings, cautionsRead, move);
};

test("the stage named is shown, else the first; where nothing is walked nothing is", () => {
  expect(walkView(walk, "road", none, [])).toMatchObject({ stage: { stage: "road" }, read: undefined });
  expect(walkView(walk, "road", none, read)?.read).toBe(time);
  expect(walkView(walk, undefined, none, [])).toMatchObject({ number: 1, stage: { stage: walk[0]?.stage } });
  expect(walkView(walk, walk.at(-1)?.stage, none, [])?.following).toBeUndefined();
  expect(walkView([], "road", none, [])).toBeUndefined();
});

test("a stage without cautions has nothing to be read first", () => {
  const free = walk.find(({ cautions }) => cautions.length === 0);
  expect(walkView(walk, free?.stage, none, [])?.read).toBe(free === undefined ? undefined : "");
});

test("what is answered is counted for each stage and in all", () => {
  const key = road?.lines[0]?.key ?? "";
  const view = walkView(walk, "road", new Map([[key, { finding }]]), []);
  expect(view?.parts.get("road")?.done).toBe(1);
  expect(view?.whole.done).toBe(1);
  expect(view?.whole.all).toBe(walk.reduce((sum, { lines }) => sum + lines.length, 0));
});

test("a stage opens at its first open line, and not behind a gate whose cautions were not read", () => {
  const [first, second] = road?.lines ?? [];
  expect(after({ type: "stage", stage: "road" })).toEqual({ stage: "road", open: undefined });
  expect(after({ type: "stage", stage: "road" }, read)).toEqual({
    stage: "road",
    open: first?.key,
  });
  const one: Findings = new Map([[first?.key ?? "", { finding }]]);
  expect(after({ type: "begin" }, [], one)).toEqual({ stage: "road", open: second?.key });
});

test("a line is gone to in its own stage", () => {
  const key = walk[0]?.lines[0]?.key;
  expect(after({ type: "line", place: key })).toEqual({ stage: walk[0]?.stage, open: key });
});

test("another extent closes what is open, and the sections are gone to without a stage", () => {
  expect(after({ type: "extent", extent: "day" })).toEqual({ extent: "day", open: undefined });
  expect(after({ type: "sections" })).toEqual({ view: "sections", stage: undefined, open: undefined });
});
