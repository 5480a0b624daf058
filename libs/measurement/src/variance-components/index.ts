import { solveEquations } from "../crossed-effects/equations.ts";
import type { CrossedReading, VarianceComponents } from "../crossed-effects/index.ts";

/** Each step comes nearer by a share of what is left; where a component is tiny that share is small. */
const MOST_STEPS = 5000;
const CLOSE = 1e-10;
/** A component is not let die, since its equations divide by it. */
const LEAST_SHARE = 1e-9;

const varianceOf = (readings: readonly CrossedReading[]): number => {
  const mean = readings.reduce((sum, { value }) => sum + value, 0) / readings.length;
  return readings.reduce((sum, { value }) => sum + (value - mean) ** 2, 0) / (readings.length - 1);
};

/** One step of expectation and maximization from given components. */
const step = (readings: readonly CrossedReading[], components: VarianceComponents): VarianceComponents => {
  const { inspectors, gauges, solution, inverse } = solveEquations(readings, components);
  const of = (from: number, count: number): number => {
    let sum = 0;
    for (let index = from; index < from + count; index += 1) {
      sum += (solution[index] ?? 0) ** 2 + components.residual * (inverse[index]?.[index] ?? 0);
    }
    return sum / count;
  };
  const inspectorIndex = new Map(inspectors.map((name, index) => [name, 1 + index]));
  const gaugeIndex = new Map(gauges.map((name, index) => [name, 1 + inspectors.length + index]));
  let fitted = 0;
  for (const { inspector, gauge, value } of readings) {
    const lean = solution[inspectorIndex.get(inspector) ?? -1] ?? 0;
    const offset = solution[gaugeIndex.get(gauge) ?? -1] ?? 0;
    // y′(y − Xb − Zu) over n − 1 is the residual variance at the maximum (Henderson 1984, chapter 12).
    fitted += value * (value - (solution[0] ?? 0) - lean - offset);
  }
  return {
    inspector: of(1, inspectors.length),
    gauge: of(1 + inspectors.length, gauges.length),
    residual: fitted / (readings.length - 1),
  };
};

/**
 * How much of the scatter of past readings is inspectors' leans, gauges' offsets and the rest: restricted maximum likelihood (Patterson and
 * Thompson 1971) by expectation and maximization on Henderson's equations: σ² of a factor = (Σ û² + σ²ₑ·Σ C⁻¹ᵢᵢ)/levels, σ²ₑ = y′(y − fitted)/(n − 1).
 *
 * @param readings of at least two inspectors and two gauges
 * @throws {RangeError} with fewer, or where all values are the same
 * @example
 * varianceComponents([
 *   { inspector: "i", gauge: "g", value: 1 }, { inspector: "i", gauge: "h", value: 5 },
 *   { inspector: "j", gauge: "g", value: 2 }, { inspector: "j", gauge: "h", value: 9 },
 * ]).gauge // 13.9…
 */
export const varianceComponents = (readings: readonly CrossedReading[]): VarianceComponents => {
  const levels = [readings.map(({ inspector }) => inspector), readings.map(({ gauge }) => gauge)];
  if (levels.some((names) => new Set(names).size < 2)) {
    throw new RangeError("Variance components need at least two inspectors and two gauges.");
  }
  const all = varianceOf(readings);
  if (!(all > 0 && Number.isFinite(all)))
    throw new RangeError("Variance components need readings that differ.");
  const least = LEAST_SHARE * all;
  let components: VarianceComponents = { inspector: all / 3, gauge: all / 3, residual: all / 3 };
  for (let count = 0; count < MOST_STEPS; count += 1) {
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
    if (moved <= CLOSE * all) break;
  }
  return components;
};
