import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { roundsAlike } from "./index.ts";

describe("roundsAlike", () => {
  it.each([0.2, 1, 3])("is how often it happens, rounded to %d u", (step) => {
    const random = seededRandom(11);
    let alike = 0;
    for (let round = 0; round < 20_000; round += 1) {
      const [truth, apart] = [random() * step, normalDeviate(random)];
      if (Math.round(truth / step) === Math.round((truth + apart) / step)) alike += 1;
    }
    expect(Math.abs(alike / 20_000 - roundsAlike(step, 1))).toBeLessThan(0.012);
  });

  it("is nought where nothing is rounded and 1 where nothing differs, or all is one figure", () => {
    expect(roundsAlike(0, 1)).toBe(0);
    expect(roundsAlike(1, 0)).toBe(1);
    expect(roundsAlike(0, 0)).toBe(1);
    expect(roundsAlike(Number.POSITIVE_INFINITY, 1)).toBe(1);
    expect(roundsAlike(1, 1)).toBeCloseTo(0.3687, 4);
  });

  it("is a chance, larger for coarser figures and smaller for more noise, in any unit", () => {
    const size = fc.double({ min: 1e-3, max: 1e3, noNaN: true });
    fc.assert(
      fc.property(size, size, fc.double({ min: 1, max: 9, noNaN: true }), (step, u, more) => {
        const chance = roundsAlike(step, u);
        expect(chance).toBeGreaterThanOrEqual(0);
        expect(chance).toBeLessThanOrEqual(1);
        expect(roundsAlike(step * more, u)).toBeGreaterThanOrEqual(chance - 1e-12);
        expect(roundsAlike(step, u * more)).toBeLessThanOrEqual(chance + 1e-12);
        expect(roundsAlike(step * 25.4, u * 25.4)).toBeCloseTo(chance, 9);
      }),
      { numRuns: 1000 },
    );
  });

  it("refuses what is negative", () => {
    const refusal = new RangeError("A step and a standard uncertainty must be numbers from 0.");
    expect(() => roundsAlike(-1, 1)).toThrow(refusal);
    expect(() => roundsAlike(1, -1)).toThrow(refusal);
  });
});
