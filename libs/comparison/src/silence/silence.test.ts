import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import type { Finding } from "@evenhand/shared/finding";
import { faults, frame, gauge, reading, readingItem, treadSpec } from "../../testing/small-items.ts";
import { finding } from "../../testing/small-reports.ts";
import { faultAtoms, isClaim, judgeSilence, limitsOfOne } from "./index.ts";

const said = (answer: Answer): Finding => finding("electrics.horn", answer);
const yes = said({ kind: "working", value: "yes" });
const unseen = said({ kind: "not-seen", reason: "weather" });
const notKnown = said({ kind: "choice", option: "not-known" });

const read = (more: Partial<Finding> = {}) => finding("wheels.tread-depth", reading("1/32in", 3, 3, 3), more);
describe("isClaim", () => {
  it.each<[boolean, Answer]>([
    [false, { kind: "not-seen", reason: "weather" }],
    [false, { kind: "working", value: "not-known" }],
    [false, { kind: "presence", value: "not-known" }],
    [false, { kind: "choice", option: "not-known" }],
    [true, { kind: "working", value: "no" }],
    [true, { kind: "presence", value: "absent" }],
    [true, { kind: "choice", option: "other-type" }],
    [true, { kind: "code", text: "not-known" }],
    [true, { kind: "faults", found: [], denied: "all" }],
  ])("%s: %o", (expected, answer) => {
    expect(isClaim(said(answer))).toBe(expected);
  });

  it("is none where nothing was said", () => {
    expect(isClaim(undefined)).toBe(false);
  });
});

describe("judgeSilence", () => {
  it("is unseen where the inspection has nothing to say, bad or not", () => {
    const expected = { outcome: "unseen", direction: "neither", standing: "unseen" };
    expect(judgeSilence(yes, unseen, "repair")).toEqual({ ...expected, reason: "not-seen-weather" });
    expect(judgeSilence(undefined, notKnown, "good")).toEqual({
      ...expected,
      reason: "not-known-nor-stated",
    });
    expect(judgeSilence(yes, undefined, "good")).toEqual({ ...expected, reason: "stated-not-inspected" });
    expect(judgeSilence(unseen, undefined, "good")).toEqual({ ...expected, reason: "not-reported" });
    expect(judgeSilence(undefined, undefined, "good")).toEqual({ ...expected, reason: "not-reported" });
  });
});

describe("what the statement left out", () => {
  it("is unstated where bad", () => {
    const expected = { outcome: "unstated", direction: "neither", standing: "not-mentioned" };
    expect(judgeSilence(undefined, yes, "repair")).toEqual({ ...expected, reason: "found-bad-not-stated" });
    expect(judgeSilence(unseen, yes, "repair")).toEqual({
      ...expected,
      reason: "found-bad-statement-unseen",
    });
  });

  it("counts in coverage alone where sound", () => {
    const expected = {
      outcome: "consistent",
      direction: "neither",
      standing: "not-mentioned",
      coverageOnly: true,
    };
    expect(judgeSilence(undefined, yes, "good")).toEqual({ ...expected, reason: "seen-sound-not-stated" });
    expect(judgeSilence(unseen, yes, "good")).toEqual({ ...expected, reason: "seen-sound-statement-unseen" });
  });
});

describe("faultAtoms", () => {
  const answer = faults([{ kind: "crack" }, { kind: "dent", spot: "2-2" }], ["corrosion"]);

  it("has every fault by its index on its side, in the sheet's order, then what is denied", () => {
    expect(faultAtoms(answer, "a", frame)).toEqual([
      { of: "fault", kind: "dent", spot: "2-2", a: 1 },
      { of: "fault", kind: "crack", a: 0 },
      { of: "denial", kind: "corrosion", by: "a" },
    ]);
    expect(faultAtoms(answer, "b", frame)).toMatchObject([{ b: 1 }, { b: 0 }, { by: "b" }]);
  });
});

describe("limitsOfOne", () => {
  const gauged = { instruments: new Map([["gauge", gauge]]) };
  const sides = { a: gauged, b: gauged };
  const contexts = { a: {}, b: {} };
  const probability = (a: Finding | undefined, b: Finding | undefined) =>
    limitsOfOne(a, b, readingItem(treadSpec()), sides, contexts)[0];

  it("judges with the instrument named, by eye without one", () => {
    const measured = probability(undefined, read({ instrument: "gauge" }))?.b;
    expect(measured).toMatchObject({ call: "meets" });
    expect(probability(undefined, read())?.b).toMatchObject({ plain: "pass", call: "marginal" });
    expect(probability(read({ instrument: "gauge" }), undefined)).toMatchObject({ a: measured, b: null });
  });

  it("counts the instrument's accuracy, which nothing cancels against a limit", () => {
    const coarse = new Map([
      ["gauge", { ...gauge, accuracy: { absolute: { value: 3, unit: "1/32in" as const }, share: 0 } }],
    ]);
    const both = { a: { instruments: coarse }, b: { instruments: coarse } };
    const item = readingItem(treadSpec());
    const [limit] = limitsOfOne(undefined, read({ instrument: "gauge" }), item, both, contexts);
    expect(limit?.b?.call).toBe("marginal");
  });

  it("has nothing to say without limits or readings", () => {
    expect(limitsOfOne(undefined, read(), readingItem(treadSpec({ limits: [] })), sides, contexts)).toEqual(
      [],
    );
    expect(probability(undefined, unseen)).toMatchObject({ a: null, b: null });
  });
});
