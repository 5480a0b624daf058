import { median } from "@evenhand/measurement/median";
import { type Gray, resized, WHOLE, type Window } from "../gray/index.ts";

/** Sixty-four bits, as two numbers of thirty-two. */
export type PictureHash = readonly [high: number, low: number];

const SIDE = 32;
const KEPT = 8;

/** `cos((2x + 1) u π / 2N)` of the discrete cosine transform (DCT-II) for the frequencies kept, 1 to 8: what does not change is left out. */
const cosines = Array.from({ length: KEPT }, (_, u) =>
  Float64Array.from({ length: SIDE }, (_none, x) => Math.cos(((2 * x + 1) * (u + 1) * Math.PI) / (2 * SIDE))),
);

/** How much of each pair of low frequencies is in the picture, down and across. */
function lowFrequencies(pixels: Float64Array): number[] {
  const across = cosines.map((wave) =>
    Float64Array.from({ length: SIDE }, (_, y) => {
      let sum = 0;
      for (let x = 0; x < SIDE; x += 1) sum += (pixels[y * SIDE + x] ?? 0) * (wave[x] ?? 0);
      return sum;
    }),
  );
  return cosines.flatMap((wave) =>
    across.map((column) => column.reduce((sum, each, y) => sum + each * (wave[y] ?? 0), 0)),
  );
}

const bitsOf = (values: readonly number[], over: number): number =>
  values.reduce((bits, each) => ((bits << 1) | (each > over ? 1 : 0)) >>> 0, 0);

/**
 * A hash that stays nearly the same when a picture is scaled, compressed, made lighter or darker: the picture at 32 × 32 in gray, of its
 * discrete cosine transform the 8 × 8 lowest frequencies without the constant ones, and of each whether it lies over their median.
 *
 * Method: the "DCT hash" as Zauner, "Implementation and Benchmarking of Perceptual Image Hash Functions" (2010), has it, from memory.
 *
 * @param part of the picture, the whole of it unless said otherwise
 * @example hashDistance(perceptualHash({ width: 1, height: 1, data: new Uint8Array([9]) }), [0, 0]) // 0
 */
export function perceptualHash(gray: Gray, part: Window = WHOLE): PictureHash {
  const found = lowFrequencies(resized(gray, part, SIDE, SIDE));
  // What differs by nothing but rounding does not lie over it: a picture of one color has no ones.
  const over = median(found) + 1e-6;
  return [bitsOf(found.slice(0, 32), over), bitsOf(found.slice(32), over)];
}

/** Ones among thirty-two bits: added up in pairs, then in fours, and so on (common practice, no source). */
export function countOnes(bits: number): number {
  const pairs = bits - ((bits >>> 1) & 0x5555_5555);
  const fours = (pairs & 0x3333_3333) + ((pairs >>> 2) & 0x3333_3333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f_0f0f, 0x0101_0101) >>> 24;
}

/**
 * In how many of their 64 bits two hashes differ: near 0 for one picture, about 32 for any two.
 *
 * @example hashDistance([0, 1], [0, 2]) // 2
 */
export const hashDistance = (a: PictureHash, b: PictureHash): number =>
  countOnes(a[0] ^ b[0]) + countOnes(a[1] ^ b[1]);
