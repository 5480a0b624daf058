import { describe, expect, test } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Item } from "@evenhand/shared/sheet";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { sheetVersion1 } from "../sheet-version-1/index.ts";
import { callOf, limitsAt } from "./index.ts";
import type { CallContext } from "./index.ts";

const itemOf = (id: string): Item => {
  const item = sheetVersion1.items.find((each) => each.id === id);
  if (item === undefined) throw new Error(`the sheet has no ${id}`);
  return item;
};
const read = (unit: UnitSymbol, ...values: number[]): Answer => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const calls = (id: string, answers: readonly Answer[], context: CallContext = {}) =>
  answers.map((answer) => callOf(answer, itemOf(id), context));
const callsOf = (id: string, unit: UnitSymbol, values: readonly number[], context: CallContext = {}) =>
  calls(
    id,
    values.map((value) => read(unit, value)),
    context,
  );

const bald = (position: string) => callsOf("wheels.tread-depth", "1/32in", [1], { position });
const outside = (temperature: number): CallContext => ({
  conditions: { "outside-temperature": temperature },
});
const oilAt = (temperature: number): CallContext => ({ conditions: { "oil-temperature": temperature } });
const turning = (speed: number, systemVolts: 6 | 12 = 12): CallContext => ({
  conditions: { "engine-speed": speed },
  form: { systemVolts },
});
const offFor = (hours: number): CallContext => ({
  conditions: { "charger-off": hours },
  form: { systemVolts: 12 },
});
const tiresCold = (is: boolean): CallContext => ({ conditions: { "tire-cold": is } });
const drum = (cast: Answer | undefined): CallContext => ({
  position: "left-rear",
  other: (item, at) => (item === "brakes.drum-cast-figure" && at === "left-rear" ? cast : undefined),
});
const fluid = (answer: Answer | undefined): CallContext => ({
  other: (item) => (item === "brakes.fluid-kind" ? answer : undefined),
});
const ofKind = (option: string) => fluid({ kind: "choice", option });
const boils = (context: CallContext) =>
  callsOf("brakes.fluid-boiling-point", "degC", [119, 139, 150, 170, 190], context);
const twin = (unit: UnitSymbol, value: number, position?: string): CallContext => ({
  ...(position === undefined ? {} : { position }),
  other: (item, at) => (item === "underbody.wheelbase" && at === "right" ? read(unit, value) : undefined),
});
const rim = (diameter: number): CallContext => ({
  other: (item) => (item === "interior.steering-wheel-diameter" ? read("in", diameter) : undefined),
});
const pedal = (answer: Answer): CallContext => ({
  other: (item) => (item === "brakes.master-cylinder" ? answer : undefined),
});

describe("a limit", () => {
  test("is passed by what just reaches it, in whatever unit it was read", () => {
    expect(callsOf("wheels.tread-depth", "1/32in", [1.9, 2, 2.1])).toEqual(["danger", "good", "good"]);
    expect(callsOf("wheels.tread-depth", "mm", [1.58, 1.5875])).toEqual(["danger", "good"]);
  });

  test("is not passed where one of several spots does not reach it", () => {
    expect(calls("wheels.tread-depth", [read("1/32in", 6, 1, 6), read("1/32in", 6, 6, 1)])).toEqual([
      "danger",
      "danger",
    ]);
  });

  test("is graver on the road than on the spare", () => {
    expect([bald("left-front"), bald("spare")]).toEqual([["danger"], ["small"]]);
    const { reading } = itemOf("wheels.tread-depth");
    expect(reading && limitsAt(reading, "spare").map(({ severity }) => severity)).toEqual(["small"]);
  });

  test("and an alarm stand together: the graver of those it is past counts", () => {
    expect(callsOf("brakes.lining-thickness", "in", [0.1, 0.09, 0.03])).toEqual(["good", "repair", "danger"]);
  });

  test("says nothing to a figure of another kind", () => {
    expect(callsOf("wheels.tread-depth", "psi", [1])).toEqual(["no-yardstick"]);
  });
});

describe("between good and alarming nobody can judge", () => {
  test("a gap too narrow, narrow, even, wide and too wide", () => {
    expect(callsOf("gaps.width-top", "mm", [1.9, 2.2, 2.5, 7, 7.5, 8.1])).toEqual([
      "worth",
      "no-yardstick",
      "good",
      "good",
      "no-yardstick",
      "worth",
    ]);
  });

  test("air from the vent, and on a day too hot to judge it nothing", () => {
    expect(callsOf("electrics.vent-temperature", "degC", [10, 12, 14, 16], outside(30))).toEqual([
      "good",
      "no-yardstick",
      "no-yardstick",
      "repair",
    ]);
    expect(callsOf("electrics.vent-temperature", "degC", [9, 16], outside(35))).toEqual(["good", "repair"]);
    expect(callsOf("electrics.vent-temperature", "degC", [9, 16], outside(36))).toEqual([
      "no-yardstick",
      "no-yardstick",
    ]);
  });

  test("a low charging voltage at idle says nothing, a high one does", () => {
    expect(callsOf("electrics.volts-charging", "V", [13, 14.1, 15], turning(1500))).toEqual([
      "repair",
      "good",
      "repair",
    ]);
    expect(callsOf("electrics.volts-charging", "V", [13, 15], turning(1200))).toEqual(["repair", "repair"]);
    expect(callsOf("electrics.volts-charging", "V", [13, 14.1, 15], turning(700))).toEqual([
      "no-yardstick",
      "no-yardstick",
      "repair",
    ]);
    expect(callsOf("electrics.volts-charging", "V", [6.8, 7.2, 7.5], turning(1500, 6))).toEqual([
      "repair",
      "good",
      "repair",
    ]);
  });

  test("oil pressure counts as good only where the oil was hot", () => {
    expect(callsOf("engine.oil-pressure-idle", "psi", [7, 9, 20], oilAt(80))).toEqual([
      "worth",
      "no-yardstick",
      "good",
    ]);
    expect(callsOf("engine.oil-pressure-idle", "psi", [7, 20], oilAt(40))).toEqual(["worth", "no-yardstick"]);
  });
});

describe("what has to be so before a figure says anything", () => {
  test("a battery off its charger for two hours", () => {
    expect(callsOf("electrics.volts-rest", "V", [11.8, 12.1, 12.6], offFor(2))).toEqual([
      "repair",
      "small",
      "good",
    ]);
    expect(callsOf("electrics.volts-rest", "V", [11.8, 12.6], offFor(1))).toEqual([
      "no-yardstick",
      "no-yardstick",
    ]);
  });

  test("cold tires; what nobody noted speaks against nothing", () => {
    expect(callsOf("wheels.pressure", "psi", [15, 30], tiresCold(true))).toEqual(["danger", "good"]);
    expect(callsOf("wheels.pressure", "psi", [15, 30], tiresCold(false))).toEqual([
      "no-yardstick",
      "no-yardstick",
    ]);
    expect(callsOf("wheels.pressure", "psi", [15])).toEqual(["danger"]);
  });
});

describe("a figure that another answer decides", () => {
  test("a drum is worn past what is cast in it, in whatever unit either was read", () => {
    const cast = drum(read("in", 9.06));
    expect(callsOf("brakes.drum-diameter", "in", [9.05, 9.06, 9.07], cast)).toEqual([
      "good",
      "good",
      "danger",
    ]);
    expect(callsOf("brakes.drum-diameter", "mm", [230, 231], cast)).toEqual(["good", "danger"]);
    expect(callsOf("brakes.drum-diameter", "in", [9.5], drum(undefined))).toEqual(["no-yardstick"]);
    expect(
      callsOf("brakes.drum-diameter", "in", [9.5], drum({ kind: "not-seen", reason: "no-tool" })),
    ).toEqual(["no-yardstick"]);
  });

  test("brake fluid by what it is, and by the mildest where nobody knows", () => {
    expect(boils(ofKind("dot-3"))).toEqual(["danger", "repair", "no-yardstick", "good", "good"]);
    expect(boils(ofKind("dot-4"))).toEqual(["danger", "repair", "repair", "good", "good"]);
    expect(boils(ofKind("dot-5-1"))).toEqual(["danger", "repair", "repair", "repair", "good"]);
    for (const unknown of [fluid(undefined), ofKind("not-known"), fluid({ kind: "not-fitted" })])
      expect(boils(unknown)).toEqual(["danger", "repair", "no-yardstick", "good", "good"]);
  });

  test("free play by the rim, and by the smallest where nobody measured it", () => {
    expect(callsOf("steering.free-play", "in", [2, 2.3, 2.6], rim(20))).toEqual(["good", "good", "danger"]);
    expect(callsOf("steering.free-play", "in", [2, 2.3])).toEqual(["good", "danger"]);
  });

  test("a pedal's reserve says nothing where no hydraulics push back", () => {
    expect(callsOf("brakes.pedal-reserve", "%", [10], pedal({ kind: "choice", option: "none" }))).toEqual([
      "danger",
    ]);
    expect(callsOf("brakes.pedal-reserve", "%", [10], pedal({ kind: "not-fitted" }))).toEqual([
      "no-yardstick",
    ]);
  });

  test("a reading that has a twin on the other side is judged by it at its own place alone", () => {
    const beside = callsOf(
      "underbody.wheelbase",
      "mm",
      [2750, 2753, 2755, 2765, 2766],
      twin("mm", 2750, "left"),
    );
    expect(beside).toEqual(["good", "good", "no-yardstick", "no-yardstick", "worth"]);
    expect(callsOf("underbody.wheelbase", "mm", [2750], twin("in", 108.27, "left"))).toEqual(["good"]);
    expect(callsOf("underbody.wheelbase", "mm", [2750], twin("psi", 2750, "left"))).toEqual(["no-yardstick"]);
    expect(callsOf("underbody.wheelbase", "mm", [2750], twin("mm", 2750))).toEqual(["no-yardstick"]);
  });

  test("and readings of both sides are compared by their means", () => {
    const other: CallContext = { position: "left", other: () => read("mm", 2740, 2760) };
    expect(calls("underbody.wheelbase", [read("mm", 2750), read("mm", 2770, 2772)], other)).toEqual([
      "good",
      "worth",
    ]);
  });
});
