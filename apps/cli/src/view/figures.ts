import type { Figures, LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { catalog } from "../words/catalog.ts";
import { formatNumber, formatQuantity } from "../words/number.ts";

/**
 * Decimals that show a figure to two significant digits (JCGM 100:2008, 7.2.6).
 *
 * @example decimalsFor(0.0437) // 3
 * @example decimalsFor(230) // 0
 */
export const decimalsFor = (uncertainty: number): number =>
  uncertainty > 0 ? Math.min(9, Math.max(0, 1 - Math.floor(Math.log10(uncertainty)))) : 1;

const signed = (value: number, decimals: number): string => {
  const text = Math.abs(value).toFixed(decimals);
  if (Number(text) === 0) return text;
  return value < 0 ? `−${text}` : `+${text}`;
};

const readingText = ({ difference, expandedUncertainty, delta, unit }: ReadingFigures): string => {
  const decimals = decimalsFor(expandedUncertainty);
  const interval = `${signed(difference, decimals)} ± ${expandedUncertainty.toFixed(decimals)}`;
  return `Δ ${formatQuantity(interval, unit)}; δ ${formatQuantity(Number(delta.toFixed(decimals + 1)), unit)}`;
};

/**
 * The figures of an entry in one line.
 *
 * @example figuresText(reading) // "Δ +4.0 ± 0.6⁄32 in; δ 2⁄32 in"
 */
export const figuresText = (figures: Figures): string => {
  switch (figures.of) {
    case "reading":
      return readingText(figures);
    case "grade":
      return catalog.gradeFigures(formatNumber(Number(Math.abs(figures.steps).toFixed(2))));
    case "color":
      return `ΔE₀₀ ${figures.deltaE.toFixed(1)} ± ${figures.expandedUncertainty.toFixed(1)}; δ ${formatNumber(figures.delta)}`;
    case "code":
      return catalog.codeFigures(figures.differsAt.length, figures.passes);
  }
};

/**
 * What the two reports say against one limit.
 *
 * @example limitText(limit) // "limit at least 2⁄32 in: A meets, B fails"
 */
export const limitText = ({ side, value, unit, a, b }: LimitFigures): string => {
  const bound = `${catalog.limitSide[side]} ${formatQuantity(value, unit)}`;
  const calls = [a && `A ${a.call}`, b && `B ${b.call}`].filter((call) => call !== null);
  return `${catalog.limit} ${bound}: ${calls.join(", ")}`;
};
