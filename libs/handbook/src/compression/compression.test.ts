import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { compression, compressionStates } from "./index.ts";
import type { CompressionInput } from "./index.ts";

const of = (
  pressures: readonly number[],
  more: Omit<CompressionInput, "cylinders"> = {},
  u = 0,
): CompressionInput => ({
  cylinders: pressures.map((value, index) => ({ cylinder: index + 1, pressure: estimate(value, u) })),
  ...more,
});
const reason = (...args: Parameters<typeof of>) => compression(of(...args)).reason;

describe("compression", () => {
  it("names the lowest, the highest, their share and the median", () => {
    const { figures } = compression(of([150, 120, 160, 140]));
    expect(figures).toEqual({
      lowest: { value: 120, unit: "psi" },
      lowestCylinder: { value: 2, unit: "1" },
      highest: { value: 160, unit: "psi" },
      highestCylinder: { value: 3, unit: "1" },
      share: { value: 0.75, unit: "1" },
      median: { value: 145, unit: "psi" },
    });
  });

  it("goes by the maker's share and least, and says so", () => {
    expect(reason([150, 106], { makers: { lowestShare: 0.7 } })).toBe("even");
    expect(compression(of([150, 106], { makers: { lowestShare: 0.7 } })).limits).toEqual([
      { id: "compression.lowest-share", value: 0.7, unit: "1", origin: "maker" },
    ]);
    expect(reason([150, 120], { makers: { least: 120 } })).toBe("even");
    expect(reason([150, 119], { makers: { least: 120 } })).toBe("under-least");
    expect(reason([150, 121], { makers: { least: 120 } }, 2)).toBe("range-covers");
    expect(reason([150, 90], { makers: { least: 120 } })).toBe("uneven");
    expect(compression(of([150, 140]), { "compression.lowest-share": 0.95 }).reason).toBe("uneven");
  });

  it("calls neighbors low only where both are", () => {
    const neighbors = [
      [1, 2],
      [3, 4],
    ] as const;
    expect(reason([150, 90, 91, 150], { neighbors })).toBe("uneven");
    expect(reason([150, 150, 91, 90], { neighbors })).toBe("neighbors-low");
    expect(compression(of([150, 150, 91, 90], { neighbors })).words).toEqual({ neighbors: "3 and 4" });
    expect(reason([150, 150, 91, 150], { neighbors })).toBe("uneven");
  });

  it("judges all pairs together, so that many cylinders do not fail an even engine", () => {
    // Alone, 112.5 − 0.75 × 150 with u = 1 would break from 2.576 × 1.25 under it.
    const just = 112.5 - 2.7 * 1.25;
    expect(reason([150, just], {}, 1)).toBe("range-covers");
    expect(reason([150, 112.5 - 2.82 * 1.25], {}, 1)).toBe("uneven");
    expect(reason([150, 150, 150, 112.5 - 2.82 * 1.25], {}, 1)).toBe("range-covers");
  });

  it("needs two cylinders", () => {
    expect(reason([150])).toBe("too-few");
    expect(compression({ cylinders: [] })).toMatchObject({ reason: "too-few", figures: {} });
  });
});

describe("compressionStates", () => {
  it("tells low, normal and unclear apart", () => {
    expect(compressionStates(of([150, 90, 112.5, 150], {}, 1))).toEqual(
      new Map([
        [1, "normal"],
        [2, "low"],
        [3, "unclear"],
        [4, "normal"],
      ]),
    );
    expect(
      compressionStates(
        {
          cylinders: [
            { cylinder: 1, pressure: exactly(140) },
            { cylinder: 2, pressure: exactly(150) },
          ],
        },
        { "compression.lowest-share": 0.95 },
      ),
    ).toEqual(
      new Map([
        [1, "low"],
        [2, "normal"],
      ]),
    );
  });
});
