import { describe, expect, it } from "vitest";
import { crossedEffects } from "@evenhand/measurement/crossed-effects";
import type { CrossedReading, VarianceComponents } from "@evenhand/measurement/crossed-effects";
import { varianceComponents } from "@evenhand/measurement/variance-components";
import penicillin from "../../fixtures/published/crossed-effects.json" with { type: "json" };

/** Plates stand for inspectors, samples for gauges. */
const readings: CrossedReading[] = Object.entries(penicillin.plates).flatMap(([inspector, diameters]) =>
  diameters.map((value, index) => ({ inspector, gauge: penicillin.samples[index] ?? "", value })),
);
const published: VarianceComponents = {
  inspector: penicillin.variances.plate,
  gauge: penicillin.variances.sample,
  residual: penicillin.variances.residual,
};

/** Solves a symmetric positive definite system by Gauss's elimination. */
const solve = (matrix: readonly (readonly number[])[], right: readonly number[]): number[] => {
  const rows = matrix.map((row, index) => [...row, right[index] ?? 0]);
  for (const [k, pivot] of rows.entries()) {
    for (const row of rows.slice(k + 1)) {
      const factor = (row[k] ?? 0) / (pivot[k] ?? 0);
      for (let j = k; j < row.length; j += 1) row[j] = (row[j] ?? 0) - factor * (pivot[j] ?? 0);
    }
  }
  const solution = right.map(() => 0);
  for (let k = rows.length - 1; k >= 0; k -= 1) {
    const row = rows[k] ?? [];
    const known = solution.reduce((sum, value, j) => sum + (j > k ? value * (row[j] ?? 0) : 0), 0);
    solution[k] = ((row.at(-1) ?? 0) - known) / (row[k] ?? 0);
  }
  return solution;
};

const total = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);

/** Six samples of penicillin on 24 plates (Davies and Goldsmith 1972); see the fixture for data and fits. */
describe("penicillin, crossed effects", () => {
  it("has the variances of R's lme4 and Julia's Metida", () => {
    const found = varianceComponents(readings);
    expect(Math.sqrt(found.inspector)).toBeCloseTo(penicillin.standardDeviations.plate, 4);
    expect(Math.sqrt(found.gauge)).toBeCloseTo(penicillin.standardDeviations.sample, 4);
    expect(Math.sqrt(found.residual)).toBeCloseTo(penicillin.standardDeviations.residual, 4);
    expect(Math.abs(found.inspector - published.inspector)).toBeLessThan(1e-5);
    expect(Math.abs(found.gauge - published.gauge)).toBeLessThan(1e-5);
    expect(Math.abs(found.residual - published.residual)).toBeLessThan(1e-5);
  });

  it("has their mean and its standard error", () => {
    const { mean, meanStandardError } = crossedEffects(readings, published);
    expect(mean).toBeCloseTo(penicillin.mean, 4);
    expect(Math.abs(meanStandardError - penicillin.meanStandardError)).toBeLessThan(2e-6);
  });

  it("has the predictions lme4 prints, from memory", () => {
    const { gauges } = crossedEffects(readings, published);
    for (const [sample, effect] of Object.entries(penicillin.predictionsFromMemory)) {
      expect(gauges.get(sample)?.effect).toBeCloseTo(effect, 3);
    }
  });

  it("has the predictions of the definition, G·Z′·V⁻¹·(y − mean), also where a third is missing", () => {
    const some = readings.filter((_, index) => index % 3 !== 1);
    const { inspector, gauge, residual } = published;
    const covariance = some.map((one) =>
      some.map(
        (other) =>
          (one.inspector === other.inspector ? inspector : 0) +
          (one.gauge === other.gauge ? gauge : 0) +
          (one === other ? residual : 0),
      ),
    );
    const precision = solve(
      covariance,
      some.map(() => 1),
    );
    const mean =
      total(precision.map((weight, index) => weight * (some[index]?.value ?? 0))) / total(precision);
    const weighted = solve(
      covariance,
      some.map(({ value }) => value - mean),
    );
    const found = crossedEffects(some, published);
    expect(found.mean).toBeCloseTo(mean, 9);
    expect(found.meanStandardError).toBeCloseTo(1 / Math.sqrt(total(precision)), 9);
    for (const [name, { effect }] of found.inspectors) {
      const own = weighted.filter((_, index) => some[index]?.inspector === name);
      expect(effect).toBeCloseTo(inspector * total(own), 9);
    }
    for (const [name, { effect }] of found.gauges) {
      const own = weighted.filter((_, index) => some[index]?.gauge === name);
      expect(effect).toBeCloseTo(gauge * total(own), 9);
    }
  });
});
