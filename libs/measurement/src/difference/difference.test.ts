import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { estimate } from "../estimate/index.ts";
import { difference } from "./index.ts";

const estimates = fc
  .tuple(
    fc.double({ min: -1e3, max: 1e3, noNaN: true }),
    fc.double({ min: 0.01, max: 1e3, noNaN: true }),
    fc.double({ min: 1, max: 1e3, noNaN: true }),
  )
  .map(([value, uncertainty, degrees]) => estimate(value, uncertainty, degrees));

describe("difference", () => {
  it("has the result its example states", () => {
    expect(difference(estimate(10, 3), estimate(4, 4))).toEqual({
      value: 6,
      standardUncertainty: 5,
      degreesOfFreedom: Infinity,
    });
  });

  it("reads the degrees of freedom of both", () => {
    expect(difference(estimate(1, 1, 4), estimate(2, 1, 4)).degreesOfFreedom).toBe(8);
  });

  it("changes its sign and nothing else when the sides are exchanged", () => {
    fc.assert(
      fc.property(estimates, estimates, (a, b) => {
        const [there, back] = [difference(a, b), difference(b, a)];
        expect(back.value + there.value).toBe(0);
        expect(back.standardUncertainty).toBe(there.standardUncertainty);
        expect(back.degreesOfFreedom).toBe(there.degreesOfFreedom);
      }),
      { numRuns: 1000 },
    );
  });
});
