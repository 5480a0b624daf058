import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";

const toUnit = 1 / 2 ** 32;

/** A filler of arrays with independent standard normal scores (Box and Muller, Ann. Math. Statist. 29, 1958), from a seed. */
export const normalScores = (seed: number): ((into: Float64Array) => void) => {
  const generator = xoroshiro128plus(seed);
  return (into) => {
    for (let index = 0; index < into.length; index += 2) {
      // Half a step up keeps the logarithm off zero.
      const radius = Math.sqrt(-2 * Math.log(((generator.next() >>> 0) + 0.5) * toUnit));
      const angle = 2 * Math.PI * (generator.next() >>> 0) * toUnit;
      into[index] = radius * Math.cos(angle);
      if (index + 1 < into.length) into[index + 1] = radius * Math.sin(angle);
    }
  };
};
