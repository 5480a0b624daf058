import { describe, expect, it } from "vitest";
import { estimate } from "./index.ts";

describe("estimate", () => {
  it("has the result its example states", () => {
    expect(estimate(31, 0.5)).toEqual({ value: 31, standardUncertainty: 0.5, degreesOfFreedom: Infinity });
  });

  it("takes no uncertainty at all and half a degree of freedom", () => {
    expect(estimate(-3, 0, 0.5)).toEqual({ value: -3, standardUncertainty: 0, degreesOfFreedom: 0.5 });
  });

  it.each([
    [[Number.NaN, 1, 1], "The value must be a finite number: NaN"],
    [[Infinity, 1, 1], "The value must be a finite number: Infinity"],
    [[1, -0.1, 1], "The standard uncertainty must be a number from 0: -0.1"],
    [[1, Number.NaN, 1], "The standard uncertainty must be a number from 0: NaN"],
    [[1, Infinity, 1], "The standard uncertainty must be a number from 0: Infinity"],
    [[1, 1, 0], "Degrees of freedom must be positive: 0"],
    [[1, 1, Number.NaN], "Degrees of freedom must be positive: NaN"],
  ] as const)("refuses %j", ([value, uncertainty, degrees], message) => {
    expect(() => estimate(value, uncertainty, degrees)).toThrow(new RangeError(message));
  });
});
