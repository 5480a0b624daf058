import type { Answer } from "@evenhand/shared/answer";
import type { GradeScale } from "@evenhand/shared/report";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { describe, expect, it } from "vitest";
import { sheetVersion1 as sheet } from "../sheet-version-1/index.ts";
import { isBad } from "./index.ts";

const itemOf = (id: string) => {
  const found = sheet.items.find((item) => item.id === id);
  if (found === undefined) throw new Error(`no item ${id}`);
  return found;
};
const reading = (unit: UnitSymbol, ...values: number[]): Answer => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});
const grade = (value: string | number, scale = "house"): Answer => ({ kind: "grade", scale, value });
const working = (value: "yes" | "no" | "intermittent" | "not-known"): Answer => ({ kind: "working", value });
const presence = (value: "present" | "absent" | "not-known"): Answer => ({ kind: "presence", value });
const choice = (option: string): Answer => ({ kind: "choice", option });

const percent: GradeScale = {
  id: "percent",
  name: "%",
  step: 10,
  grades: [
    { id: "0", name: "0" },
    { id: "100", name: "100" },
  ],
};

describe("isBad", () => {
  it.each<[string, Answer, boolean]>([
    ["wheels.tread-depth", reading("1/32in", 2, 2, 2), false],
    ["wheels.tread-depth", reading("1/32in", 6, 6, 1.9), true],
    ["wheels.tread-depth", reading("mm", 1.5875), false],
    ["wheels.tread-depth", reading("mm", 1.58), true],
    ["wheels.tread-depth", reading("in", 0.0625), false],
    ["wheels.tread-depth", reading("psi", 1), false],
    ["wheels.runout-lateral", reading("in", 0.125), false],
    ["wheels.runout-lateral", reading("in", 0.126), true],
    ["wheels.runout-lateral", reading("mm", 3.175), false],
    ["wheels.rollout", reading("mm", 1200), false],
    ["interior.headliner", grade("as-new"), false],
    ["interior.headliner", grade("even-wear"), false],
    ["interior.headliner", grade("heavy-wear"), true],
    ["interior.headliner", grade("spent"), true],
    ["interior.headliner", grade(30, "percent"), true],
    ["interior.headliner", grade(50, "percent"), false],
    ["interior.headliner", grade("unheard-of"), false],
    ["electrics.horn", working("yes"), false],
    ["electrics.horn", working("no"), true],
    ["electrics.horn", working("intermittent"), true],
    ["electrics.horn", working("not-known"), false],
    ["trunk.spare", presence("present"), false],
    ["trunk.spare", presence("absent"), true],
    ["trunk.spare", presence("not-known"), false],
    ["engine.combustion-gas", presence("present"), true],
    ["engine.combustion-gas", presence("absent"), false],
    ["engine.combustion-gas", presence("not-known"), false],
    ["brakes.pedal-sink", choice("holds"), false],
    ["brakes.pedal-sink", choice("slow"), true],
    ["brakes.pedal-sink", choice("not-known"), false],
    ["brakes.pedal-sink", choice("unheard-of"), false],
    ["body.faults", { kind: "faults", found: [{ kind: "ding" }], denied: [] }, true],
    ["body.faults", { kind: "faults", found: [], denied: "all" }, false],
    ["body.faults", { kind: "faults", found: [], denied: ["filler"] }, false],
    ["identity.vin", { kind: "code", text: "A7K214883" }, false],
    [
      "body.color",
      { kind: "color", geometry: "45/0", metallic: false, values: [{ L: 50, a: 0, b: 0 }] },
      false,
    ],
    ["electrics.horn", { kind: "not-seen", reason: "not-tested" }, false],
    ["wheels.tread-depth", { kind: "not-seen", reason: "covered" }, false],
  ])("%s answered %j: %s", (id, answer, bad) => {
    expect(isBad(answer, itemOf(id), [percent])).toBe(bad);
  });

  it.each<[string, Answer]>([
    ["electrics.horn", reading("1/32in", 0)],
    ["electrics.horn", grade("spent")],
    ["wheels.tread-depth", working("no")],
    ["wheels.tread-depth", presence("absent")],
    ["wheels.tread-depth", choice("slow")],
    ["wheels.tread-depth", { kind: "faults", found: [{ kind: "cut" }], denied: [] }],
  ])("%s says nothing bad by an answer of another kind: %j", (id, answer) => {
    expect(isBad(answer, itemOf(id))).toBe(false);
  });

  it("calls neither presence nor absence bad where the item says so", () => {
    const item = {
      ...itemOf("trunk.spare"),
      presence: { goodIs: "neither" as const, severity: "small" as const },
    };
    expect(isBad(presence("present"), item)).toBe(false);
    expect(isBad(presence("absent"), item)).toBe(false);
  });

  it("knows no grade on a scale the report does not give", () => {
    expect(isBad(grade(10, "percent"), itemOf("interior.headliner"))).toBe(false);
  });
});
