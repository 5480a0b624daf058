import { describe, expect, it } from "vitest";
import { figuresOf as figures, reading, treadSpec } from "../../testing/small-items.ts";
import { acrossTread, judgeReadings } from "../../testing/small-readings.ts";

/** δ 2/32 in, s₀ 0.3, no limits. */
const spec = treadSpec({ limits: [] });

describe("the worst spot of a tread", () => {
  it.each<[string, number[], number[], string]>([
    ["is far below, and the mean is not", [8, 8.2, 7.9], [4.5, 9, 8.5], "differ: worst-spot-beyond-delta"],
    [
      "is a little below, and the mean is not",
      [8, 8, 8],
      [9, 8.6, 6.1],
      "doubtful: worst-spot-beyond-chance",
    ],
    ["is far above on the found side: the mean says it", [8, 8, 8], [7.9, 12, 12.5], "differ: beyond-delta"],
    ["is as far below as the mean is", [12, 12, 12], [4, 6, 7], "differ: beyond-delta"],
    ["is no worse than scatter explains", [8, 8, 8], [7.4, 6.9, 6.1], "agree: within-delta"],
    ["was stated, and found even", [4.5, 9, 8.5], [8, 8.2, 7.9], "differ: worst-spot-beyond-delta"],
    ["is uneven and bad on both sides", [4.5, 9, 8.5], [4.6, 8.8, 8.6], "agree: within-delta"],
  ])("%s", (_name, a, b, expected) => {
    const { outcome, reason } = judgeReadings(acrossTread(...a), acrossTread(...b), { spec });
    expect(`${outcome}: ${reason}`).toBe(expected);
  });

  it("is the highest where lower is better", () => {
    const runout = treadSpec({ limits: [], betterIs: "lower" });
    const result = judgeReadings(acrossTread(8, 8.2, 7.9), acrossTread(8, 7, 12.5), { spec: runout });
    expect(result).toMatchObject({ reason: "worst-spot-beyond-delta", direction: "stated-better" });
    expect(figures(result)).toMatchObject({ a: { mean: 8.2 }, b: { mean: 12.5 } });
  });

  it("is none where a target decides which way is worse", () => {
    const camber = treadSpec({ limits: [], betterIs: "target", target: 8 });
    expect(
      judgeReadings(acrossTread(8, 8.2, 7.9), acrossTread(7, 7, 12.5), { spec: camber }).reason,
    ).not.toContain("worst-spot");
  });

  it("has the uncertainty of one reading, its instrument's included", () => {
    const result = judgeReadings(acrossTread(8, 8.2, 7.9), acrossTread(4.5, 9, 8.5), { spec });
    const whole = Math.sqrt(0.3 ** 2 + 0.1 ** 2 / 12 + 0.3 ** 2 / 3);
    expect(figures(result).a.standardUncertainty).toBeCloseTo(whole, 12);
    expect(figures(result).b.standardUncertainty).toBeCloseTo(whole, 12);
  });
});

describe("a reading with no instrument named", () => {
  it("says so where the eye cannot have read it", () => {
    const gauged = treadSpec({ limits: [], eyesRead: false });
    const { a, b } = figures(
      judgeReadings(reading("1/32in", 8), reading("1/32in", 8), { spec: gauged, instrumentA: undefined }),
    );
    expect(a).toMatchObject({ unnamed: true, byEye: false });
    expect(b).not.toHaveProperty("unnamed");
    const seen = judgeReadings(reading("1/32in", 8), reading("1/32in", 8), { spec, instrumentA: undefined });
    expect(figures(seen).a).toMatchObject({ byEye: true });
    expect(figures(seen).a).not.toHaveProperty("unnamed");
  });
});
