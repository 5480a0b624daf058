/**
 * One contribution to an uncertainty. `sensitivity` is ∂f/∂x (1 when left out); `degreesOfFreedom` is
 * Infinity when left out.
 */
export type Component = {
  readonly standardUncertainty: number;
  readonly sensitivity?: number;
  readonly degreesOfFreedom?: number;
};

/**
 * What one component contributes to the result: |cᵢ|·uᵢ, in the unit of the result.
 *
 * @example contribution({ standardUncertainty: 2, sensitivity: -3 }) // 6
 */
export const contribution = (component: Component): number =>
  Math.abs(component.sensitivity ?? 1) * component.standardUncertainty;

/**
 * Combined standard uncertainty of uncorrelated inputs: the root sum of squares of cᵢ·uᵢ
 * (JCGM 100:2008, equation 10). In the unit of the result. No components give 0.
 *
 * @example combineUncertainty([{ standardUncertainty: 3 }, { standardUncertainty: 2, sensitivity: 2 }]) // 5
 */
export const combineUncertainty = (components: readonly Component[]): number => {
  let squares = 0;
  for (const component of components) squares += contribution(component) ** 2;
  return Math.sqrt(squares);
};
