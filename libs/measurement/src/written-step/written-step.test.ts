import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writtenStep } from "./index.ts";

describe("writtenStep", () => {
  it.each([
    [[150, 145, 160], 5],
    [[150, 150], 50],
    [[152, 148], 2],
    [[147], 1],
    [[12.6, 12.41], 0.01],
    [[0.025, 0.03], 0.005],
    [[-40, 20], 20],
    [[0, 7], 1],
    [[1000], 1000],
  ])("%j were written in steps of %d", (values, step) => {
    expect(writtenStep(values)).toBe(step);
  });

  it("is as coarse as can be where nothing but 0 was written, and nothing where no step fits", () => {
    expect(writtenStep([0, 0])).toBe(Number.POSITIVE_INFINITY);
    expect(writtenStep([])).toBe(Number.POSITIVE_INFINITY);
    expect(writtenStep([Math.PI * 1e-6])).toBe(0);
  });

  it("divides every value, and is never coarser for more of them", () => {
    const value = fc.integer({ min: -99_999, max: 99_999 }).map((hundredths) => hundredths / 100);
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 6 }), value, (values, more) => {
        const step = writtenStep(values);
        expect(writtenStep([...values, more])).toBeLessThanOrEqual(step);
        for (const one of step === Number.POSITIVE_INFINITY ? [] : values) {
          expect(one / step).toBeCloseTo(Math.round(one / step), 5);
        }
      }),
      { numRuns: 1000 },
    );
  });
});
