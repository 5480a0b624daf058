import { uniformFloat64 } from "pure-rand/distribution/uniformFloat64";
import { xoroshiro128plus } from "pure-rand/generator/xoroshiro128plus";
import { normalQuantile } from "../normal-distribution/index.ts";

/** Gives the next number from 0 (included) to 1 (excluded). */
export type Random = () => number;

/**
 * A generator of pseudo-random numbers that gives the same sequence for the same seed: xoroshiro128+ (Blackman
 * and Vigna 2018), 53 bits a number, from the library pure-rand. For simulation and drawing only; never for
 * secrets.
 *
 * @param seed a whole number; its lowest 32 bits count
 * @example seededRandom(7)() === seededRandom(7)() // true
 */
export const seededRandom = (seed: number): Random => {
  const generator = xoroshiro128plus(seed);
  return () => uniformFloat64(generator);
};

/**
 * A standard normal number, by inversion: one draw a number, and rising with it, which keeps correlated draws
 * paired.
 *
 * @example normalDeviate(() => 0.975) // 1.9599639845400538
 */
export const normalDeviate = (random: Random): number => {
  const uniform = random();
  // Half the smallest step a draw can make stands in for 0, whose quantile would be −∞.
  return normalQuantile(uniform === 0 ? 2 ** -54 : uniform);
};
