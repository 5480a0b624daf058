import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { combineUncertainty } from "@evenhand/measurement/combine-uncertainty";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";
import type { AnswerOf } from "@evenhand/shared/answer";
import type { ReadingSpec } from "@evenhand/shared/sheet";
import {
  movingEstimate,
  movingSide,
  readSide,
  readSideInto,
  sideEstimate,
  sideEstimateInto,
  uncertaintyParts,
} from "./index.ts";

/** A reading item by hand: base unit 1/32 in, s₀ 0.3 over spots, an ordinary gauge of ±0.3. */
const treadSpec = (more: Partial<ReadingSpec> = {}): ReadingSpec => ({
  unit: "1/32in",
  alsoIn: ["mm"],
  delta: { absolute: 2, share: 0 },
  repeatability: { value: 0.3, share: 0, degreesOfFreedom: 30, over: "spots" },
  placement: 0,
  betterIs: "higher",
  plausible: [0, 20],
  ask: { readings: 1, spots: 3 },
  byEye: { absolute: 2, share: 0 },
  instrument: { name: "tread gauge", resolution: 0.1, accuracy: { absolute: 0.3, share: 0 } },
  limits: [],
  alarms: [],
  spots: [],
  ...more,
});
const gauge = { id: "gauge", name: "tread gauge" };
const reading = (unit: AnswerOf<"reading">["unit"], ...values: number[]): AnswerOf<"reading"> => ({
  kind: "reading",
  unit,
  values: values.map((value) => ({ value })),
});

const across = (...values: number[]): AnswerOf<"reading"> => ({
  kind: "reading",
  unit: "1/32in",
  values: values.map((value, index) => ({ value, spot: `s${index}` })),
});

const spec = treadSpec();
const repeats = treadSpec({
  repeatability: { value: 0.3, share: 0, degreesOfFreedom: 30, over: "repeats" },
  placement: 0.4,
});

describe("readSide", () => {
  it("reads in the item's base unit", () => {
    const side = readSide(reading("in", 0.25, 0.25, 0.25), spec, gauge);
    expect(side).toMatchObject({ mean: 8, count: 3, lowest: 8, highest: 8, samples: 3, byEye: false });
  });

  it("combines s₀²/n + r²/12 + a²/3", () => {
    const side = readSide(reading("1/32in", 8, 8, 8), spec, gauge);
    const expected = Math.sqrt(0.3 ** 2 / 3 + 0.1 ** 2 / 12 + 0.3 ** 2 / 3);
    expect(combineUncertainty(uncertaintyParts(side, true))).toBeCloseTo(expected, 12);
  });

  it("adds p²/m over the spots touched where s₀ is of repeats", () => {
    const side = readSide(reading("1/32in", 8, 8, 8), repeats, gauge);
    const expected = Math.sqrt(0.3 ** 2 / 3 + 0.1 ** 2 / 12 + 0.4 ** 2 / 3);
    expect(combineUncertainty(uncertaintyParts(side, false))).toBeCloseTo(expected, 12);
  });

  it("counts named spots, whatever the number of readings", () => {
    const answer = reading("1/32in", 8, 8, 8);
    const values = answer.values.map((value, index) => ({ ...value, spot: index < 2 ? "outer" : "inner" }));
    expect(readSide({ ...answer, values }, repeats, gauge).spots).toBe(2);
  });

  it("takes no more spots than the sheet asks for where none is named", () => {
    const side = readSide(reading("1/32in", 8, 8, 8), treadSpec({ ask: { readings: 3, spots: 1 } }), gauge);
    expect(side.spots).toBe(1);
  });

  it("does not count a spot read twice as two where s₀ is the spread over spots", () => {
    const values = [
      { value: 8, spot: "outer" },
      { value: 6, spot: "outer" },
      { value: 4, spot: "inner" },
    ];
    expect(readSide({ kind: "reading", unit: "1/32in", values }, spec, gauge)).toMatchObject({
      samples: 2,
      mean: 5.5,
    });
  });

  it("lets each reading without a spot stand for itself beside named ones", () => {
    const values = [{ value: 8, spot: "outer" }, { value: 6 }, { value: 4 }];
    expect(readSide({ kind: "reading", unit: "1/32in", values }, spec, gauge).samples).toBe(3);
  });

  it("takes the accuracy by eye where no instrument is named", () => {
    const side = readSide(
      reading("1/32in", 8),
      treadSpec({ byEye: { absolute: 1, share: 0.25 }, eyesRead: true }),
      undefined,
    );
    expect(side).toMatchObject({ accuracy: 3, resolution: 0, byEye: true });
  });

  it("takes twice the ordinary instrument's accuracy where eyes cannot read it", () => {
    expect(readSide(reading("1/32in", 8), spec, undefined)).toMatchObject({
      accuracy: 0.6,
      byEye: false,
      unnamed: true,
    });
  });

  it("asks nobody to name what is part of the car or its papers, and takes it at its own accuracy", () => {
    const read = treadSpec({ instrument: { ...spec.instrument, readOff: true } });
    expect(readSide(reading("1/32in", 8), read, undefined)).toMatchObject({
      accuracy: 0.3,
      byEye: false,
      unnamed: false,
    });
  });

  it("holds an instrument that states no accuracy to the item's ordinary one", () => {
    expect(readSide(reading("1/32in", 8), spec, gauge)).toMatchObject({ accuracy: 0.3, resolution: 0.1 });
  });

  it("takes an instrument's own figures in its own units", () => {
    const fine = {
      ...gauge,
      resolution: { value: 0.01, unit: "in" as const },
      accuracy: { absolute: { value: 1 / 64, unit: "in" as const }, share: 0.01 },
    };
    const side = readSide(reading("1/32in", 10), spec, fine);
    expect(side.resolution).toBeCloseTo(0.32, 12);
    expect(side.accuracy).toBeCloseTo(0.6, 12);
  });

  it("passes over figures of an instrument for another quantity", () => {
    const other = {
      ...gauge,
      resolution: { value: 1, unit: "psi" as const },
      accuracy: { absolute: { value: 1, unit: "psi" as const }, share: 0 },
    };
    expect(readSide(reading("1/32in", 8), spec, other)).toMatchObject({ accuracy: 0.3, resolution: 0.1 });
  });

  it("accepts an accuracy stated as a share alone", () => {
    const side = readSide(reading("1/32in", 8), spec, { ...gauge, accuracy: { share: 0.05 } });
    expect(side.accuracy).toBeCloseTo(0.4, 12);
  });
});

describe("the scatter used", () => {
  it("is s₀ where two or three readings scatter no more, and where there is one", () => {
    for (const answer of [reading("1/32in", 8, 8.4), reading("1/32in", 8, 8), reading("1/32in", 8)]) {
      expect(readSide(answer, spec, gauge)).toMatchObject({
        scatter: 0.3,
        scatterDegreesOfFreedom: 30,
        scatterReplaced: false,
      });
    }
  });

  it("is s₀ moderated by what was seen where that is more: (6·0.3² + ν·s²)/(6 + ν)", () => {
    const two = readSide(reading("1/32in", 8, 10), spec, gauge);
    expect(two).toMatchObject({ patterned: false, scatterReplaced: true });
    expect(two.scatter ** 2).toBeCloseTo((6 * 0.09 + 1 * 2) / 7, 12);
    expect(two.scatterDegreesOfFreedom).toBeGreaterThan(7);
    expect(two.scatterDegreesOfFreedom).toBeLessThan(30);
    const three = readSide(reading("1/32in", 8, 10, 12), spec, gauge);
    expect(three.scatter ** 2).toBeCloseTo((6 * 0.09 + 2 * 4) / 8, 12);
  });

  it.each([
    ["over spots", spec],
    ["of repeats", { ...repeats, ask: { readings: 3, spots: 1 } }],
    ["of repeats over several spots", repeats],
  ])("has no edge: with more of it %s U grows, and never by a step", (_name, of) => {
    const U = (apart: number): number => {
      const side = readSide(reading("1/32in", 10 - apart, 10, 10 + apart), of, gauge);
      const { standardUncertainty, degreesOfFreedom } = sideEstimate(side, true);
      return coverageFactor(degreesOfFreedom) * standardUncertainty;
    };
    const all = Array.from({ length: 3000 }, (_, thousandths) => U(thousandths / 1000));
    const steps = all.slice(1).map((one, index) => one - (all[index] ?? 0));
    expect(Math.min(...steps)).toBeGreaterThan(-1e-12);
    expect(Math.max(...steps)).toBeLessThan(0.002);
  });

  it("takes placement off what was seen over several spots that are not named", () => {
    const wide = { ...repeats, placement: 0.8 };
    const within = readSide(reading("1/32in", 8, 9.2, 8.2), wide, gauge);
    expect(within).toMatchObject({ scatter: 0.3, scatterReplaced: false });
    const beyond = readSide(reading("1/32in", 8, 10.4, 8.2), wide, gauge);
    const seen = (0.8667 ** 2 + 1.5333 ** 2 + 0.6667 ** 2) / 2;
    expect(beyond.scatter ** 2).toBeCloseTo((6 * 0.09 + 2 * (seen - 0.64)) / 8, 3);
    const one = readSide(reading("1/32in", 8, 9.2, 8.2), { ...wide, ask: { readings: 3, spots: 1 } }, gauge);
    expect(one.scatterReplaced).toBe(true);
  });

  it("is s₀ at named spots however far apart they lie, and at 1 % they are a pattern", () => {
    const most = 0.3 * Math.sqrt(7.5624) * Math.SQRT2;
    const s0 = { scatter: 0.3, scatterDegreesOfFreedom: 30, scatterReplaced: false };
    expect(readSide(across(8, 8 + most * 0.999), spec, gauge)).toMatchObject({ ...s0, patterned: false });
    expect(readSide(across(8, 8 + most * 1.001), spec, gauge)).toMatchObject({ ...s0, patterned: true });
    const wide = { ...repeats, placement: 0.8 };
    expect(readSide(across(8, 8 + most * 1.001), wide, gauge)).toMatchObject({ ...s0, patterned: false });
  });

  it("grows with the reading by its share, in quadrature", () => {
    const shared = treadSpec({
      repeatability: { value: 0.3, share: 0.05, degreesOfFreedom: 40, over: "spots" },
    });
    expect(readSide(reading("1/32in", 8), shared, gauge)).toMatchObject({
      scatter: 0.5,
      scatterDegreesOfFreedom: 40,
    });
  });
});

describe("sideEstimate", () => {
  const size = fc.oneof(fc.constant(0), fc.double({ min: 1e-6, max: 100, noNaN: true }));

  it("is to the last bit what the parts give by the two equations", () => {
    const parts = { scatter: size, resolution: size, accuracy: size, placement: size };
    const counts = { samples: fc.integer({ min: 1, max: 9 }), spots: fc.integer({ min: 1, max: 9 }) };
    fc.assert(
      fc.property(fc.record({ ...parts, ...counts }), fc.boolean(), (figures, withAccuracy) => {
        const side = { ...readSide(reading("1/32in", 8), spec, gauge), ...figures };
        const known = uncertaintyParts(side, withAccuracy);
        expect(sideEstimate(side, withAccuracy)).toEqual({
          value: 8,
          standardUncertainty: combineUncertainty(known),
          degreesOfFreedom: welchSatterthwaite(known),
        });
      }),
      { numRuns: 1000 },
    );
  });
});

describe("a side that moves over several readings", () => {
  const eye = treadSpec({ eyesRead: true });
  const named = ["outer", "inner", "outer"].map((spot, index) => ({ value: 4 + 3 * index, spot }));
  const cases: Parameters<typeof readSide>[] = [
    [reading("1/32in", 2, 9, 16), repeats, gauge],
    [{ kind: "reading", unit: "1/32in", values: named }, spec, undefined],
    [reading("in", 0.25), eye, undefined],
    [reading("mm", 6.3, 6.5), spec, gauge],
  ];

  it("keeps nothing of the reading before", () => {
    const side = movingSide();
    const estimate = movingEstimate();
    for (const [answer, ofItem, instrument] of [...cases, ...cases.toReversed()]) {
      const alone = readSide(answer, ofItem, instrument);
      expect(readSideInto(side, answer, ofItem, instrument)).toEqual(alone);
      expect(sideEstimateInto(estimate, side, false)).toEqual(sideEstimate(alone, false));
    }
  });
});
