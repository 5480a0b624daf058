import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { classifyInterval } from "../equivalence/index.ts";
import { expandedUncertainty } from "../expanded-uncertainty/index.ts";
import { welchSatterthwaite } from "../welch-satterthwaite/index.ts";
import { combineUncertainty } from "../combine-uncertainty/index.ts";
import { readingsToSettle } from "./index.ts";
import type { ReadingPlan } from "./index.ts";

const known = (standardUncertainty: number) => ({ standardUncertainty, degreesOfFreedom: Infinity });

const plan: ReadingPlan = {
  difference: 0,
  delta: 1,
  resolution: 0,
  accuracy: 0,
  placement: 0,
  spots: 1,
  repeatability: known(1),
  other: known(0),
};

/** U of the difference as the design has it: s₀²/n + r²/12 + a²/3 + p²/m, and the other side's. */
const uncertaintyAfter = (readings: number, one: ReadingPlan): number => {
  const { repeatability, resolution, accuracy, placement, spots, other } = one;
  const components = [
    { ...repeatability, standardUncertainty: repeatability.standardUncertainty / Math.sqrt(readings) },
    known(resolution / Math.sqrt(12)),
    known(accuracy / Math.sqrt(3)),
    known(placement / Math.sqrt(spots === "each" ? readings : spots)),
    other,
  ];
  return expandedUncertainty({
    standardUncertainty: combineUncertainty(components),
    degreesOfFreedom: welchSatterthwaite(components),
  });
};

const settled = (readings: number, one: ReadingPlan): boolean => {
  const outcome = classifyInterval(one.difference, uncertaintyAfter(readings, one), one.delta);
  return outcome === "agree" || outcome === "differ";
};

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const plans: fc.Arbitrary<ReadingPlan> = fc.record({
  difference: between(-3, 3),
  delta: between(0.2, 2),
  repeatability: fc.record({ standardUncertainty: between(0.01, 2), degreesOfFreedom: between(30, 100) }),
  resolution: between(0, 0.5),
  accuracy: between(0, 0.5),
  placement: between(0, 0.5),
  spots: fc.constantFrom<ReadingPlan["spots"]>(1, 3, "each"),
  other: fc.record({ standardUncertainty: between(0, 0.3), degreesOfFreedom: between(5, 100) }),
});

describe("readingsToSettle", () => {
  it("has the result its example states", () => {
    // 1.96/√n ≤ 1 from n = 4.
    expect(readingsToSettle(plan)).toEqual({ kind: "readings", readings: 4 });
  });

  it("counts from the difference as it stands to the nearer verdict", () => {
    expect(readingsToSettle({ ...plan, difference: 0.5 })).toEqual({ kind: "readings", readings: 16 });
    expect(readingsToSettle({ ...plan, difference: -1.5 })).toEqual({ kind: "readings", readings: 16 });
    expect(readingsToSettle({ ...plan, difference: 3 })).toEqual({ kind: "readings", readings: 1 });
  });

  it("says never where what no reading reduces is too much", () => {
    const result = readingsToSettle({ ...plan, accuracy: 1 });
    expect(result.kind).toBe("never");
    expect(result.kind === "never" && result.floor).toBeCloseTo(1.959964 / Math.sqrt(3), 6);
    expect(readingsToSettle({ ...plan, other: known(0.6) }).kind).toBe("never");
    expect(readingsToSettle({ ...plan, resolution: 2 }).kind).toBe("never");
    expect(readingsToSettle({ ...plan, placement: 0.6 }).kind).toBe("never");
  });

  it("says never at a difference of exactly δ", () => {
    expect(readingsToSettle({ ...plan, difference: 1 })).toEqual({ kind: "never", floor: 0 });
  });

  it("lets placement shrink where every reading takes a spot of its own", () => {
    const touched = { ...plan, repeatability: known(0), placement: 1 };
    expect(readingsToSettle({ ...touched, spots: "each" })).toEqual({ kind: "readings", readings: 4 });
    expect(readingsToSettle({ ...touched, spots: 4 })).toEqual({ kind: "readings", readings: 1 });
    expect(readingsToSettle({ ...touched, spots: 3 }).kind).toBe("never");
  });

  it("says too many beyond what is worth proposing", () => {
    expect(readingsToSettle({ ...plan, most: 3 })).toEqual({ kind: "tooMany", most: 3 });
    expect(readingsToSettle({ ...plan, most: 4 })).toEqual({ kind: "readings", readings: 4 });
    // 1.96·s/√n ≤ 1 at n = 100 for s = 5.1, and at 101 for s = 5.12.
    expect(readingsToSettle({ ...plan, repeatability: known(5.1) })).toEqual({
      kind: "readings",
      readings: 100,
    });
    expect(readingsToSettle({ ...plan, repeatability: known(5.12) })).toEqual({ kind: "tooMany", most: 100 });
  });

  it("reads the coverage asked for", () => {
    // 2.576/√n ≤ 1 from n = 7.
    expect(readingsToSettle({ ...plan, coverage: 0.99 })).toEqual({ kind: "readings", readings: 7 });
  });

  it("refuses a negative δ", () => {
    const refusal = new RangeError("The difference that matters must be a number from 0: -1");
    expect(() => readingsToSettle({ ...plan, delta: -1 })).toThrow(refusal);
    expect(readingsToSettle({ ...plan, delta: 0, difference: 2 })).toEqual({ kind: "readings", readings: 1 });
  });

  it("settles with that many and not with one fewer", () => {
    fc.assert(
      fc.property(plans, (one) => {
        const result = readingsToSettle(one);
        const enough = result.kind === "readings" ? result.readings : Infinity;
        const fewer = Math.min(enough - 1, 100);
        expect(enough === Infinity || settled(enough, one)).toBe(true);
        expect(fewer > 0 && settled(fewer, one)).toBe(false);
      }),
      { numRuns: 1000 },
    );
  });
});
