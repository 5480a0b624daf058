import { solveEquations } from "./equations.ts";

/** One past reading: by how much an inspector with a gauge read off from what the thing was, in one unit for all. */
export type CrossedReading = { readonly inspector: string; readonly gauge: string; readonly value: number };

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

/**
 * Leans of inspectors and offsets of gauges, told apart though every reading has one of each: best linear unbiased prediction in a crossed
 * model, value = mean + lean + offset + error, by Henderson's mixed-model equations (Henderson 1950, 1984)
 *
 * [n 1′Z; Z′1 Z′Z + diag(σ²ₑ/σ²)]·[mean; effects] = [1′y; Z′y]
 *
 * Whoever has read little is drawn toward nought, and the more the fewer readings; an inspector whose gauge everybody reads alike with
 * is not blamed for it. The standard error is that of effect less prediction (√(σ²ₑ·C⁻¹ᵢᵢ)): it widens u where the effect corrects a
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
  const { inspectors, gauges, solution, inverse } = solveEquations(readings, components);
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
    mean: solution[0] ?? Number.NaN,
    meanStandardError: errorOf(0),
    inspectors: predicted(inspectors, 1, countBy(readings.map(({ inspector }) => inspector))),
    gauges: predicted(gauges, 1 + inspectors.length, countBy(readings.map(({ gauge }) => gauge))),
  };
};
