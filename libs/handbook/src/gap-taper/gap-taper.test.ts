import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { square } from "../square/index.ts";
import { gapTaper } from "./index.ts";

const ends = (top: number, bottom: number) => ({ top: exactly(top), bottom: exactly(bottom) });
const one = (left: ReturnType<typeof ends>, right?: ReturnType<typeof ends>) =>
  gapTaper({ gaps: [{ gap: "door", left, right }] });

const scattered = (bottom: number) => ({ top: estimate(4, 0.6), bottom: estimate(bottom, 0.8) });

describe("gapTaper", () => {
  it.each([
    [4, 7, "even"],
    [4, 7.1, "tapers"],
    [7, 4, "even"],
    [7.1, 4, "tapers"],
  ])("from %f to %f mm: %s", (top, bottom, reason) => {
    expect(one(ends(top, bottom)).reason).toBe(reason);
    expect(gapTaper({ gaps: [{ gap: "door", right: ends(top, bottom) }] }).reason).toBe(reason);
  });

  it("sets left against right at both ends", () => {
    expect(one(ends(4, 4), ends(7.1, 6.9)).alternatives).toEqual(["door at the top 3.1 mm"]);
    expect(one(ends(4, 4), ends(6.9, 7.1)).alternatives).toEqual(["door at the bottom 3.1 mm"]);
    expect(one(ends(4, 4), ends(7, 7)).reason).toBe("even");
  });

  it("names the farthest first, a taper before the sides", () => {
    const result = one(ends(4, 9), ends(4, 4));
    expect(result).toMatchObject({ reason: "tapers", figures: { difference: { value: 5 } } });
    expect(result.alternatives).toEqual(["door left 5.0 mm", "door at the bottom 5.0 mm"]);
    expect(
      gapTaper({
        gaps: [
          { gap: "a", left: ends(4, 8) },
          { gap: "b", right: ends(9, 4) },
        ],
      }).alternatives,
    ).toEqual(["b right 5.0 mm", "a left 4.0 mm"]);
  });

  it("widens for every measure judged", () => {
    expect(gapTaper({ gaps: [{ gap: "a", left: scattered(7 + 2.6) }] }).reason).toBe("tapers");
    expect(
      gapTaper({
        gaps: [
          { gap: "a", left: scattered(7 + 2.6) },
          { gap: "b", left: ends(4, 4) },
        ],
      }).reason,
    ).toBe("range-covers");
  });
});

const pair = (left: number, right: number, u = 0) => [estimate(left, u), estimate(right, u)] as const;

describe("square", () => {
  it.each([
    [2743, 2737, "square"],
    [2743, 2736.9, "wheelbase-differs"],
    [2737, 2743, "square"],
    [2736.9, 2743, "wheelbase-differs"],
  ])("a wheelbase of %f and %f: %s", (left, right, reason) => {
    expect(square({ wheelbase: pair(left, right) }).reason).toBe(reason);
  });

  it("judges both pairs together, the wheelbase first", () => {
    expect(square({ wheelbase: pair(2743, 2700), diagonals: pair(3100, 3000) }).reason).toBe(
      "wheelbase-differs",
    );
    expect(square({ wheelbase: pair(2743, 2743), diagonals: pair(3100, 3107) }).reason).toBe(
      "diagonals-differ",
    );
    expect(square({ wheelbase: pair(2743, 2743), diagonals: pair(3100, 3105) }).reason).toBe("square");
    const wide = pair(3100, 3106 + 2.6 * Math.SQRT2, 1);
    expect(square({ diagonals: wide }).reason).toBe("diagonals-differ");
    expect(square({ wheelbase: pair(2743, 2743), diagonals: wide }).reason).toBe("range-covers");
  });
});
