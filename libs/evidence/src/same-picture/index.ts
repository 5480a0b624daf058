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
/** Gray levels by which a block may leave the one change of light between the two: another paint does, a darker copy does not. */
const LIGHT_AGREES = 8;
/** Of a picture with hardly any detail nothing is said. */
const LEAST_BLOCKS = 12;

/** The share of blocks that must agree: chosen from the table in `docs/copies.md`. */
export const SAME_FROM = 0.7;

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

/** A block of both: its mean gray in either, and how far its detail is the same; none where neither has any. */
type Block = { readonly laid: number; readonly other: number; readonly detail: number | null };

/** `null` where they hardly overlap. */
function blockOf(
  [laid, laidDetail]: readonly [Float64Array, Float64Array],
  [other, otherDetail]: readonly [Float64Array, Float64Array],
): Block | null {
  const [one, two] = [spreadOf(laid, other), spreadOf(other, laid)];
  if (one.count < laid.length / 2) return null;
  const most = Math.max(
    spreadOf(laidDetail, otherDetail).deviation,
    spreadOf(otherDetail, laidDetail).deviation,
  );
  const detail = most < LEAST_DETAIL ? null : correlation(laidDetail, otherDetail);
  return { laid: one.mean, other: two.mean, detail };
}

/** The one change of light that turns the means of the first into those of the second, by least squares. */
function changeOfLight(blocks: readonly Block[]): (gray: number) => number {
  const [x, y] = [meanOf(blocks, "laid"), meanOf(blocks, "other")];
  const spread = blocks.reduce((sum, { laid }) => sum + (laid - x) ** 2, 0);
  const both = blocks.reduce((sum, { laid, other }) => sum + (laid - x) * (other - y), 0);
  const slope = spread === 0 ? 1 : both / spread;
  return (gray) => y + slope * (gray - x);
}
const meanOf = (blocks: readonly Block[], of: "laid" | "other"): number =>
  blocks.reduce((sum, block) => sum + block[of], 0) / Math.max(1, blocks.length);

/** Fitted twice, the second time to those that the first fits: what is cut off at white must not bend the rest. */
function fitted(blocks: readonly Block[]): (block: Block) => boolean {
  const first = changeOfLight(blocks);
  const off = (change: (gray: number) => number, { laid, other }: Block) => Math.abs(change(laid) - other);
  const near = blocks.filter((block) => off(first, block) <= 2 * LIGHT_AGREES);
  const change = near.length < LEAST_BLOCKS ? first : changeOfLight(near);
  return (block) => off(change, block) <= LIGHT_AGREES;
}

/**
 * Are two pictures one and the same, whatever was done to one of them: scaled, compressed, cut by a tenth, made lighter, set into a
 * border? They are laid over each other to a part of a pixel, and then their detail is compared block by block, and
 * whether one change of light explains all of them: another car from the same place has the same outline, another paint, and other
 * scratches, stains and reflections.
 *
 * @returns the share of blocks with the same detail; `isSame` from {@link SAME_FROM} on
 * @example samePicture({ width: 1, height: 1, data: new Uint8Array([9]) }, { width: 1, height: 1, data: new Uint8Array([9]) }).isSame // false
 */
export function samePicture(a: Gray, b: Gray): Sameness {
  const alignment = align(COARSE.map((side) => [gridOf(a, side), gridOf(b, side)] as const));
  const laid = underneath(gridOf(a, FINE), alignment, FINE);
  const other = gridOf(b, FINE).values;
  const [laidDetail, otherDetail] = [detailOf(laid, FINE), detailOf(other, FINE)];
  const blocks: Block[] = [];
  for (let top = 0; top < FINE; top += BLOCK)
    for (let left = 0; left < FINE; left += BLOCK) {
      const cut = (values: Float64Array) => blockAt(values, FINE, left, top);
      const block = blockOf([cut(laid), cut(laidDetail)], [cut(other), cut(otherDetail)]);
      if (block !== null) blocks.push(block);
    }
  const isInLight = fitted(blocks);
  const said = blocks.filter(({ detail }) => detail !== null);
  const agreeing = said.filter((block) => (block.detail ?? 0) >= BLOCK_AGREES && isInLight(block));
  const agreement = said.length === 0 ? 0 : agreeing.length / said.length;
  return { agreement, blocks: said.length, isSame: said.length >= LEAST_BLOCKS && agreement >= SAME_FROM };
}
