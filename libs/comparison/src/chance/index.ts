import type { Chance, Entry, ReadingFigures } from "@evenhand/shared/comparison";
import { benjaminiHochberg } from "@evenhand/measurement/benjamini-hochberg";
import { studentTail } from "@evenhand/measurement/student-tail";

/**
 * The chance that a reading comes out doubtful although nothing is wrong: that the difference, which then scatters
 * about 0 with its standard uncertainty, leaves ±U and ±(δ − U) but not ±(δ + U). What may rightly move from one day to another is
 * doubtful only past ±(U + allowance).
 *
 * @param allowance 0 where nothing is allowed
 * @example
 * chanceOfDoubtful({ …, standardUncertainty: 1, expandedUncertainty: 1.96, delta: 2, degreesOfFreedom: null })
 * // 0.0499… (between 1.96 and 3.96)
 */
export const chanceOfDoubtful = (
  figures: Pick<ReadingFigures, "standardUncertainty" | "expandedUncertainty" | "delta" | "degreesOfFreedom">,
  allowance = 0,
): number => {
  const { standardUncertainty: u, expandedUncertainty: U, delta } = figures;
  if (u === 0) return 0;
  const degreesOfFreedom = figures.degreesOfFreedom ?? Number.POSITIVE_INFINITY;
  const [from, to] = [Math.max(U + allowance, delta - U), delta + U];
  return from >= to
    ? 0
    : 2 * (studentTail(from / u, degreesOfFreedom) - studentTail(to / u, degreesOfFreedom));
};

/**
 * How many of the report's readings are doubtful, and how many chance alone would be expected to give, of readings compared as these were.
 *
 * @param allowanceOf how far a reading may rightly have moved between the two looks
 * @example chanceOf(entries, () => 0) // { readings: 96, doubtful: 7, expectedDoubtful: 3.1 }
 */
export const chanceOf = (
  entries: readonly Entry[],
  allowanceOf: (entry: Entry, figures: ReadingFigures) => number,
): Chance => {
  let expectedDoubtful = 0;
  let doubtful = 0;
  let readings = 0;
  for (const entry of entries) {
    const { figures, outcome } = entry;
    if (figures?.of !== "reading") continue;
    readings += 1;
    if (outcome === "doubtful") doubtful += 1;
    expectedDoubtful += chanceOfDoubtful(figures, allowanceOf(entry, figures));
  }
  return { readings, doubtful, expectedDoubtful };
};

/**
 * The Benjamini–Hochberg q-value of each reading of the report, in the order of the entries that carry readings. The
 * outcomes never depend on it.
 *
 * @example qValuesOf(entries) // [0.03, 0.8, …]
 */
export const qValuesOf = (entries: readonly Entry[]): number[] => {
  const pValues: number[] = [];
  for (const { figures } of entries) if (figures?.of === "reading") pValues.push(Math.min(1, figures.pValue));
  return benjaminiHochberg(pValues);
};
