import { groupOf, solveEquations } from "../crossed-effects/equations.ts";
import type { CrossedReading, VarianceComponents } from "../crossed-effects/index.ts";
import { mean } from "../type-a/index.ts";

/** How many steps are taken at most, and at which share of the whole variance a step is the last. */
export type Patience = { readonly steps: number; readonly close: number };

/** Each step comes nearer by a share of what is left; where a component is tiny that share is small. */
const EXACT: Patience = { steps: 5000, close: 1e-10 };
/** A component is not let die, since its equations divide by it. */
const LEAST_SHARE = 1e-9;

/** How many means the readings have of their own. */
const countMeans = (readings: readonly CrossedReading[]): number => new Set(readings.map(groupOf)).size;

/** About the mean of each group. */
const varianceOf = (readings: readonly CrossedReading[]): number => {
  const groups = Map.groupBy(readings, groupOf);
  const means = new Map(Array.from(groups, ([name, group]) => [name, mean(group.map(({ value }) => value))]));
  const squares = readings.reduce(
    (total, reading) => total + (reading.value - (means.get(groupOf(reading)) ?? Number.NaN)) ** 2,
    0,
  );
  return squares / (readings.length - groups.size);
};

/** One step of expectation and maximization from given components. */
const step = (readings: readonly CrossedReading[], components: VarianceComponents): VarianceComponents => {
  const { inspectors, gauges, solution, inverse, means } = solveEquations(readings, components);
  const of = (from: number, count: number): number => {
    let sum = 0;
    for (let index = from; index < from + count; index += 1) {
      sum += (solution[index] ?? 0) ** 2 + components.residual * (inverse[index]?.[index] ?? 0);
    }
    return sum / count;
  };
  const inspectorIndex = new Map(inspectors.map((name, index) => [name, index]));
  const gaugeIndex = new Map(gauges.map((name, index) => [name, inspectors.length + index]));
  let fitted = 0;
  for (const reading of readings) {
    const { inspector, gauge, value } = reading;
    const lean = solution[inspectorIndex.get(inspector) ?? -1] ?? 0;
    const offset = solution[gaugeIndex.get(gauge) ?? -1] ?? 0;
    // y′(y − Xb − Zu) over n − p, p means, is the residual variance at the maximum (Henderson 1984, chapter 12).
    fitted += value * (value - (means.get(groupOf(reading)) ?? 0) - lean - offset);
  }
  return {
    inspector: of(0, inspectors.length),
    gauge: of(inspectors.length, gauges.length),
    residual: fitted / (readings.length - countMeans(readings)),
  };
};

/**
 * How much of the scatter of past readings is inspectors' leans, gauges' offsets and the rest: restricted maximum likelihood (Patterson and
 * Thompson 1971) by expectation and maximization on Henderson's equations: σ² of a factor = (Σ û² + σ²ₑ·Σ C⁻¹ᵢᵢ)/levels, σ²ₑ = y′(y − fitted)/(n − p), p being how
 * many means the readings have of their own.
 *
 * @param readings of at least two inspectors and two gauges
 * @param patience fewer steps where figures are to be shown to two digits and not ten
 * @throws {RangeError} with fewer, or where all values are the same
 * @example
 * varianceComponents([
 *   { inspector: "i", gauge: "g", value: 1 }, { inspector: "i", gauge: "h", value: 5 },
 *   { inspector: "j", gauge: "g", value: 2 }, { inspector: "j", gauge: "h", value: 9 },
 * ]).gauge // 13.9…
 */
export const varianceComponents = (
  readings: readonly CrossedReading[],
  { steps, close }: Patience = EXACT,
): VarianceComponents => {
  const levels = [readings.map(({ inspector }) => inspector), readings.map(({ gauge }) => gauge)];
  if (levels.some((names) => new Set(names).size < 2)) {
    throw new RangeError("Variance components need at least two inspectors and two gauges.");
  }
  const all = varianceOf(readings);
  if (!(all > 0 && Number.isFinite(all)))
    throw new RangeError("Variance components need readings that differ.");
  const least = LEAST_SHARE * all;
  let components: VarianceComponents = { inspector: all / 3, gauge: all / 3, residual: all / 3 };
  for (let count = 0; count < steps; count += 1) {
    const next = step(readings, components);
    const moved = Math.max(
      Math.abs(next.inspector - components.inspector),
      Math.abs(next.gauge - components.gauge),
      Math.abs(next.residual - components.residual),
    );
    components = {
      inspector: Math.max(least, next.inspector),
      gauge: Math.max(least, next.gauge),
      residual: Math.max(least, next.residual),
    };
    if (moved <= close * all) break;
  }
  return components;
};
