import { describe, expect, it } from "vitest";
import { figuresOf as figures, gauge, reading, readingItem, treadSpec } from "../../testing/small-items.ts";
import { compareReading } from "./index.ts";
import type { ReadingPair } from "./index.ts";

/** Two treads read with one kind of gauge, δ 2/32 in, at least 2/32 in asked for. */
const compare = (a: number[], b: number[], more: Partial<ReadingPair> = {}) =>
  compareReading({
    a: reading("1/32in", ...a),
    b: reading("1/32in", ...b),
    item: readingItem(more.spec ?? treadSpec()),
    spec: treadSpec(),
    contextA: {},
    contextB: {},
    instrumentA: gauge,
    instrumentB: gauge,
    shared: false,
    drifts: false,
    useAllowed: () => 0,
    times: () => ({ differentDays: false, later: null }),
    ...more,
  });
const byEye = { instrumentA: undefined, instrumentB: undefined };
const noLimit = treadSpec({ limits: [] });
const otherDays: Pick<ReadingPair, "drifts" | "times"> = {
  drifts: true,
  times: () => ({ differentDays: true, later: "b" }),
};

describe("what is marked beside a reading", () => {
  it("too coarse, where it contradicts nothing and could not have confirmed anything either", () => {
    expect(compare([8, 8, 8], [8, 8, 8], byEye)).toMatchObject({
      outcome: "consistent",
      marks: ["too-coarse"],
    });
    expect(compare([8, 8, 8], [8, 8, 8])).toMatchObject({ outcome: "agree", marks: [] });
    const fine = treadSpec({ delta: { absolute: 1, share: 0 } });
    expect(compare([8], [8.7], { spec: fine })).toMatchObject({ outcome: "consistent", marks: [] });
    expect(compare([18, 18, 18], [8, 8, 8], byEye).marks).not.toContain("too-coarse");
  });

  it("over the limit, where what was found is; both bad, where both are", () => {
    expect(compare([8, 8, 8], [1, 1, 1]).marks).toEqual(["over-limit"]);
    expect(compare([1, 1, 1], [1, 1, 1]).marks).toEqual(["both-bad", "over-limit"]);
    expect(compare([1, 1, 1], [8, 8, 8]).marks).toEqual([]);
    expect(compare([1, 1, 1], [1, 1, 1], { spec: noLimit }).marks).toEqual([]);
  });
});

describe("a limit that one side passes and the other fails", () => {
  it("is a difference where both are sure of it, however little lies between", () => {
    const close = treadSpec({ delta: { absolute: 8, share: 0 } });
    expect(compare([4, 4, 4], [0.5, 0.5, 0.5], { spec: close })).toMatchObject({
      outcome: "differ",
      reason: "opposite-calls",
    });
  });

  it("says so by the difference itself, where that is beyond what matters", () => {
    expect(compare([8, 8, 8], [1, 1, 1])).toMatchObject({ outcome: "differ", reason: "beyond-delta" });
  });

  it("is a difference too where only what was stated is sure, and chance does not explain what lies between", () => {
    const close = treadSpec({ delta: { absolute: 8, share: 0 } });
    expect(compare([6, 6, 6], [1.9, 1.9, 1.9], { spec: close })).toMatchObject({
      outcome: "differ",
      reason: "opposite-calls",
    });
  });

  it("is in doubt where neither is sure", () => {
    const result = compare([2.1, 2.1, 2.1], [1.9, 1.9, 1.9]);
    expect(result).toMatchObject({ outcome: "doubtful", reason: "opposite-calls-unsure" });
    const { difference, expandedUncertainty } = figures(result);
    expect(difference).toBeLessThan(expandedUncertainty);
  });

  it("is in doubt where what was stated is sure, and chance may explain what lies between", () => {
    const result = compare([2.6, 2.6, 2.6], [1.95, 1.95, 1.95]);
    expect(result).toMatchObject({ outcome: "doubtful", reason: "opposite-calls-unsure" });
  });

  it("is in doubt where what was stated is not sure, however far below the found one lies", () => {
    const close = treadSpec({ delta: { absolute: 8, share: 0 } });
    const result = compare([2.2, 2.2, 2.2], [0.5, 0.5, 0.5], { spec: close });
    expect(result.limits?.[0]).toMatchObject({ a: { call: "marginal" }, b: { call: "fails" } });
    expect(result).toMatchObject({ outcome: "doubtful", reason: "opposite-calls-unsure" });
  });

  it("is a difference where both are sure, though the coarser of the two instruments could explain what lies between", () => {
    const close = treadSpec({ delta: { absolute: 8, share: 0 } });
    const accuracy = { absolute: { value: 1, unit: "1/32in" as const }, share: 0 };
    const fine = { absolute: { value: 0, unit: "1/32in" as const }, share: 0 };
    const result = compare([3, 3, 3], [1.9, 1.9, 1.9], {
      spec: { ...close, repeatability: { ...close.repeatability, value: 0.05 } },
      instrumentA: { ...gauge, accuracy },
      instrumentB: { ...gauge, accuracy: fine },
    });
    const { difference, expandedUncertainty } = figures(result);
    expect(difference).toBeLessThan(expandedUncertainty);
    expect(result.limits?.[0]).toMatchObject({ a: { call: "meets" }, b: { call: "fails" } });
    expect(result).toMatchObject({ outcome: "differ", reason: "opposite-calls" });
  });

  it("decides nothing where the yardstick cannot judge one of them under what was noted", () => {
    const spec = treadSpec({ delta: { absolute: 8, share: 0 } });
    const item = { ...readingItem(spec), yardstickNeeds: [{ condition: "warm", is: true }] };
    const cold = { conditions: { warm: false } };
    const judgeable = { conditions: { warm: true } };
    const statedCold = compare([6, 6, 6], [1, 1, 1], { spec, item, contextA: cold, contextB: judgeable });
    expect(statedCold).toMatchObject({ outcome: "agree", reason: "within-delta", marks: ["over-limit"] });
    expect(statedCold.limits).toMatchObject([{ a: null, b: { plain: "fail" } }]);
    const foundCold = compare([6, 6, 6], [1, 1, 1], { spec, item, contextA: judgeable, contextB: cold });
    expect(foundCold).toMatchObject({ outcome: "agree", reason: "within-delta", marks: [] });
    expect(foundCold.limits).toMatchObject([{ a: { plain: "pass" }, b: null }]);
    const bothLow = compare([1, 1, 1], [1, 1, 1], { spec, item, contextA: judgeable, contextB: cold });
    expect(bothLow).toMatchObject({ reason: "within-delta", standing: "confirmed", marks: [] });
  });

  it("says which side is lower where both fail", () => {
    expect(compare([1.5, 1.5, 1.5], [0.5, 0.5, 0.5])).toMatchObject({
      reason: "both-past-limit",
      direction: "stated-better",
    });
    expect(compare([0.5, 0.5, 0.5], [1.5, 1.5, 1.5])).toMatchObject({
      reason: "both-past-limit",
      direction: "found-better",
    });
  });

  it("says nothing of what was found better than stated", () => {
    expect(compare([1.9, 1.9, 1.9], [2.1, 2.1, 2.1])).toMatchObject({ outcome: "agree" });
  });
});

describe("what moves from day to day", () => {
  it("is taken off where days lie between, and nothing of it on one day", () => {
    const spec = treadSpec({ limits: [], dayToDay: 3 });
    expect(compare([8, 8, 8], [5.5, 5.5, 5.5], { spec, ...otherDays })).toMatchObject({
      outcome: "consistent",
      reason: "changed-between-days",
    });
    expect(compare([8, 8, 8], [5.5, 5.5, 5.5], { spec, drifts: true })).toMatchObject({
      outcome: "doubtful",
    });
    expect(compare([12, 12, 12], [4, 4, 4], { spec, ...otherDays })).toMatchObject({ outcome: "differ" });
    const steady = treadSpec({ limits: [], dayToDay: 0 });
    expect(compare([8, 8, 8], [5.5, 5.5, 5.5], { spec: steady, ...otherDays })).toMatchObject({
      outcome: "doubtful",
    });
  });

  it("may be a share of the reading, and is what matters where the sheet does not say", () => {
    const share = treadSpec({ limits: [], dayToDayShare: 0.25 });
    expect(compare([16, 16, 16], [12, 12, 12], { spec: share, ...otherDays }).outcome).toBe("consistent");
    expect(compare([8, 8, 8], [4.5, 4.5, 4.5], { spec: share, ...otherDays }).outcome).not.toBe("agree");
    expect(compare([8, 8, 8], [5.5, 5.5, 5.5], { spec: noLimit, ...otherDays }).outcome).toBe("consistent");
    expect(compare([8, 8, 8], [4, 4, 4], { spec: noLimit, ...otherDays }).outcome).toBe("differ");
  });
});
