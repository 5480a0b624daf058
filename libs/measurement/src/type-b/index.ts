const from0 = (value: number, name: string): number => {
  if (!(value >= 0)) throw new RangeError(`${name} must be a number from 0: ${value}`);
  return value;
};

/**
 * Standard uncertainty of a value known only to lie within ±`halfWidth`, every place equally likely: a/√3
 * (JCGM 100:2008, 4.3.7). In the unit of `halfWidth`.
 *
 * @throws {RangeError} for a negative half-width
 * @example rectangular(0.06) // 0.03464101615137755
 */
export const rectangular = (halfWidth: number): number => from0(halfWidth, "The half-width") / Math.sqrt(3);

/**
 * The same, the middle being likeliest: a/√6 (JCGM 100:2008, 4.3.9).
 *
 * @throws {RangeError} for a negative half-width
 * @example triangular(0.1) // 0.04082482904638631
 */
export const triangular = (halfWidth: number): number => from0(halfWidth, "The half-width") / Math.sqrt(6);

/**
 * The same, for a symmetric trapezoid whose top is `topShare` of its base: a·√((1 + β²)/6)
 * (JCGM 100:2008, 4.3.9). At 1 it is the rectangle, at 0 the triangle.
 *
 * @param topShare from 0 to 1
 * @throws {RangeError} for a negative half-width or a share outside 0 to 1
 * @example trapezoid(0.1, 0.5) // 0.0456435464587638
 */
export const trapezoid = (halfWidth: number, topShare: number): number => {
  if (!(topShare >= 0 && topShare <= 1)) throw new RangeError(`The top's share must be 0 to 1: ${topShare}`);
  return from0(halfWidth, "The half-width") * Math.sqrt((1 + topShare ** 2) / 6);
};

/**
 * The same, for a quantity that swings as a sine between ±`halfWidth` and is met at no particular moment:
 * the arcsine distribution, a/√2 (JCGM 101:2008, 6.4.6, from memory).
 *
 * @throws {RangeError} for a negative half-width
 * @example arcsine(0.1) // 0.07071067811865475
 */
export const arcsine = (halfWidth: number): number => from0(halfWidth, "The half-width") / Math.SQRT2;

/**
 * Standard uncertainty from the smallest step an indicator can show: r/√12, a rectangle of half-width r/2
 * (JCGM 100:2008, F.2.2.1).
 *
 * @param step the whole step, not its half
 * @throws {RangeError} for a negative step
 * @example resolution(1) // 0.2886751345948129
 */
export const resolution = (step: number): number => from0(step, "The step") / Math.sqrt(12);
