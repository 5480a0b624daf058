import { groupOf, solveEquations } from "./equations.ts";
import type { Solved } from "./equations.ts";

/**
 * One past reading: by how much an inspector with a gauge read off from what the thing was, in one unit for all. Where that is only known
 * as somebody said it, `against` names them.
 */
export type CrossedReading = {
  readonly inspector: string;
  readonly gauge: string;
  readonly value: number;
  readonly against?: string;
};

/** σ² of inspectors' leans, of gauges' offsets, and of what is left. */
export type VarianceComponents = {
  readonly inspector: number;
  readonly gauge: number;
  readonly residual: number;
};

/** A lean or an offset, what it may be off by, and from how many readings it is known. */
export type Predicted = {
  readonly effect: number;
  readonly standardError: number;
  readonly readings: number;
};

export type CrossedEffects = {
  /** Over all readings, of what their own means are. */
  readonly mean: number;
  readonly meanStandardError: number;
  readonly inspectors: ReadonlyMap<string, Predicted>;
  readonly gauges: ReadonlyMap<string, Predicted>;
};

const countBy = (names: readonly string[]): Map<string, number> => {
  const counts = new Map<string, number>();
  for (const name of names) counts.set(name, (counts.get(name) ?? 0) + 1);
  return counts;
};

const check = (readings: readonly CrossedReading[], components: VarianceComponents): void => {
  if (readings.length === 0) throw new RangeError("Effects need at least one reading.");
  if (!readings.every(({ value }) => Number.isFinite(value)))
    throw new RangeError("Readings must be numbers.");
  if (!Object.values(components).every((variance) => variance > 0 && Number.isFinite(variance))) {
    throw new RangeError("Variance components must be positive numbers.");
  }
};

/** The mean of what is left of the readings, and what it may be off by: ȳ − z̄′û, of which σ²ₑ·(1/n + z̄′C⁻¹z̄) is the variance. */
const meanOf = (
  readings: readonly CrossedReading[],
  { inspectors, gauges, inverse, means }: Solved,
  residual: number,
) => {
  const count = readings.length;
  const [byInspector, byGauge] = [
    countBy(readings.map(({ inspector }) => inspector)),
    countBy(readings.map(({ gauge }) => gauge)),
  ];
  const shares = [
    ...inspectors.map((name) => (byInspector.get(name) ?? 0) / count),
    ...gauges.map((name) => (byGauge.get(name) ?? 0) / count),
  ];
  let spread = 1 / count;
  for (const [i, share] of shares.entries()) {
    for (const [j, other] of shares.entries()) spread += share * other * (inverse[i]?.[j] ?? Number.NaN);
  }
  const sum = readings.reduce((total, one) => total + (means.get(groupOf(one)) ?? Number.NaN), 0);
  return { mean: sum / count, meanStandardError: Math.sqrt(residual * spread) };
};

/**
 * Leans of inspectors and offsets of gauges, told apart though every reading has one of each: best linear unbiased prediction in a crossed
 * model, value = mean + lean + offset + error, by Henderson's mixed-model equations (Henderson 1950, 1984)
 *
 * [n 1′Z; Z′1 Z′Z + diag(σ²ₑ/σ²)]·[mean; effects] = [1′y; Z′y]
 *
 * Whoever has read little is drawn toward nought, and the more the fewer readings; an inspector whose gauge everybody reads alike with
 * is not blamed for it. Readings that are differences from what somebody said have a mean for each of them, a fixed effect: an inspector is
 * set against others who read against the same word only, so that no lean of whoever spoke reaches a lean or an offset. The standard error is that of effect less prediction (√(σ²ₑ·C⁻¹ᵢᵢ)): it widens u where the effect corrects a
 * reading (JCGM 100:2008, 3.2.3). Never for a dealer's statement: its lean is the claim.
 *
 * @param readings at least one; inspectors and gauges by their ids
 * @param components as `varianceComponents` gives them
 * @throws {RangeError} without readings, or when a variance is not positive
 * @example
 * crossedEffects([{ inspector: "i", gauge: "g", value: 3 }, { inspector: "j", gauge: "g", value: 1 }],
 *   { inspector: 1, gauge: 1, residual: 1 }).inspectors.get("i").effect // 0.5
 */
export const crossedEffects = (
  readings: readonly CrossedReading[],
  components: VarianceComponents,
): CrossedEffects => {
  check(readings, components);
  const solved = solveEquations(readings, components);
  const { inspectors, gauges, solution, inverse } = solved;
  const errorOf = (index: number): number =>
    Math.sqrt(components.residual * (inverse[index]?.[index] ?? Number.NaN));
  const predicted = (names: readonly string[], from: number, counts: ReadonlyMap<string, number>) =>
    new Map(
      names.map((name, index): [string, Predicted] => [
        name,
        {
          effect: solution[from + index] ?? Number.NaN,
          standardError: errorOf(from + index),
          readings: counts.get(name) ?? 0,
        },
      ]),
    );
  return {
    ...meanOf(readings, solved, components.residual),
    inspectors: predicted(inspectors, 0, countBy(readings.map(({ inspector }) => inspector))),
    gauges: predicted(gauges, inspectors.length, countBy(readings.map(({ gauge }) => gauge))),
  };
};
