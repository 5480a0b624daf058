import { expect, it } from "vitest";
import type { Finding } from "@evenhand/shared/finding";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compareByPlace } from "../compare/index.ts";
import { lookOver } from "../coverage/index.ts";
import { softnessCounter } from "./index.ts";

const counted = (findings: Finding[]) => {
  const [a, b] = [statement(findings), inspection([])];
  const lines = compareByPlace(a, b, sheet);
  const counter = softnessCounter(a, b);
  lookOver(lines, lines.entries, a, b, counter.count);
  return counter.softness(lines.entries);
};
const softness = (findings: Finding[]) => {
  const { sides: _, betweenDays: __, ...old } = counted(findings);
  return old;
};
const stopLamp = (more: Partial<Finding> = {}, value: "yes" | "not-known" = "yes") =>
  finding("electrics.lamps", { kind: "working", value }, { position: "left-stop", ...more });
const play = (more: Partial<Finding> = {}) =>
  finding("steering.free-play", { kind: "reading", unit: "in", values: [{ value: 1 }] }, more);
const miles = (more: Partial<Finding> = {}) =>
  finding("identity.odometer", { kind: "reading", unit: "mi", values: [{ value: 48_210 }] }, more);
const none = softness([]);

it("counts decisive places alone, all of them silent in an empty statement", () => {
  expect(none.silent).toBe(none.decisive);
  expect(
    softness([finding("electrics.radio", { kind: "working", value: "yes" }, { firmness: "hedged" })]),
  ).toEqual(none);
});

it("counts what is hedged or at second hand", () => {
  expect(softness([stopLamp({ firmness: "hedged" })])).toEqual({
    ...none,
    hedged: 1,
    silent: none.silent - 1,
  });
  expect(softness([stopLamp({ firmness: "second-hand" })]).hedged).toBe(1);
  expect(softness([stopLamp()]).hedged).toBe(0);
});

it("asks for no instrument where the car itself is read, and for its accuracy where one is named", () => {
  expect(softness([miles()]).byEye).toBe(0);
  expect(counted([miles()]).sides?.a.readings).toBe(0);
  expect(counted([miles({ instrument: "gauge" })]).sides?.a.readings).toBe(1);
});

it("counts readings by eye", () => {
  expect(softness([play()])).toMatchObject({ byEye: 1, hedged: 0 });
  expect(softness([play({ instrument: "rule" })]).byEye).toBe(0);
  expect(softness([stopLamp()]).byEye).toBe(0);
});

it("takes not seen and not known for silence", () => {
  expect(softness([stopLamp({ firmness: "hedged" }, "not-known")])).toEqual(none);
  expect(
    softness([
      finding("electrics.lamps", { kind: "not-seen", reason: "no-time" }, { position: "left-stop" }),
    ]),
  ).toEqual(none);
});
