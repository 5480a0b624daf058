import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { studentCdf } from "../student-distribution/index.ts";
import { studentTail } from "./index.ts";

const tail = fc.record({
  t: fc.double({ min: 0, max: 40, noNaN: true }),
  degreesOfFreedom: fc.double({ min: 0.5, max: 1e6, noNaN: true }),
});

describe("studentTail", () => {
  it("is the library's probability to 2e-12 everywhere", () => {
    fc.assert(
      fc.property(tail, ({ t, degreesOfFreedom }) => {
        expect(Math.abs(studentTail(t, degreesOfFreedom) - studentCdf(-t, degreesOfFreedom))).toBeLessThan(
          2e-12,
        );
      }),
      { numRuns: 5000 },
    );
  });

  it("keeps its digits far out, from 30 degrees of freedom on", () => {
    for (const t of [0.5, 1, 2, 3, 4]) {
      expect(studentTail(t, 30) / studentCdf(-t, 30)).toBeCloseTo(1, 8);
      expect(studentTail(t, 29.9)).toBe(studentCdf(-t, 29.9));
    }
  });

  it("is the normal tail where the uncertainty is known, and a half at 0", () => {
    expect(studentTail(1.959963984540054, Number.POSITIVE_INFINITY)).toBeCloseTo(0.025, 12);
    expect(studentTail(0, 40)).toBe(0.5);
  });
});
