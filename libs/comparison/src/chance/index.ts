import type { Chance, Entry, ReadingFigures } from "@evenhand/shared/comparison";
import { benjaminiHochberg } from "@evenhand/measurement/benjamini-hochberg";
import { studentTail } from "@evenhand/measurement/student-tail";

const readingsOf = (entries: readonly Entry[]): ReadingFigures[] => {
  const readings: ReadingFigures[] = [];
  for (const { figures } of entries) if (figures?.of === "reading") readings.push(figures);
  return readings;
};

/**
 * The chance that a reading comes out doubtful although nothing is wrong: that the difference, which then scatters
 * about 0 with its standard uncertainty, leaves ±U and ±(δ − U) but not ±(δ + U).
 *
 * @example
 * chanceOfDoubtful({ …, standardUncertainty: 1, expandedUncertainty: 1.96, delta: 2, degreesOfFreedom: null })
 * // 0.0499… (between 1.96 and 3.96)
 */
export const chanceOfDoubtful = (
  figures: Pick<ReadingFigures, "standardUncertainty" | "expandedUncertainty" | "delta" | "degreesOfFreedom">,
): number => {
  const { standardUncertainty: u, expandedUncertainty: U, delta } = figures;
  if (u === 0) return 0;
  const degreesOfFreedom = figures.degreesOfFreedom ?? Number.POSITIVE_INFINITY;
  const [from, to] = [Math.max(U, delta - U), delta + U];
  return 2 * (studentTail(from / u, degreesOfFreedom) - studentTail(to / u, degreesOfFreedom));
};

/**
 * How many of the report's readings are doubtful, and how many chance alone would be expected to give.
 *
 * @example chanceOf(entries) // { readings: 96, doubtful: 7, expectedDoubtful: 3.1 }
 */
export const chanceOf = (entries: readonly Entry[]): Chance => {
  let expectedDoubtful = 0;
  let doubtful = 0;
  let readings = 0;
  for (const { figures, outcome } of entries) {
    if (figures?.of !== "reading") continue;
    readings += 1;
    if (outcome === "doubtful") doubtful += 1;
    expectedDoubtful += chanceOfDoubtful(figures);
  }
  return { readings, doubtful, expectedDoubtful };
};

/**
 * The Benjamini–Hochberg q-value of each reading of the report, in the order of the entries that carry readings. The
 * outcomes never depend on it.
 *
 * @example qValuesOf(entries) // [0.03, 0.8, …]
 */
export const qValuesOf = (entries: readonly Entry[]): number[] =>
  benjaminiHochberg(readingsOf(entries).map(({ pValue }) => Math.min(1, pValue)));
