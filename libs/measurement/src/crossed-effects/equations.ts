import type { CrossedReading, VarianceComponents } from "./index.ts";

/**
 * Henderson's equations, solved: inspectors first, then gauges, each in the order met, with the inverse of what is left of the left side once
 * the means were taken out of it, and the mean of each group that has one of its own.
 */
export type Solved = {
  readonly inspectors: readonly string[];
  readonly gauges: readonly string[];
  readonly solution: readonly number[];
  readonly inverse: readonly (readonly number[])[];
  readonly means: ReadonlyMap<string, number>;
};

/** A reading by the numbers of its two effects. */
type Touched = { readonly inspector: number; readonly gauge: number; readonly value: number };

const numbered = (names: readonly string[]): Map<string, number> =>
  new Map(Array.from(new Set(names), (name, index) => [name, index]));

/** Readings whose mean is their own: those against one and the same; all where nobody is named. */
export const groupOf = ({ against = "" }: CrossedReading): string => against;

/**
 * Turns a symmetric positive definite matrix into its inverse, in place, by sweeping each row once (Goodnight 1979, the sweep operator; no
 * exchange of rows is needed for such a matrix).
 */
const invert = (matrix: number[][]): void => {
  for (const [k, pivotRow] of matrix.entries()) {
    const pivot = pivotRow[k] ?? Number.NaN;
    for (let j = 0; j < pivotRow.length; j += 1)
      pivotRow[j] = j === k ? 1 / pivot : (pivotRow[j] ?? 0) / pivot;
    for (const [i, row] of matrix.entries()) {
      if (i === k) continue;
      const factor = row[k] ?? 0;
      for (let j = 0; j < row.length; j += 1) {
        row[j] = j === k ? -factor / pivot : (row[j] ?? 0) - factor * (pivotRow[j] ?? 0);
      }
    }
  }
};

const add = (row: number[] | undefined, at: number, value: number): void => {
  if (row !== undefined) row[at] = (row[at] ?? 0) + value;
};

/** How often each effect stands in a group, and the sum of its values. */
const countsOf = (group: readonly Touched[]) => {
  const counts = new Map<number, number>();
  let sum = 0;
  for (const { inspector, gauge, value } of group) {
    for (const at of [inspector, gauge]) counts.set(at, (counts.get(at) ?? 0) + 1);
    sum += value;
  }
  return { counts: Array.from(counts), mean: sum / group.length };
};

/**
 * The left side Z′Z + λ and the right side Z′y, less what the groups' means take out of them: Z′X(X′X)⁻¹X′Z and Z′X(X′X)⁻¹X′y (the
 * equations absorbed, as Henderson calls it; X′X is diagonal).
 */
const absorbed = (groups: readonly (readonly Touched[])[], ratios: readonly number[]) => {
  const left = ratios.map((ratio, i) => ratios.map((_, j) => (i === j ? ratio : 0)));
  const right = ratios.map(() => 0);
  for (const group of groups) {
    for (const { inspector, gauge, value } of group) {
      for (const i of [inspector, gauge]) {
        add(right, i, value);
        for (const j of [inspector, gauge]) add(left[i], j, 1);
      }
    }
    const { counts, mean } = countsOf(group);
    for (const [i, count] of counts) {
      add(right, i, -count * mean);
      for (const [j, other] of counts) add(left[i], j, (-count * other) / group.length);
    }
  }
  return { left, right };
};

const meanLeft = (group: readonly Touched[], solution: readonly number[]): number =>
  group.reduce(
    (sum, { inspector, gauge, value }) => sum + value - (solution[inspector] ?? 0) - (solution[gauge] ?? 0),
    0,
  ) / group.length;

/** Sets up and solves Henderson's mixed-model equations for readings that inspectors and gauges cross in. */
export const solveEquations = (
  readings: readonly CrossedReading[],
  { inspector, gauge, residual }: VarianceComponents,
): Solved => {
  const inspectors = numbered(readings.map((one) => one.inspector));
  const gauges = numbered(readings.map((one) => one.gauge));
  const touched = (reading: CrossedReading): Touched => ({
    inspector: inspectors.get(reading.inspector) ?? Number.NaN,
    gauge: inspectors.size + (gauges.get(reading.gauge) ?? Number.NaN),
    value: reading.value,
  });
  const groups = Array.from(Map.groupBy(readings, groupOf), ([name, group]) => ({
    name,
    group: group.map(touched),
  }));
  const ratios = [
    ...Array.from(inspectors, () => residual / inspector),
    ...Array.from(gauges, () => residual / gauge),
  ];
  const { left, right } = absorbed(
    groups.map(({ group }) => group),
    ratios,
  );
  invert(left);
  const solution = left.map((row) => row.reduce((sum, cell, j) => sum + cell * (right[j] ?? 0), 0));
  return {
    inspectors: Array.from(inspectors.keys()),
    gauges: Array.from(gauges.keys()),
    solution,
    inverse: left,
    means: new Map(groups.map(({ name, group }) => [name, meanLeft(group, solution)])),
  };
};
