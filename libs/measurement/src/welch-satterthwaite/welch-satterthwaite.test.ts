import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { lossOf, welchSatterthwaite } from "./index.ts";

const components = fc.array(
  fc.record({
    standardUncertainty: fc.double({ min: 1e-3, max: 1e3, noNaN: true }),
    sensitivity: fc.double({ min: 0.1, max: 10, noNaN: true }),
    degreesOfFreedom: fc.double({ min: 1, max: 100, noNaN: true }),
  }),
  { minLength: 1, maxLength: 8 },
);

describe("welchSatterthwaite", () => {
  it("has the result its example states", () => {
    const one = { standardUncertainty: 1, degreesOfFreedom: 4 };
    expect(welchSatterthwaite([one, one])).toBe(8);
  });

  it("is infinite where nothing is uncertain about the uncertainties", () => {
    expect(welchSatterthwaite([])).toBe(Infinity);
    expect(welchSatterthwaite([{ standardUncertainty: 1 }])).toBe(Infinity);
    expect(welchSatterthwaite([{ standardUncertainty: 0, degreesOfFreedom: 3 }])).toBe(Infinity);
  });

  it("reads the sensitivity", () => {
    const list = [
      { standardUncertainty: 1, sensitivity: 2, degreesOfFreedom: 2 },
      { standardUncertainty: 1, degreesOfFreedom: Infinity },
    ];
    expect(welchSatterthwaite(list)).toBeCloseTo(25 / (16 / 2), 12);
  });

  it("refuses degrees of freedom that are not positive", () => {
    const refusal = new RangeError("Degrees of freedom must be positive: 0");
    expect(() => welchSatterthwaite([{ standardUncertainty: 1, degreesOfFreedom: 0 }])).toThrow(refusal);
  });

  it("lies between the fewest and all together, and does not mind the unit", () => {
    fc.assert(
      fc.property(components, fc.constantFrom(1e-120, 1e-6, 1e120), (list, unit) => {
        const degrees = list.map(({ degreesOfFreedom }) => degreesOfFreedom);
        const effective = welchSatterthwaite(list);
        expect(effective).toBeGreaterThanOrEqual(Math.min(...degrees) * (1 - 1e-9));
        expect(effective).toBeLessThanOrEqual(degrees.reduce((a, b) => a + b, 0) * (1 + 1e-9));
        const inOther = list.map((one) => ({ ...one, standardUncertainty: one.standardUncertainty * unit }));
        expect(welchSatterthwaite(inOther) / effective).toBeCloseTo(1, 9);
      }),
      { numRuns: 1000 },
    );
  });
});

describe("lossOf", () => {
  it("is the square of a component's share of the variance, over its degrees of freedom", () => {
    expect(lossOf(1, 2, 4)).toBe(0.0625);
    expect(lossOf(1, 2, Number.POSITIVE_INFINITY)).toBe(0);
  });

  it("asks for positive degrees of freedom, also where nothing varies", () => {
    expect(lossOf(0, 0, 4)).toBe(0);
    expect(() => lossOf(0, 0, 0)).toThrow(RangeError);
  });
});
