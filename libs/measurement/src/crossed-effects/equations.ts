import type { CrossedReading, VarianceComponents } from "./index.ts";

/** Henderson's equations, solved: mean first, then inspectors and gauges in the order met, with the inverse of the left side. */
export type Solved = {
  readonly inspectors: readonly string[];
  readonly gauges: readonly string[];
  readonly solution: readonly number[];
  readonly inverse: readonly (readonly number[])[];
};

const numbered = (names: readonly string[]): Map<string, number> =>
  new Map(Array.from(new Set(names), (name, index) => [name, index]));

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

/** The left side [X′X X′Z; Z′X Z′Z + λ] and the right side of the equations. */
const equationsOf = (
  readings: readonly CrossedReading[],
  inspectors: ReadonlyMap<string, number>,
  gauges: ReadonlyMap<string, number>,
  { inspector, gauge, residual }: VarianceComponents,
) => {
  const size = 1 + inspectors.size + gauges.size;
  const left = Array.from({ length: size }, (_, i) =>
    Array.from({ length: size }, (__, j) => {
      if (i !== j || i === 0) return 0;
      return residual / (i <= inspectors.size ? inspector : gauge);
    }),
  );
  const right = Array.from({ length: size }, () => 0);
  for (const reading of readings) {
    const touched = [
      0,
      1 + (inspectors.get(reading.inspector) ?? Number.NaN),
      1 + inspectors.size + (gauges.get(reading.gauge) ?? Number.NaN),
    ];
    for (const i of touched) {
      right[i] = (right[i] ?? 0) + reading.value;
      const row = left[i];
      for (const j of touched) if (row !== undefined) row[j] = (row[j] ?? 0) + 1;
    }
  }
  return { left, right };
};

/** Sets up and solves Henderson's mixed-model equations for readings that inspectors and gauges cross in. */
export const solveEquations = (
  readings: readonly CrossedReading[],
  components: VarianceComponents,
): Solved => {
  const inspectors = numbered(readings.map(({ inspector }) => inspector));
  const gauges = numbered(readings.map(({ gauge }) => gauge));
  const { left, right } = equationsOf(readings, inspectors, gauges, components);
  invert(left);
  const solution = left.map((row) => row.reduce((sum, cell, j) => sum + cell * (right[j] ?? 0), 0));
  return {
    inspectors: Array.from(inspectors.keys()),
    gauges: Array.from(gauges.keys()),
    solution,
    inverse: left,
  };
};
