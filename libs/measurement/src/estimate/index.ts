/**
 * What is known of a quantity: its value, its standard uncertainty and how well that uncertainty itself is
 * known (JCGM 100:2008, 4.2.6 and G.3). `value` and `standardUncertainty` are in one unit, the item's base
 * unit unless a name says otherwise. `degreesOfFreedom` is positive and may be Infinity.
 */
export type Estimate = {
  readonly value: number;
  readonly standardUncertainty: number;
  readonly degreesOfFreedom: number;
};

/** What a coverage factor needs of an estimate. */
export type Uncertainty = Omit<Estimate, "value">;

/**
 * An estimate, checked.
 *
 * @param degreesOfFreedom Infinity when left out: the uncertainty is taken as known
 * @throws {RangeError} when a number is not one, the uncertainty is negative, or the degrees of freedom are
 *   not positive
 * @example estimate(31, 0.5) // { value: 31, standardUncertainty: 0.5, degreesOfFreedom: Infinity }
 */
export const estimate = (
  value: number,
  standardUncertainty: number,
  degreesOfFreedom = Number.POSITIVE_INFINITY,
): Estimate => {
  if (!Number.isFinite(value)) throw new RangeError(`The value must be a finite number: ${value}`);
  if (!(standardUncertainty >= 0 && standardUncertainty < Number.POSITIVE_INFINITY)) {
    throw new RangeError(`The standard uncertainty must be a number from 0: ${standardUncertainty}`);
  }
  if (!(degreesOfFreedom > 0))
    throw new RangeError(`Degrees of freedom must be positive: ${degreesOfFreedom}`);
  return { value, standardUncertainty, degreesOfFreedom };
};
