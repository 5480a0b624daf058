import { describe, expect, it } from "vitest";
import type { UnitSymbol } from "@evenhand/shared/unit";
import { reading, treadSpec } from "../../testing/small-items.ts";
import { acrossTread, judgeReadings } from "../../testing/small-readings.ts";

/** A depth in millimeters, of which 1 mm matters, and which may be written in inches too. */
const depth = (alsoIn: UnitSymbol[], delta = 1) =>
  treadSpec({ unit: "mm", alsoIn, delta: { absolute: delta, share: 0 }, limits: [] });

type Written = readonly [unit: UnitSymbol, ...values: number[]];

const said = (
  [unitA, ...a]: Written,
  [unitB, ...b]: Written,
  { alsoIn = ["in"], delta = 1 }: { alsoIn?: UnitSymbol[]; delta?: number } = {},
): string => {
  const { outcome, reason } = judgeReadings(reading(unitA, ...a), reading(unitB, ...b), {
    spec: depth(alsoIn, delta),
  });
  return `${outcome}: ${reason}`;
};
const slip = "doubtful: perhaps-the-unit";
const apart = "differ: beyond-delta";

describe("the same digits, written in two units", () => {
  it.each<[string, Written, Written, string]>([
    ["the same", ["mm", 8], ["in", 8], slip],
    ["read alike, to 4 %", ["mm", 8], ["in", 8.3], slip],
    ["read alike, as a mean", ["mm", 7, 9], ["in", 8], slip],
    ["far from alike", ["mm", 8], ["in", 2], apart],
    ["that mean the same size", ["mm", 50.8], ["in", 2], "agree: within-delta"],
  ])("%s", (_name, a, b, expected) => {
    expect(said(a, b)).toBe(expected);
    expect(said(b, a)).toBe(expected);
    expect(said(a, b, { alsoIn: [] })).toBe(expected);
  });

  it("are no slip where nothing that matters lies between them", () => {
    expect(said(["mm", 8], ["in", 8], { delta: 500 })).toBe("agree: within-delta");
  });

  it("may be a slip of the worst spot alone, though the means agree", () => {
    const inMillimeters = { ...acrossTread(8, 10, 10), unit: "mm" as const };
    const result = judgeReadings(inMillimeters, acrossTread(8, 13.7, 13.6), {
      spec: treadSpec({ limits: [] }),
    });
    expect(result).toMatchObject({ outcome: "doubtful", reason: "perhaps-the-unit" });
  });
});

describe("digits that fit when they are read in another unit than they were written in", () => {
  it.each<[string, Written, Written, UnitSymbol[], string]>([
    ["inches put down as millimeters", ["mm", 0.5], ["mm", 12.7], ["in"], slip],
    ["to 8 %", ["mm", 0.54], ["mm", 12.7], ["in"], slip],
    ["not quite", ["mm", 0.55], ["mm", 12.7], ["in"], apart],
    ["millimeters put down as inches", ["in", 12.7], ["mm", 12.7], ["in"], slip],
    ["in inches both, one of them meant as millimeters", ["in", 12.7], ["in", 0.5], ["in"], slip],
    ["so too where the sheet names no other unit", ["in", 12.7], ["in", 0.5], [], slip],
    ["in one of several units of the item", ["mm", 0.5], ["mm", 12.7], ["1/32in", "in"], slip],
    ["and nobody writes the item in it", ["mm", 0.5], ["mm", 12.7], [], apart],
    ["they fit nowhere", ["mm", 10], ["mm", 60], ["in"], apart],
    ["they are near each other as they stand", ["mm", 100], ["mm", 97], ["in"], apart],
  ])("%s", (_name, a, b, alsoIn, expected) => {
    expect(said(a, b, { alsoIn })).toBe(expected);
    expect(said(b, a, { alsoIn })).toBe(expected);
  });

  it("are no slip where the two units are near each other: that may be an accident", () => {
    const spec = { alsoIn: ["1/32in" as const] };
    // 10 thirty-seconds are 7.9 mm.
    expect(said(["mm", 10], ["mm", 7.94], spec)).toBe("differ: beyond-delta");
    expect(said(["mm", 7.94], ["mm", 10], spec)).toBe("differ: beyond-delta");
  });
});
