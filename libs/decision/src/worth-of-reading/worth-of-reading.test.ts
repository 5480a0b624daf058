import * as fc from "fast-check";
import { expect, test } from "vitest";
import { evsi, readingTells, spreadAfter } from "./index.ts";

const left = fc.double({ min: -1e6, max: 1e6, noNaN: true });
const spread = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
const uncertainty = fc.double({ min: 0, max: 1e6, noNaN: true });
const probability = fc.double({ min: 0, max: 1, noNaN: true });
const many = { numRuns: 2_000 };

test("a look is never worth more than the truth, nor less than nothing, and a coarser one never more", () =>
  fc.assert(
    fc.property(left, spread, uncertainty, uncertainty, (mean, sigma, one, other) => {
      const worth = (u: number): number => evsi({ left: mean, spread: sigma, uncertainty: u });
      const [fine, coarse] = [Math.min(one, other), Math.max(one, other)];
      expect(worth(coarse)).toBeGreaterThanOrEqual(0);
      expect(worth(coarse)).toBeLessThanOrEqual(worth(fine) * (1 + 1e-9) + 1e-9 * sigma);
      expect(worth(fine)).toBeLessThanOrEqual(worth(0) * (1 + 1e-9) + 1e-9 * sigma);
    }),
    many,
  ));

test("what it is worth goes to that of the truth as the instrument does, and to nothing as it tells nothing", () =>
  fc.assert(
    fc.property(fc.double({ min: -3, max: 3, noNaN: true }), spread, (z, sigma) => {
      const worth = (u: number): number => evsi({ left: z * sigma, spread: sigma, uncertainty: u }) / sigma;
      expect(worth(1e-7 * sigma)).toBeCloseTo(worth(0), 10);
      expect(worth(1e9 * sigma)).toBeLessThan(1e-8);
    }),
    many,
  ));

test("what a reading tells changes nothing on the mean, lies between knowing and not, and less of it moves belief less", () =>
  fc.assert(
    fc.property(probability, spread, uncertainty, (p, sigma, u) => {
      const { says, ifSaid, ifNot } = readingTells({ probability: p, spread: sigma, uncertainty: u });
      expect(says * ifSaid + (1 - says) * ifNot).toBeCloseTo(p, 9);
      for (const each of [says, ifSaid, ifNot]) {
        expect(each).toBeGreaterThanOrEqual(0);
        expect(each).toBeLessThanOrEqual(1);
      }
      expect(ifSaid).toBeGreaterThanOrEqual(p - 1e-6);
      expect(ifNot).toBeLessThanOrEqual(p + 1e-6);
    }),
    many,
  ));

test("a perfect reading tells the truth, and one that tells nothing leaves what was believed", () => {
  expect(readingTells({ probability: 0.3, spread: 2, uncertainty: 0 })).toEqual({
    says: 0.3,
    ifSaid: 1,
    ifNot: 0,
  });
  const blind = readingTells({ probability: 0.3, spread: 1, uncertainty: 1e9 });
  expect([blind.ifSaid, blind.ifNot]).toEqual([expect.closeTo(0.3, 6), expect.closeTo(0.3, 6)]);
  // Of equal spread the correlation is 1/√2, and an orthant then holds 1/4 + asin(1/√2)/2π = 3/8.
  expect(readingTells({ probability: 0.5, spread: 1, uncertainty: 1 }).ifSaid).toBeCloseTo(0.75, 12);
});

test("nothing is known to be off: no look tells anything", () => {
  expect(spreadAfter({ spread: 0, uncertainty: 0 })).toBe(0);
  expect(evsi({ left: 3, spread: 0, uncertainty: 1 })).toBe(0);
  expect(readingTells({ probability: 0, spread: 1, uncertainty: 1 }).says).toBe(0);
});
