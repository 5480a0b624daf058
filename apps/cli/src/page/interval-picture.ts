import { formatMeasured } from "@evenhand/wording/format-figure";
import { allowedBand, takenMean } from "@evenhand/comparison/use-allowed";
import type { LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { catalog } from "../words/catalog.ts";
import { formatQuantity } from "../words/quantity.ts";
import { html } from "@evenhand/message/html";
import type { Markup } from "@evenhand/message/html";

const width = 320;
const margin = 16;

type Scale = (value: number) => number;

const scaleOver = (values: readonly number[]): Scale => {
  const low = Math.min(...values);
  const span = Math.max(...values) - low || 1;
  return (value) => margin + ((value - low) / span) * (width - 2 * margin);
};

const at = (value: number): string => value.toFixed(1);

const bar = (name: string, y: number, mean: number, half: number, scale: Scale): Markup =>
  html` <line class="bar" x1="${at(scale(mean - half))}" x2="${at(scale(mean + half))}" y1="${y}" y2="${y}" />
    <circle class="mean" cx="${at(scale(mean))}" cy="${y}" r="3.5" />
    <text x="2" y="${y + 4}">${name}</text>`;

const limitLine = ({ value }: LimitFigures, scale: Scale): Markup =>
  html` <line class="limit" x1="${at(scale(value))}" x2="${at(scale(value))}" y1="4" y2="52" />`;

/**
 * Both readings as intervals on one scale, with the difference that matters, and the use allowed on its side, as a band about the first and the limits as lines.
 * The description says the same in words.
 */
export const intervalPicture = (figures: ReadingFigures, limits: readonly LimitFigures[]): Markup => {
  const { a, b, delta, coverageFactor: k, unit } = figures;
  const halfA = k * a.standardUncertainty;
  const halfB = k * b.standardUncertainty;
  const [meanA, meanB] = [takenMean(a), takenMean(b)];
  const band = allowedBand(figures);
  const ends = [
    Math.min(meanA - halfA, band.low),
    Math.max(meanA + halfA, band.high),
    meanB - halfB,
    meanB + halfB,
  ];
  const scale = scaleOver([...ends, ...limits.map(({ value }) => value)]);
  const text = (mean: number, half: number): string => formatMeasured(mean, half, unit);
  const words = catalog.picture(
    text(meanA, halfA),
    text(meanB, halfB),
    formatQuantity(Number(delta.toPrecision(3)), unit),
  );
  return html`<svg class="intervals" viewBox="0 0 ${width} 56" role="img" aria-label="${words}">
    <title>${words}</title>
    <rect
      class="band"
      x="${at(scale(band.low))}"
      width="${at(scale(band.high) - scale(band.low))}"
      y="6"
      height="44"
    />
    ${limits.map((limit) => limitLine(limit, scale))}
    ${bar("A", 18, meanA, halfA, scale)}${bar("B", 38, meanB, halfB, scale)}
  </svg>`;
};
