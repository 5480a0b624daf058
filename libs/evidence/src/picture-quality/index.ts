import { defineMessages } from "@evenhand/message/define-messages";
import type { PictureAdvice, PictureQuality } from "@evenhand/shared/evidence";
import { type Gray, resized, WHOLE } from "../gray/index.ts";

/** Longest side, in pixels, of the gray picture that is measured; a smaller one is measured as it is. */
export const MEASURED_SIDE = 1024;

const TILES = 8;
/** Gray levels that are all but black and all but white. */
const [BLACK, WHITE] = [16, 250];

/** What speaks for taking it again. Common practice, no source; tried on drawn pictures made blurred, dark and bright (`docs/copies.md`). */
const LIMITS = { sharpness: 40, dark: 0.75, light: 0.1, bright: 0.4 };

function measured({ width, height, data }: Gray): Gray {
  const longest = Math.max(width, height);
  if (longest <= MEASURED_SIDE) return { width, height, data };
  const [w, h] = [width, height].map((side) => Math.max(1, Math.round((side * MEASURED_SIDE) / longest)));
  const [wide = 1, high = 1] = [w, h];
  const made = resized({ width, height, data }, WHOLE, wide, high);
  return { width: wide, height: high, data: Uint8Array.from(made, Math.round) };
}

/** Variance of the Laplacian (each pixel four times, less the four beside it) within a part of the picture. */
function varianceWithin({ width, data }: Gray, [left, right]: Range, [top, bottom]: Range): number {
  let [count, sum, squares] = [0, 0, 0];
  for (let y = top; y < bottom; y += 1)
    for (let x = left; x < right; x += 1) {
      const at = y * width + x;
      const around =
        (data[at - 1] ?? 0) + (data[at + 1] ?? 0) + (data[at - width] ?? 0) + (data[at + width] ?? 0);
      const value = 4 * (data[at] ?? 0) - around;
      count += 1;
      sum += value;
      squares += value * value;
    }
  return count === 0 ? 0 : squares / count - (sum / count) ** 2;
}
type Range = readonly [from: number, to: number];

/** The inner pixels of a side, cut into so many ranges. */
const rangesOf = (side: number): Range[] =>
  Array.from({ length: TILES }, (_, at): Range => {
    const inner = Math.max(0, side - 2);
    return [1 + Math.floor((at * inner) / TILES), 1 + Math.floor(((at + 1) * inner) / TILES)];
  });

/** How many pixels have each of the 256 grays. */
function countGrays(data: Uint8Array): Float64Array {
  const counts = new Float64Array(256);
  for (let at = 0; at < data.length; at += 1) {
    const value = data[at] ?? 0;
    counts[value] = (counts[value] ?? 0) + 1;
  }
  return counts;
}

const sumOf = (values: Float64Array): number => values.reduce((sum, each) => sum + each, 0);

/**
 * How sharp and how light a photograph is. Sharpness is the variance of the Laplacian (Pech-Pacheco and others, "Diatom autofocusing in
 * brightfield microscopy", 2000, from memory), of the sharpest of 8 × 8 parts: a panel has little on it, but something is in focus.
 *
 * @param gray the photograph, best at no less than {@link MEASURED_SIDE} along its longest side
 * @throws RangeError for a picture without pixels
 * @example pictureQuality({ width: 1, height: 1, data: new Uint8Array([0]) }) // { sharpness: 0, light: 0, dark: 1, bright: 0 }
 */
export function pictureQuality(gray: Gray): PictureQuality {
  if (gray.data.length === 0) throw new RangeError("A picture without pixels has no quality.");
  const small = measured(gray);
  const [across, down] = [rangesOf(small.width), rangesOf(small.height)];
  const sharpness = Math.max(...down.flatMap((y) => across.map((x) => varianceWithin(small, x, y))));
  const [grays, count] = [countGrays(small.data), small.data.length];
  return {
    sharpness,
    light: sumOf(grays.map((each, level) => each * level)) / count / 255,
    dark: sumOf(grays.slice(0, BLACK + 1)) / count,
    bright: sumOf(grays.slice(WHITE)) / count,
  };
}

const { say } = defineMessages("picture-advice", {
  blurred: "Blurred; take it again?",
  dark: "Too dark to see much; take it again with a lamp or flash?",
  bright: "Much of it is washed out; take it again out of the glare?",
});

/**
 * What speaks for taking a photograph again, the gravest first, as whoever holds the camera is told. It never keeps one from being sent.
 *
 * @example pictureAdvice({ sharpness: 3, light: 0.4, dark: 0, bright: 0 }) // [{ advice: "blurred", words: "Blurred; take it again?" }]
 */
export function pictureAdvice(quality: PictureQuality): { advice: PictureAdvice; words: string }[] {
  const isDark = quality.dark > LIMITS.dark || quality.light < LIMITS.light;
  const found: PictureAdvice[] = [
    // What is all but black is not called blurred, too: with light it may be sharp.
    ...(quality.sharpness < LIMITS.sharpness && !isDark ? ["blurred" as const] : []),
    ...(isDark ? ["dark" as const] : []),
    ...(quality.bright > LIMITS.bright ? ["bright" as const] : []),
  ];
  return found.map((advice) => ({ advice, words: say(advice) }));
}
