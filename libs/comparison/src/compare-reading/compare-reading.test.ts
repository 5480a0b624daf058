import { describe, expect, it } from "vitest";
import { figuresOf as figures, gauge, reading, readingItem, treadSpec } from "../../testing/small-items.ts";
import { deltaOf } from "../delta/index.ts";
import { allowedBand, leftOf } from "../use-allowed/index.ts";
import { compareReading } from "./index.ts";
import type { ReadingPair } from "./index.ts";

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
    times: () => ({ differentDays: true, later: "b" }),
    ...more,
  });
const sameTime = () => ({ differentDays: false, later: null });
const noLimit = treadSpec({ limits: [] });

const times = () => {
  throw new Error("asked");
};
describe("compareReading", () => {
  it("agrees when the interval lies within the difference that matters", () => {
    expect(compare([8, 8, 8], [8, 8, 8])).toMatchObject({
      outcome: "agree",
      reason: "within-delta",
      standing: "confirmed",
    });
  });

  it("differs when the interval lies wholly outside, and says which way", () => {
    const result = compare([8, 8, 8], [4, 4, 4]);
    expect(result).toMatchObject({ outcome: "differ", direction: "stated-better", standing: "differs" });
    expect(figures(result).difference).toBe(4);
  });

  it("is doubtful between", () => {
    expect(compare([8, 8, 8], [6, 6, 6])).toMatchObject({
      outcome: "doubtful",
      reason: "beyond-chance",
      standing: "in-doubt",
    });
  });

  it("is consistent, too coarse to test, by eye", () => {
    const result = compare([8, 8, 8], [8, 8, 8], { instrumentA: undefined, instrumentB: undefined });
    expect(result).toMatchObject({
      outcome: "consistent",
      reason: "not-settled",
      standing: "too-coarse",
      direction: "neither",
    });
  });

  it("is consistent, not contradicted, where finer tools could have confirmed it", () => {
    const spec = treadSpec({ delta: { absolute: 1, share: 0 } });
    const result = compare([8], [8.7], { spec });
    expect(result).toMatchObject({ outcome: "consistent", standing: "not-contradicted" });
  });

  it("mirrors when the sides are exchanged", () => {
    const [there, back] = [compare([8, 8, 7], [4, 5, 4]), compare([4, 5, 4], [8, 8, 7])];
    expect(figures(back).difference).toBeCloseTo(-figures(there).difference, 12);
    expect(back).toMatchObject({ outcome: there.outcome, direction: "found-better" });
  });

  it("lets what both sides share cancel", () => {
    const shared = compare([8, 8, 8], [8, 8, 8], {
      instrumentA: undefined,
      instrumentB: undefined,
      shared: true,
    });
    expect(shared.outcome).toBe("agree");
    expect(figures(shared).a.standardUncertainty).toBeGreaterThan(1);
  });

  it("allows what drifts a day's movement, δ where the sheet says no other, and no more", () => {
    const expected = { outcome: "consistent", reason: "changed-between-days", standing: "not-contradicted" };
    expect(compare([8, 8, 8], [5.8, 5.8, 5.8], { drifts: true })).toMatchObject(expected);
    expect(compare([12, 12, 12], [4, 4, 4], { drifts: true })).toMatchObject({
      outcome: "differ",
      direction: "stated-better",
    });
    const spec = treadSpec({ dayToDay: 9 });
    expect(compare([12, 12, 12], [4, 4, 4], { drifts: true, spec })).toMatchObject(expected);
    expect(compare([8, 8, 8], [8, 8, 8], { drifts: true }).outcome).toBe("agree");
  });

  it("lets a drifting item differ on one day", () => {
    expect(compare([12, 12, 12], [4, 4, 4], { drifts: true, times: sameTime }).outcome).toBe("differ");
  });

  it("lets a drifting item differ where a limit is failed", () => {
    expect(compare([12, 12, 12], [0.5, 0.5, 0.5], { drifts: true }).outcome).toBe("differ");
  });

  it("takes δ as the greater of the absolute and the share of the mean size", () => {
    expect(deltaOf({ absolute: 75, share: 0.3 }, 100, 110)).toBe(75);
    expect(deltaOf({ absolute: 75, share: 0.3 }, 300, -500)).toBe(120);
  });
});

describe("what is said beside the outcome", () => {
  it("has a direction only where it is doubtful or differs", () => {
    expect(compare([8, 8, 8], [7.8, 7.8, 7.8])).toMatchObject({ outcome: "agree", direction: "neither" });
    expect(compare([8], [7], { instrumentA: undefined })).toMatchObject({
      outcome: "consistent",
      direction: "neither",
    });
    expect(compare([8, 8, 8], [6, 6, 6]).direction).toBe("stated-better");
  });

  it("keeps each side's whole uncertainty, its instrument's included", () => {
    const { a, b } = figures(compare([8, 8, 8], [8, 8, 8]));
    const whole = Math.sqrt(0.3 ** 2 / 3 + 0.1 ** 2 / 12 + 0.3 ** 2 / 3);
    expect(a.standardUncertainty).toBeCloseTo(whole, 12);
    expect(b.standardUncertainty).toBeCloseTo(whole, 12);
  });

  it("shows both sides against the item's limits", () => {
    expect(compare([8, 8, 8], [8, 8, 8]).limits).toMatchObject([
      { side: "min", value: 2, a: { plain: "pass" }, b: { plain: "pass" } },
    ]);
  });

  it("asks for the times of the visits only where they matter", () => {
    expect(compare([8, 8, 8], [4, 4, 4], { times }).outcome).toBe("differ");
    expect(compare([8, 8, 8], [8, 8, 8], { times, drifts: true, useAllowed: () => 4 }).outcome).toBe("agree");
    expect(() => compare([8, 8, 8], [4, 4, 4], { times, drifts: true })).toThrow("asked");
    expect(() => compare([8, 8, 8], [4, 4, 4], { times, useAllowed: () => 1 })).toThrow("asked");
  });
});

const leftBetween = (...of: Parameters<typeof compare>): number => leftOf(figures(compare(...of)));
const statementLater = () => ({ differentDays: true, later: "a" as const });

describe("the use allowed between two visits", () => {
  const rise = { spec: treadSpec({ limits: [], betterIs: "lower" }), useAllowed: () => 4 };

  it("comes off a rise", () => {
    expect(leftBetween([8, 8, 8], [11, 11, 11], rise)).toBe(0);
    expect(leftBetween([8, 8, 8], [15, 15, 15], rise)).toBe(-3);
  });

  it("never excuses a fall", () => {
    expect(leftBetween([8, 8, 8], [5, 5, 5], rise)).toBe(3);
  });

  it("goes by which side is later, not by which side it is", () => {
    expect(leftBetween([15, 15, 15], [8, 8, 8], { ...rise, times: statementLater })).toBe(3);
    expect(leftBetween([8, 8, 8], [11, 11, 11], { ...rise, times: statementLater })).toBe(-3);
    expect(leftBetween([8, 8, 8], [11, 11, 11], { ...rise, times: sameTime })).toBe(-3);
  });

  it("is a fall where wear lowers the reading", () => {
    const wear = { spec: noLimit, useAllowed: () => 2 };
    expect(leftBetween([8, 8, 8], [5, 5, 5], wear)).toBe(1);
    expect(leftBetween([8, 8, 8], [11, 11, 11], wear)).toBe(-3);
  });

  it("excuses a difference and confirms nothing: only what agrees as it was read agrees", () => {
    const result = compare([8, 8, 8], [13, 13, 13], rise);
    expect(result).toMatchObject({ outcome: "consistent", reason: "within-use" });
    expect(compare([8, 8, 8], [8.2, 8.2, 8.2], rise)).toMatchObject({
      outcome: "agree",
      reason: "within-delta",
    });
  });

  it("leaves the difference as it was read, and decides by what is left", () => {
    const result = compare([8, 8, 8], [13, 13, 13], rise);
    expect(figures(result)).toMatchObject({ difference: -5, useAllowed: -4 });
    expect(result.outcome).toBe("consistent");
    expect(compare([8, 8, 8], [13, 13, 13], { spec: rise.spec }).outcome).toBe("differ");
    expect(figures(result).zetaScore).toBeCloseTo(
      figures(compare([8, 8, 8], [9, 9, 9], { spec: rise.spec })).zetaScore ?? Number.NaN,
      1,
    );
  });

  it("is drawn on the side it is allowed on", () => {
    expect(allowedBand(figures(compare([8], [9], rise)))).toEqual({ low: 6, high: 14 });
    expect(allowedBand(figures(compare([8], [7], { spec: noLimit, useAllowed: () => 1 })))).toEqual({
      low: 5,
      high: 10,
    });
    expect(allowedBand(figures(compare([8], [9])))).toEqual({ low: 6, high: 10 });
  });

  it("is said in the figures only where it took something off", () => {
    expect(figures(compare([8], [9], rise)).useAllowed).toBe(-4);
    expect(figures(compare([8], [7], rise)).useAllowed).toBeUndefined();
    expect(figures(compare([8], [9])).useAllowed).toBeUndefined();
  });
});

const atSpots = (...values: readonly [string, number][]): ReadingPair["b"] => ({
  kind: "reading",
  unit: "1/32in",
  values: values.map(([spot, value]) => ({ spot, value })),
});

describe("spots of one place that lie farther apart than chance explains", () => {
  const spec = treadSpec({
    limits: [],
    repeatability: { value: 0.3, share: 0, degreesOfFreedom: 30, over: "spots" },
  });
  const even = atSpots(["inner", 8], ["center", 8.2], ["outer", 7.9]);
  const edgeWorn = atSpots(["inner", 4.5], ["center", 9], ["outer", 8.5]);

  it("are compared by the worst of them, since their mean stands for none", () => {
    const result = compare([], [], { spec, a: even, b: edgeWorn });
    expect(result).toMatchObject({
      outcome: "differ",
      reason: "worst-spot-beyond-delta",
      direction: "stated-better",
    });
    expect(figures(result)).toMatchObject({ a: { mean: 7.9 }, b: { mean: 4.5 } });
  });

  it("are compared by their mean where they scatter as they always do, and where no side is worse", () => {
    expect(compare([], [], { spec, a: even, b: even }).reason).toBe("within-delta");
    const target = { ...spec, betterIs: "target" as const };
    expect(compare([], [], { spec: target, a: even, b: edgeWorn }).reason).not.toContain("worst-spot");
  });
});

describe("the same digits in another unit", () => {
  it("are no slip where they mean the same: nought is nought in any unit", () => {
    const coarse = { spec: treadSpec({ limits: [], delta: { absolute: 0.1, share: 0 } }) };
    const inMillimeters = { ...coarse, b: reading("mm", 0) };
    expect(compare([0], [], inMillimeters)).toMatchObject({ outcome: "consistent", reason: "not-settled" });
    expect(compare([8], [], { ...coarse, b: reading("mm", 8) }).reason).toBe("perhaps-the-unit");
  });
});

describe("limits beside the outcome", () => {
  it("make opposite calls differ that lie farther apart than chance, though the found one is not sure", () => {
    const rough = { spec: treadSpec({ delta: { absolute: 4, share: 0 } }) };
    const result = compare([4.5, 4.5, 4.5], [1.8, 1.8, 1.8], rough);
    expect(result.limits?.[0]?.b).toMatchObject({ plain: "fail", call: "marginal" });
    expect(result).toMatchObject({ outcome: "differ", reason: "opposite-calls" });
    expect(compare([2.3, 2.3, 2.3], [1.8, 1.8, 1.8], rough)).toMatchObject({
      outcome: "doubtful",
      reason: "opposite-calls-unsure",
    });
  });

  it("make opposite calls differ whatever δ says", () => {
    const result = compare([2.6, 2.6, 2.6], [1.4, 1.4, 1.4], {
      spec: treadSpec({ delta: { absolute: 9, share: 0 } }),
    });
    expect(result).toMatchObject({ outcome: "differ", reason: "opposite-calls", standing: "differs" });
  });

  it("leave in doubt what the found side fails, not surely, and the stated one passes", () => {
    expect(compare([2, 2, 2], [1.9, 1.9, 1.9])).toMatchObject({
      outcome: "doubtful",
      reason: "opposite-calls-unsure",
    });
  });

  it("agree, both bad, past the same limit", () => {
    expect(compare([1, 1, 1], [1, 1, 1])).toMatchObject({
      outcome: "agree",
      standing: "agreed-fault",
      marks: ["both-bad", "over-limit"],
    });
  });

  it("count alarm figures as they count limits", () => {
    const spec = treadSpec({
      limits: [],
      alarms: [
        {
          side: "min",
          value: 2,
          severity: "danger",
          source: { kind: "common-practice", text: "common practice" },
        },
      ],
      delta: { absolute: 9, share: 0 },
    });
    expect(compare([2.6, 2.6, 2.6], [1.4, 1.4, 1.4], { spec })).toMatchObject({
      outcome: "differ",
      limits: [{ practice: true, severity: "danger" }],
    });
  });
});

describe("digits that fit in another unit", () => {
  it("are doubtful, perhaps the unit, before anything graver", () => {
    expect(
      compare([8, 8, 8], [6.3, 6.3, 6.3], { a: reading("mm", 8), b: reading("1/32in", 8) }),
    ).toMatchObject({
      outcome: "doubtful",
      reason: "perhaps-the-unit",
      marks: ["perhaps-unit"],
    });
  });

  it("are left out where the item has none", () => {
    expect(compare([8], [8], { spec: noLimit }).limits).toBeUndefined();
  });
});

describe("which way is worse", () => {
  const toTarget = { spec: treadSpec({ limits: [], betterIs: "target", target: 8 }) };

  it("is away from a target", () => {
    expect(compare([8, 8, 8], [12, 12, 12], toTarget).direction).toBe("stated-better");
    expect(compare([3, 3, 3], [8, 8, 8], toTarget).direction).toBe("found-better");
    expect(compare([5, 5, 5], [11, 11, 11], toTarget)).toMatchObject({
      outcome: "differ",
      direction: "neither",
    });
  });

  it("is not known without one", () => {
    const spec = treadSpec({ limits: [], betterIs: "target" });
    expect(compare([8, 8, 8], [12, 12, 12], { spec })).toMatchObject({
      outcome: "differ",
      direction: "neither",
    });
  });
});
