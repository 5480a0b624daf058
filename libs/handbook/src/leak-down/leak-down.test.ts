import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { leakDown, leakStates } from "./index.ts";

const of = (values: readonly number[], u = 0) =>
  values.map((value, index) => ({ cylinder: index + 1, leak: estimate(value, u) }));
const reason = (values: readonly number[], testPressure: number | undefined = 100, u = 0) =>
  leakDown({ cylinders: of(values, u), testPressure }).reason;

const median = (...leaks: number[]) => leakDown({ cylinders: of(leaks), testPressure: 100 }).figures.median;

describe("leakDown", () => {
  it.each([
    [[10], "good"],
    [[10.1], "worn"],
    [[20], "worn"],
    [[20.1], "poor"],
    [[4, 20.1, 12], "poor"],
    [[4, 12], "worn"],
  ])("%j: %s", (values, expected) => {
    expect(reason(values)).toBe(expected);
  });

  it("asks for 100 psi, near enough", () => {
    expect([94.9, 95, 105, 105.1].map((pressure) => reason([28], pressure))).toEqual([
      "other-pressure",
      "poor",
      "poor",
      "other-pressure",
    ]);
    expect(leakDown({ cylinders: of([28]) }).reason).toBe("other-pressure");
    expect(leakDown({ cylinders: of([28]) }).figures).not.toHaveProperty("testPressure");
  });

  it("gives a median from four cylinders on, and none of fewer", () => {
    expect(median(4, 6, 28)).toBeUndefined();
    expect(median(4, 6, 8, 28)).toEqual({ value: 7, unit: "%" });
  });

  it("names the worst cylinder and where its air goes", () => {
    const [one, two] = of([5, 28]);
    const result = leakDown({
      cylinders: [
        { ...one, cylinder: 1, leak: estimate(5, 1) },
        { ...two, cylinder: 7, leak: estimate(28, 1), escapes: ["exhaust", "crankcase"] },
      ],
      testPressure: 100,
    });
    expect(result.figures).toEqual({
      worst: { value: 28, unit: "%", standardUncertainty: 1 },
      worstCylinder: { value: 7, unit: "1" },
      testPressure: { value: 100, unit: "psi" },
    });
    expect(result.words).toEqual({ escape: "exhaust, crankcase" });
    expect(leakDown({ cylinders: of([5]), testPressure: 100 }).words).toEqual({ escape: "not noted" });
  });

  it("widens for every cylinder judged", () => {
    expect(reason([20 + 2.6], 100, 1)).toBe("poor");
    expect(reason([20 + 2.6, 1], 100, 1)).toBe("range-covers");
    expect(reason([10 - 2.6], 100, 1)).toBe("good");
    expect(reason([10 - 2.6, 1], 100, 1)).toBe("good-or-worn");
  });
});

describe("leakStates", () => {
  it("tells tight, leaking and unclear apart", () => {
    expect([...leakStates({ cylinders: of([10, 10.1, 20, 20.1]) }).values()]).toEqual([
      "tight",
      "unclear",
      "unclear",
      "leaks",
    ]);
    expect([
      ...leakStates({ cylinders: of([12, 16]) }, { "leak-down.good": 13, "leak-down.poor": 15 }).values(),
    ]).toEqual(["tight", "leaks"]);
    expect([...leakStates({ cylinders: of([7.4, 22.6], 1) }).values()]).toEqual(["unclear", "unclear"]);
  });
});
