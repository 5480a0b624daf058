/** Nothing anybody writes is finer. */
const FINEST = -9;
const STEPS = [5, 2, 1];

/** Powers of ten as people write figures; raising to a power takes longer than all the rest. */
const POWERS = Array.from({ length: 16 }, (_, power) => 10 ** power);
const powerOfTen = (power: number): number => POWERS[power] ?? 10 ** power;

/** As whole as a written figure can be; what is not 0 is at least one step. */
const isWhole = (multiple: number): boolean =>
  multiple === 0 ||
  (Math.abs(multiple) > 0.5 && Math.abs(multiple - Math.round(multiple)) <= 1e-9 * Math.abs(multiple));

// By index, here and below: lists of whole numbers and of fractions are two kinds to the machine, and walking both makes garbage.
const areMultiples = (values: readonly number[], step: number): boolean => {
  for (let index = 0; index < values.length; index += 1) {
    if (!isWhole((values[index] ?? 0) / step)) return false;
  }
  return true;
};

const largestOf = (values: readonly number[]): number => {
  let largest = 0;
  for (let index = 0; index < values.length; index += 1) {
    largest = Math.max(largest, Math.abs(values[index] ?? 0));
  }
  return largest;
};

/**
 * The step a person wrote readings in: the largest of 1, 2 and 5 times a power of ten that all are multiples of. Whoever rounds to the
 * nearest five reads more coarsely than the gauge could tell, whatever it resolves; a single round figure tells no step but its own, so
 * this is an upper bound.
 *
 * @param values as they were written, in the unit they were written in
 * @returns Infinity where there is none, or all are 0; 0 where none is fine enough
 * @example writtenStep([150, 145, 160]) // 5
 */
export const writtenStep = (values: readonly number[]): number => {
  const largest = largestOf(values);
  if (largest === 0) return Number.POSITIVE_INFINITY;
  for (let power = Math.floor(Math.log10(largest)); power >= FINEST; power -= 1) {
    for (let place = 0; place < STEPS.length; place += 1) {
      const first = STEPS[place] ?? 1;
      // A negative power as a division, which rounds once.
      const step = power < 0 ? first / powerOfTen(-power) : first * powerOfTen(power);
      if (areMultiples(values, step)) return step;
    }
  }
  return 0;
};
