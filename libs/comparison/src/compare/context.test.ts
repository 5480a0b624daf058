import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Entry } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { finding, inspection, sheet, statement } from "../../testing/small-reports.ts";
import { compare } from "./index.ts";

const read = (unit: UnitSymbol, ...values: number[]): Answer => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const gauged = (item: string, position: string, answer: Answer, more: Partial<Finding> = {}): Finding =>
  finding(item, answer, { position, instrument: "gauge", ...more });

const instruments = [{ id: "gauge", name: "gauge" }];
const lineOf = (item: string, a: Finding[], b: Finding[]): Entry | undefined =>
  compare(statement(a, { instruments }), inspection(b, { instruments }), sheet).entries.find(
    (entry) => entry.item === item && (entry.finding.a !== null || entry.finding.b !== null),
  );
const callsOf = (...of: Parameters<typeof lineOf>): Entry["calls"] | undefined => lineOf(...of)?.calls;

const BOILS = "brakes.fluid-boiling-point";
const boilsAt = (celsius: number) => gauged(BOILS, "", read("degC", celsius, celsius));
const fluid = (option: string) => finding("brakes.fluid-kind", { kind: "choice", option });
const DRUM = "brakes.drum-diameter";
const drum = (millimeters: number) => gauged(DRUM, "left-front", read("mm", millimeters, millimeters));
const cast = (millimeters: number, corner: string) =>
  gauged("brakes.drum-cast-figure", corner, read("mm", millimeters));
const PATH = "engine.leak-down-path";
const path = finding(PATH, { kind: "choice", option: "crankcase" }, { position: "cylinder-1" });
const leak = (percent: number, cylinder: string, more: Partial<Finding> = {}) =>
  gauged("engine.leak-down", cylinder, read("%", percent, percent), more);

describe("a call that hangs on another answer", () => {
  it("hangs on what its own report says, and never the other's", () => {
    const unjudged = { a: "no-yardstick", b: "no-yardstick" };
    expect(callsOf(BOILS, [boilsAt(150)], [boilsAt(150)])).toEqual(unjudged);
    expect(callsOf(BOILS, [boilsAt(150), fluid("dot-4")], [boilsAt(150)])).toEqual({
      ...unjudged,
      a: "repair",
    });
    expect(callsOf(BOILS, [boilsAt(150)], [fluid("dot-4"), boilsAt(150)])).toEqual({
      ...unjudged,
      b: "repair",
    });
  });

  it("hangs on the answer at its own place, where the other item has places", () => {
    expect(callsOf(DRUM, [], [drum(256), cast(255, "left-front")])?.b).toBe("danger");
    expect(callsOf(DRUM, [], [drum(256), cast(257, "left-front")])?.b).toBe("good");
    expect(callsOf(DRUM, [], [drum(256), cast(255, "right-front")])?.b).toBe("no-yardstick");
    expect(callsOf(DRUM, [], [drum(256)])?.b).toBe("no-yardstick");
  });

  it("follows what that answer is called: air past the rings is as bad as it is much", () => {
    expect(callsOf(PATH, [], [path, leak(25, "cylinder-1")])?.b).toBe("worth");
    expect(callsOf(PATH, [], [path, leak(5, "cylinder-1")])?.b).toBe("no-yardstick");
    expect(callsOf(PATH, [], [path, leak(25, "cylinder-2")])?.b).toBe("no-yardstick");
    expect(callsOf(PATH, [], [path])?.b).toBe("no-yardstick");
    expect(callsOf(PATH, [path, leak(25, "cylinder-1")], [path])).toEqual({ a: "worth", b: "no-yardstick" });
  });

  it("follows it under the conditions that were noted there", () => {
    const weak = { conditions: { "test-pressure": 30 } };
    expect(callsOf(PATH, [], [path, leak(25, "cylinder-1", weak)])?.b).toBe("no-yardstick");
  });
});

const SQUEEZE = "engine.compression";
const squeeze = (value: number, warm: boolean) =>
  gauged(SQUEEZE, "cylinder-1", read("psi", value, value), { conditions: { warm } });

describe("conditions noted beside an answer", () => {
  it("decide whether its yardstick can judge it, on each side by itself", () => {
    expect(callsOf(SQUEEZE, [squeeze(20, true)], [squeeze(20, false)])).toEqual({
      a: "worth",
      b: "no-yardstick",
    });
    expect(callsOf(SQUEEZE, [squeeze(20, false)], [squeeze(20, true)])).toEqual({
      a: "no-yardstick",
      b: "worth",
    });
    expect(lineOf(SQUEEZE, [squeeze(20, true)], [squeeze(150, false)])).toMatchObject({
      outcome: "incomparable",
      severity: "worth",
    });
  });
});

const HORN = "electrics.horn";
const fitted = finding(HORN, { kind: "working", value: "yes" });
const notFitted = finding(HORN, { kind: "not-fitted" });
const notKnown = finding(HORN, { kind: "working", value: "not-known" });

describe("what a car has and has not", () => {
  it("differs where one side says there is none, and agrees where both do", () => {
    expect(lineOf(HORN, [notFitted], [fitted])).toMatchObject({ outcome: "differ", reason: "fitted-found" });
    expect(lineOf(HORN, [notFitted], [notFitted])).toMatchObject({
      outcome: "agree",
      reason: "not-fitted-by-both",
      marks: ["not-fitted"],
    });
  });

  it("was not stated where the statement does not know it", () => {
    const broken = finding(HORN, { kind: "working", value: "no" });
    expect(lineOf(HORN, [notKnown], [broken])).toMatchObject({
      outcome: "unstated",
      calls: { a: "no-yardstick", b: "repair" },
    });
    expect(lineOf(HORN, [notKnown], [fitted])).toMatchObject({ outcome: "consistent", coverageOnly: true });
  });
});

const dented = (position: string) =>
  finding(
    "body.faults",
    { kind: "faults", found: [{ kind: "dent", extent: { value: 60, unit: "mm" } }], denied: "all" },
    { position },
  );
const sound = (position: string) =>
  finding("body.faults", { kind: "faults", found: [], denied: "all" }, { position });

describe("a fault on the other side of the car", () => {
  it("is perhaps the one that was stated, left and right exchanged", () => {
    const { entries } = compare(
      statement([dented("left-front-door"), sound("right-front-door")]),
      inspection([sound("left-front-door"), dented("right-front-door")]),
      sheet,
    );
    const lines = entries.filter(({ marks }) => marks.includes("perhaps-other-side"));
    expect(lines).toMatchObject([
      { position: "left-front-door", outcome: "consistent", atom: { of: "fault", a: 0 } },
      { position: "right-front-door", outcome: "doubtful", atom: { of: "fault", b: 0 } },
    ]);
  });
});
