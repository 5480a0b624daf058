import { type Gray, resized, WHOLE } from "../gray/index.ts";
import { align } from "./align.ts";
import { correlation, type Grid, spreadOf, underneath } from "./alignment.ts";

const COARSE = [32, 64, 128];
const FINE = 192;
const BLOCK = 16;
/** Gray levels a block must vary by, beside its slow changes, to say anything: less is what compression leaves. */
const LEAST_DETAIL = 2.5;
/** From here on the detail of a block is the same detail. */
const BLOCK_AGREES = 0.7;
/** Of a picture with hardly any detail nothing is said. */
const LEAST_BLOCKS = 12;

/** The share of blocks that must agree: chosen from the table in `docs/copies.md`. */
export const SAME_FROM = 0.6;

/** How much of the detail of two pictures is the same, from 0 to 1, over so many blocks that have any. */
export type Sameness = { readonly agreement: number; readonly blocks: number; readonly isSame: boolean };

const gridOf = (gray: Gray, side: number): Grid => ({ side, values: resized(gray, WHOLE, side, side) });

/** The detail of a picture: each value less the mean of the five by five around it. */
function detailOf(values: Float64Array, side: number): Float64Array {
  const made = new Float64Array(values.length).fill(Number.NaN);
  for (let y = 2; y < side - 2; y += 1)
    for (let x = 2; x < side - 2; x += 1) {
      let sum = 0;
      for (let down = -2; down <= 2; down += 1)
        for (let across = -2; across <= 2; across += 1)
          sum += values[(y + down) * side + x + across] ?? Number.NaN;
      made[y * side + x] = (values[y * side + x] ?? Number.NaN) - sum / 25;
    }
  return made;
}

function blockAt(values: Float64Array, side: number, left: number, top: number): Float64Array {
  const block = new Float64Array(BLOCK * BLOCK);
  for (let y = 0; y < BLOCK; y += 1)
    block.set(values.subarray((top + y) * side + left, (top + y) * side + left + BLOCK), y * BLOCK);
  return block;
}

/** `null` where neither has any detail there, or they hardly overlap. */
function blockAgrees(a: Float64Array, b: Float64Array): boolean | null {
  const [one, other] = [spreadOf(a, b), spreadOf(b, a)];
  if (one.count < a.length / 2 || Math.max(one.deviation, other.deviation) < LEAST_DETAIL) return null;
  return correlation(a, b) >= BLOCK_AGREES;
}

/**
 * Are two pictures one and the same, whatever was done to one of them: scaled, compressed, cut by a tenth, made lighter, set into a
 * border? They are laid over each other to a part of a pixel, and then their detail is compared block by block: another car from the
 * same place has the same outline and other scratches, stains and reflections.
 *
 * @returns the share of blocks with the same detail; `isSame` from {@link SAME_FROM} on
 * @example samePicture({ width: 1, height: 1, data: new Uint8Array([9]) }, { width: 1, height: 1, data: new Uint8Array([9]) }).isSame // false
 */
export function samePicture(a: Gray, b: Gray): Sameness {
  const alignment = align(COARSE.map((side) => [gridOf(a, side), gridOf(b, side)] as const));
  const laid = detailOf(underneath(gridOf(a, FINE), alignment, FINE), FINE);
  const detail = detailOf(gridOf(b, FINE).values, FINE);
  const said: boolean[] = [];
  for (let top = 0; top < FINE; top += BLOCK)
    for (let left = 0; left < FINE; left += BLOCK) {
      const agrees = blockAgrees(blockAt(laid, FINE, left, top), blockAt(detail, FINE, left, top));
      if (agrees !== null) said.push(agrees);
    }
  const agreement = said.length === 0 ? 0 : said.filter(Boolean).length / said.length;
  return { agreement, blocks: said.length, isSame: said.length >= LEAST_BLOCKS && agreement >= SAME_FROM };
}
