import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { normalDeviate, seededRandom } from "../random/index.ts";
import { crossedEffects } from "./index.ts";
import type { CrossedReading, VarianceComponents } from "./index.ts";

const EQUAL: VarianceComponents = { inspector: 1, gauge: 1, residual: 1 };
const reading = fc.record({
  inspector: fc.constantFrom("ada", "ben", "cy", "dot"),
  gauge: fc.constantFrom("one", "two", "three"),
  value: fc.double({ min: -10, max: 10, noNaN: true }),
});
const readings = fc.array(reading, { minLength: 1, maxLength: 40 });
const variance = fc.double({ min: 0.05, max: 20, noNaN: true });
const components = fc.record({ inspector: variance, gauge: variance, residual: variance });

const effectsOf = (all: readonly CrossedReading[], variances: VarianceComponents) => {
  const { mean, inspectors, gauges } = crossedEffects(all, variances);
  return {
    mean,
    inspector: (name: string) => inspectors.get(name)?.effect ?? Number.NaN,
    gauge: (name: string) => gauges.get(name)?.effect ?? Number.NaN,
  };
};

describe("crossedEffects", () => {
  it("draws the mean of one inspector's readings toward nought by n/(n + σ²ₑ/σ²), where gauges are all alike", () => {
    const all = [6, 6, 6, 6, -6, -6, -6, -6].map((value, index) => ({
      inspector: value > 0 ? "ada" : "ben",
      gauge: `${index % 4}`,
      value,
    }));
    const { mean, inspectors, gauges } = crossedEffects(all, { inspector: 3, gauge: 1, residual: 6 });
    expect(mean).toBeCloseTo(0, 12);
    expect(inspectors.get("ada")).toMatchObject({ readings: 4 });
    expect(inspectors.get("ada")?.effect).toBeCloseTo((6 * 4) / (4 + 6 / 3), 12);
    expect(inspectors.get("ben")?.effect).toBeCloseTo(-4, 12);
    for (const { effect, readings: count } of gauges.values()) {
      expect(effect).toBeCloseTo(0, 12);
      expect(count).toBe(2);
    }
  });

  it("does not blame an inspector for a gauge that reads high with everybody", () => {
    const all = ["ada", "ben", "cy", "dot"].flatMap((inspector) =>
      ["good", "high"].flatMap((gauge) =>
        inspector === "ada" && gauge === "good"
          ? []
          : [{ inspector, gauge, value: gauge === "high" ? 10 : 0 }],
      ),
    );
    const { inspectors, gauges } = crossedEffects(all, { inspector: 1, gauge: 100, residual: 0.1 });
    expect(Math.abs(inspectors.get("ada")?.effect ?? Number.NaN)).toBeLessThan(0.1);
    expect((gauges.get("high")?.effect ?? 0) - (gauges.get("good")?.effect ?? 0)).toBeCloseTo(10, 0);
  });

  it("solves Henderson's equations", () => {
    fc.assert(
      fc.property(readings, components, (all, variances) => {
        const { mean, inspector, gauge } = effectsOf(all, variances);
        const left = all.map((one) => one.value - mean - inspector(one.inspector) - gauge(one.gauge));
        const sum = (of: (one: CrossedReading) => boolean): number =>
          left.reduce(
            (total, rest, index) => total + (all.some((one, at) => at === index && of(one)) ? rest : 0),
            0,
          );
        const errors = [
          sum(() => true),
          ...all.map(
            (one) =>
              sum((other) => other.inspector === one.inspector) -
              (variances.residual / variances.inspector) * inspector(one.inspector),
          ),
          ...all.map(
            (one) =>
              sum((other) => other.gauge === one.gauge) -
              (variances.residual / variances.gauge) * gauge(one.gauge),
          ),
        ];
        expect(Math.max(...errors.map(Math.abs))).toBeLessThan(1e-6);
      }),
      { numRuns: 1000 },
    );
  });

  it("does not see the order of the readings", () => {
    fc.assert(
      fc.property(readings, components, (all, variances) => {
        const [here, there] = [effectsOf(all, variances), effectsOf(all.toReversed(), variances)];
        const apart = all.map(({ inspector }) =>
          Math.abs(here.inspector(inspector) - there.inspector(inspector)),
        );
        expect(Math.max(...apart)).toBeLessThan(1e-6);
      }),
      { numRuns: 1000 },
    );
  });

  it("gives whoever was read against a mean of their own: whatever they add to all they say reaches nobody's lean", () => {
    fc.assert(
      fc.property(
        fc.array(fc.record({ one: reading, against: fc.constantFrom("x", "y", "z") }), {
          minLength: 1,
          maxLength: 40,
        }),
        components,
        fc.double({ min: -50, max: 50, noNaN: true }),
        (all, variances, shift) => {
          const said = (by: number) =>
            all.map(({ one, against }) => ({
              ...one,
              against,
              value: one.value + (against === "y" ? by : 0),
            }));
          const [here, there] = [effectsOf(said(0), variances), effectsOf(said(shift), variances)];
          const apart = all.map(({ one }) =>
            Math.max(
              Math.abs(here.inspector(one.inspector) - there.inspector(one.inspector)),
              Math.abs(here.gauge(one.gauge) - there.gauge(one.gauge)),
            ),
          );
          expect(Math.max(...apart)).toBeLessThan(1e-6);
        },
      ),
      { numRuns: 1000 },
    );
  });

  it("learns nothing of an inspector who alone read against somebody", () => {
    const all = [4, 5, 6].map((value) => ({ inspector: "ada", gauge: "one", value, against: "x" }));
    const others = [1, 2].map((value) => ({ inspector: "ben", gauge: "two", value, against: "y" }));
    const { inspectors, mean } = crossedEffects([...all, ...others], EQUAL);
    expect(inspectors.get("ada")?.effect).toBeCloseTo(0, 12);
    expect(mean).toBeCloseTo((3 * 5 + 2 * 1.5) / 5, 12);
  });

  it("tells how far off its predictions are, of effects and of the mean", () => {
    const random = seededRandom(12);
    const draw = { lean: 0, leanError: 0, offset: 0, offsetError: 0, mean: 0, meanError: 0 };
    const rounds = 400;
    for (let round = 0; round < rounds; round += 1) {
      const [leans, offsets] = [2, 0.5].map((size) =>
        Array.from({ length: 5 }, () => size * normalDeviate(random)),
      );
      const all = Array.from({ length: 30 }, (_, index) => {
        const [i, j] = [index % 5, Math.floor(index / 5 + index) % 5];
        const value = 7 + (leans?.[i] ?? 0) + (offsets?.[j] ?? 0) + 1.5 * normalDeviate(random);
        return { inspector: `${i}`, gauge: `${j}`, value };
      });
      const found = crossedEffects(all, { inspector: 4, gauge: 0.25, residual: 2.25 });
      const [lean, offset] = [found.inspectors.get("0"), found.gauges.get("0")];
      draw.lean += ((lean?.effect ?? 0) - (leans?.[0] ?? 0)) ** 2 / rounds;
      draw.leanError = lean?.standardError ?? 0;
      draw.offset += ((offset?.effect ?? 0) - (offsets?.[0] ?? 0)) ** 2 / rounds;
      draw.offsetError = offset?.standardError ?? 0;
      draw.mean += (found.mean - 7) ** 2 / rounds;
      draw.meanError = found.meanStandardError;
    }
    expect(Math.abs(Math.sqrt(draw.lean) / draw.leanError - 1)).toBeLessThan(0.12);
    expect(Math.abs(Math.sqrt(draw.offset) / draw.offsetError - 1)).toBeLessThan(0.12);
    expect(Math.abs(Math.sqrt(draw.mean) / draw.meanError - 1)).toBeLessThan(0.12);
  });

  it("refuses no readings, what is no number, and variances that are not positive", () => {
    const one = { inspector: "ada", gauge: "one", value: 1 };
    expect(() => crossedEffects([], EQUAL)).toThrow(new RangeError("Effects need at least one reading."));
    expect(() => crossedEffects([{ ...one, value: Infinity }], EQUAL)).toThrow(
      new RangeError("Readings must be numbers."),
    );
    for (const wrong of [{ inspector: 0 }, { gauge: -1 }, { residual: Infinity }]) {
      expect(() => crossedEffects([one], { ...EQUAL, ...wrong })).toThrow(
        new RangeError("Variance components must be positive numbers."),
      );
    }
  });
});
