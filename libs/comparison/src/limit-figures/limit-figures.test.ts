import { describe, expect, it } from "vitest";
import type { LimitFigures } from "@evenhand/shared/comparison";
import { reading, readingItem, treadSpec } from "../../testing/small-items.ts";
import { hasLimits, limitFigures } from "./index.ts";
import type { LimitSide } from "./index.ts";
import type { CallContext } from "@evenhand/sheet/call";

const spec = treadSpec();
const side = (lowest: number, highest = lowest, standardUncertainty = 0.2) => ({
  estimate: {
    value: (lowest + highest) / 2,
    standardUncertainty,
    degreesOfFreedom: Number.POSITIVE_INFINITY,
  },
  extremes: { lowest, highest },
});
const judge = (own: typeof spec, a: LimitSide | null, b: LimitSide | null) =>
  limitFigures(readingItem(own), {}, {}, a, b);
const first = (limits: LimitFigures[]) => limits[0];

describe("limitFigures", () => {
  it("passes equality, and rounding with it", () => {
    expect(first(judge(spec, side(2), side(2 - 1e-10)))).toMatchObject({
      a: { plain: "pass" },
      b: { plain: "pass" },
    });
  });

  it("fails by a single reading", () => {
    expect(first(judge(spec, side(1.9, 9), null))?.a?.plain).toBe("fail");
  });

  it("judges a minimum by the lowest reading, in sureness and plainly", () => {
    expect(first(judge(spec, side(3, 9), side(1)))).toMatchObject({
      a: { plain: "pass", call: "meets" },
      b: { plain: "fail", call: "fails" },
    });
  });

  it("lets rounding under 1e-9 of δ pass, and no more", () => {
    expect(first(judge(spec, side(2 - 1e-9), side(2 - 3e-9)))).toMatchObject({
      a: { plain: "pass" },
      b: { plain: "fail" },
    });
  });

  it("judges a maximum by the highest reading", () => {
    const most = treadSpec({
      limits: [
        { side: "max", value: 2, severity: "danger", source: { kind: "regulation", text: "a limit" } },
      ],
    });
    expect(first(judge(most, side(1, 2), side(1, 2.1)))).toMatchObject({
      a: { plain: "pass" },
      b: { plain: "fail" },
    });
    expect(first(judge(most, side(1), side(3)))).toMatchObject({
      a: { call: "meets" },
      b: { call: "fails" },
    });
  });

  it("is as sure as the worst single reading, whatever the mean", () => {
    expect(first(judge(spec, side(2.2, 9), side(2.2, 2.2)))).toMatchObject({
      a: { plain: "pass", call: "marginal" },
      b: { plain: "pass", call: "marginal" },
    });
    const most = treadSpec({
      limits: [
        { side: "max", value: 2, severity: "danger", source: { kind: "regulation", text: "a limit" } },
      ],
    });
    expect(first(judge(most, side(-5, 1.8), side(1.8)))).toMatchObject({
      a: { plain: "pass", call: "marginal" },
      b: { plain: "pass", call: "marginal" },
    });
  });

  it("calls marginal what may be either", () => {
    const limit = first(judge(spec, side(2), null));
    expect(limit?.a).toMatchObject({ call: "marginal", probability: 0.5 });
    expect(limit?.b).toBeNull();
  });

  it("names the limit and its source", () => {
    expect(first(judge(spec, null, null))).toMatchObject({
      side: "min",
      value: 2,
      unit: "1/32in",
      source: "a limit",
    });
  });
});

const asCast = treadSpec({
  limits: [
    {
      side: "max",
      value: 0,
      severity: "danger",
      source: { kind: "common-practice", text: "as cast" },
      isReadingOf: { item: "brakes.drum-cast-figure", unit: "1/32in" },
    },
  ],
});

const cast = (value: number) => ({ other: () => reading("1/32in", value) });

const judgedBy = (a: CallContext | undefined, b: CallContext | undefined) =>
  limitFigures(readingItem(asCast), a, b, side(5), side(5)).map((row) => [
    row.value,
    row.a?.plain ?? null,
    row.b?.plain ?? null,
    row.practice,
  ]);

describe("a limit that hangs on another answer", () => {
  it("judges a side that has it, by what was found where both have", () => {
    expect(judgedBy(cast(6), cast(4))).toEqual([[4, "fail", "fail", true]]);
    expect(judgedBy(cast(6), {})).toEqual([[6, "pass", null, true]]);
    expect(judgedBy({}, cast(4))).toEqual([[4, null, "fail", true]]);
    expect(judgedBy(undefined, cast(4))).toEqual([[4, null, "fail", true]]);
    expect(judgedBy({}, {})).toEqual([]);
  });
});

describe("an item's limits", () => {
  it("are there or not, limits and alarms alike", () => {
    const alarms = spec.limits;
    expect(hasLimits({ reading: spec })).toBe(true);
    expect(hasLimits({ reading: treadSpec({ limits: [], alarms }) }, "left-front")).toBe(true);
    expect(hasLimits({ reading: treadSpec({ limits: [] }) })).toBe(false);
    expect(hasLimits({})).toBe(false);
    expect(limitFigures({}, {}, {}, side(1), side(1))).toEqual([]);
  });
});
