import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { ROUNDING_SHARE, classifyInterval } from "./index.ts";
import type { IntervalOutcome } from "./index.ts";

const RUNS = { numRuns: 1000 };
const ORDER: readonly IntervalOutcome[] = ["agree", "consistent", "doubtful", "differ"];
const size = fc.double({ min: 0, max: 10, noNaN: true });
const delta = fc.double({ min: 0.01, max: 10, noNaN: true });

describe("classifyInterval", () => {
  it.each([
    [0.5, 0.3, 1, "agree"],
    [1.5, 0.4, 1, "differ"],
    [0.5, 0.6, 1, "consistent"],
    [0.8, 0.6, 1, "doubtful"],
    [-0.8, 0.6, 1, "doubtful"],
    [0, 0, 1, "agree"],
    [0, 5, 1, "consistent"],
    [1, 0, 1, "agree"],
    [0.5, 0.5, 1, "agree"],
    [1.5, 0.5, 1, "doubtful"],
    [-1.5, 0.5, 1, "doubtful"],
    [2, 2, 1, "consistent"],
    [0, Infinity, 1, "consistent"],
    [0, 0, 0, "agree"],
    [0.1, 0, 0, "differ"],
    [1, 1, 0, "consistent"],
  ] as const)("difference %d, uncertainty %d, δ %d: %s", (difference, uncertainty, matters, outcome) => {
    expect(classifyInterval(difference, uncertainty, matters)).toBe(outcome);
  });

  it("takes under 1e-9 of δ as rounding, at every border, and no more", () => {
    const little = 0.5 * ROUNDING_SHARE;
    const more = 2 * ROUNDING_SHARE;
    expect(classifyInterval(10 + 10 * little, 0, 10)).toBe("agree");
    expect(classifyInterval(10 + 10 * more, 0, 10)).toBe("differ");
    expect(classifyInterval(15 + 10 * little, 5, 10)).toBe("doubtful");
    expect(classifyInterval(15 + 10 * more, 5, 10)).toBe("differ");
    expect(classifyInterval(20 + 10 * little, 20, 10)).toBe("consistent");
    expect(classifyInterval(20 + 10 * more, 20, 10)).toBe("doubtful");
    expect(ROUNDING_SHARE).toBe(1e-9);
  });

  it("is as the interval lies, by its ends", () => {
    fc.assert(
      fc.property(fc.double({ min: -20, max: 20, noNaN: true }), size, delta, (difference, U, matters) => {
        const [low, high] = [difference - U, difference + U];
        const borders = [low - matters, low + matters, high - matters, high + matters, low, high];
        fc.pre(borders.every((border) => Math.abs(border) > 1e-7));
        const expected = ((): IntervalOutcome => {
          if (low > -matters && high < matters) return "agree";
          if (low > matters || high < -matters) return "differ";
          return low < 0 && high > 0 ? "consistent" : "doubtful";
        })();
        expect(classifyInterval(difference, U, matters)).toBe(expected);
      }),
      RUNS,
    );
  });

  it("is never milder farther away", () => {
    fc.assert(
      fc.property(size, size, size, delta, (near, extra, U, matters) => {
        const [here, farther] = [near, near + extra].map((distance) =>
          ORDER.indexOf(classifyInterval(distance, U, matters)),
        );
        expect(farther).toBeGreaterThanOrEqual(here ?? Number.NaN);
      }),
      RUNS,
    );
  });

  it("does not turn agree into differ or back as the uncertainty shrinks", () => {
    fc.assert(
      fc.property(
        size,
        size,
        fc.double({ min: 0, max: 1, noNaN: true }),
        delta,
        (distance, U, share, matters) => {
          const [wide, narrow] = [U, U * share].map((u) => classifyInterval(distance, u, matters));
          const settled = wide === "agree" || wide === "differ";
          expect(settled ? narrow : wide).toBe(wide);
        },
      ),
      RUNS,
    );
  });

  it("does not see which side is which", () => {
    fc.assert(
      fc.property(size, size, delta, (difference, U, matters) => {
        expect(classifyInterval(-difference, U, matters)).toBe(classifyInterval(difference, U, matters));
      }),
      RUNS,
    );
  });

  it("does not see the unit", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 0, max: 40 }),
        fc.integer({ min: 1, max: 20 }),
        (difference, U, matters) => {
          const [a = 0, b = 0, c = 0] = [difference, U, matters].map((figure) => (figure / 8) * 25.4);
          expect(classifyInterval(a, b, c)).toBe(classifyInterval(difference / 8, U / 8, matters / 8));
        },
      ),
      RUNS,
    );
  });

  it.each([
    [Number.NaN, 1, 1, "The difference must be a number: NaN"],
    [Infinity, 1, 1, "The difference must be a number: Infinity"],
    [1, -1, 1, "The uncertainty must be a number from 0: -1"],
    [1, Number.NaN, 1, "The uncertainty must be a number from 0: NaN"],
    [1, 1, -1, "The difference that matters must be a number from 0: -1"],
    [1, 1, Number.NaN, "The difference that matters must be a number from 0: NaN"],
  ])("refuses %d, %d, %d", (difference, uncertainty, matters, message) => {
    expect(() => classifyInterval(difference, uncertainty, matters)).toThrow(new RangeError(message));
  });
});
