import { takenDifference } from "@evenhand/comparison/use-allowed";
import { listed } from "@evenhand/message/listed";
import { formatExact, formatMeasured, formatNumber, formatUnit } from "@evenhand/wording/format-figure";
import type { Figures, LimitFigures, ReadingFigures } from "@evenhand/shared/comparison";
import { catalog } from "../words/catalog.ts";
import { formatQuantity } from "../words/quantity.ts";

/** The difference that was judged: corrected, where a side was. */
const readingText = (figures: ReadingFigures): string => {
  const { expandedUncertainty, delta, unit } = figures;
  return catalog.inReading(
    formatMeasured(takenDifference(figures), expandedUncertainty, unit),
    formatExact(delta) + formatUnit(unit),
  );
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
      return catalog.gradeFigures(formatNumber(Math.abs(figures.steps), 1));
    case "color":
      return catalog.inColor(
        formatMeasured(figures.deltaE, figures.expandedUncertainty, "dE"),
        formatExact(figures.delta),
      );
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
  return catalog.labelled(`${catalog.limit} ${bound}`, listed(calls));
};
