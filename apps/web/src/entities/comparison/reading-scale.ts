import { allowedBand, takenMean } from "@evenhand/comparison/use-allowed";
import type { LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";

export interface Band {
  readonly low: number;
  readonly high: number;
}

/** Where everything of two readings lies on one scale. */
export interface ReadingScaleView {
  readonly stated: Band;
  readonly found: Band;
  /** The difference that matters, round the stated reading. */
  readonly matters: Band;
  /** Both ends of the scale. */
  readonly shown: Band;
  /** Pixels from the left. */
  readonly x: (value: number) => number;
}

/** Half of what the words over the difference that matters take, in pixels. */
const HALF_NOTE = 130;

/**
 * Where the middle of those words stands, so that neither end is cut off.
 *
 * @example noteAt(330, 345) // 215
 */
export const noteAt = (x: number, width: number): number =>
  width < 2 * HALF_NOTE ? width / 2 : Math.min(Math.max(x, HALF_NOTE), width - HALF_NOTE);

const spread = (mean: number, uncertainty: number): Band => ({
  low: mean - uncertainty,
  high: mean + uncertainty,
});

/** @param width of the drawing, in pixels */
export const readingScale = (
  figures: ReadingFigures,
  limits: readonly LimitFigures[],
  width: number,
): ReadingScaleView => {
  const { a, b, coverageFactor: k } = figures;
  const stated = spread(takenMean(a), k * a.standardUncertainty);
  const found = spread(takenMean(b), k * b.standardUncertainty);
  const matters = allowedBand(figures);
  const ends = [stated, found, matters].flatMap(({ low, high }) => [low, high]);
  const all = [...ends, ...limits.map(({ value }) => value)];
  const [least, most] = [Math.min(...all), Math.max(...all)];
  const margin = (most - least || 1) * 0.06;
  const shown = { low: least - margin, high: most + margin };
  const x = (value: number): number => 10 + ((value - shown.low) / (shown.high - shown.low)) * (width - 20);
  return { stated, found, matters, shown, x };
};
