import type { GradeScale } from "@evenhand/shared/report";
import { HouseGrade } from "@evenhand/shared/sheet";

/** The part of 0–1 (worst to best) a grade covers. Internal; never shown. */
export type Stretch = readonly [low: number, high: number];

/** The house grades from worst to best; each covers a fifth. */
export const houseGrades: readonly HouseGrade[] = HouseGrade.options;

/** Width of a house step on 0–1. */
export const houseStep = 1 / houseGrades.length;

function stretchOfIndex(index: number, count: number): Stretch | undefined {
  return index < 0 ? undefined : [index / count, (index + 1) / count];
}

/** What every percentage covers, in per cent, whatever step its author says it is given in: a wide step must widen nothing. */
const PERCENT_WIDTH = 5;

/** Around the value, kept inside 0–1. */
function percentStretch(value: number, step: number): Stretch | undefined {
  if (!(value >= 0 && value <= 100) || !(step > 0 && step <= 100)) return undefined;
  const low = Math.min(Math.max(value - PERCENT_WIDTH / 2, 0), 100 - PERCENT_WIDTH);
  return [low / 100, (low + PERCENT_WIDTH) / 100];
}

/** By plain rank over equal shares: no report brings stretches of its own. */
function ownStretch({ grades }: GradeScale, value: string): Stretch | undefined {
  return stretchOfIndex(
    grades.findIndex(({ id }) => id === value),
    grades.length,
  );
}

/**
 * The stretch of 0–1 a grade covers: on the scale `house` a fifth; on `percent` a twentieth, whatever the step that the
 * report's scale `percent` gives, so that nobody agrees more by a wider one; on a report's own scale an equal share of 0–1 by its rank.
 *
 * @param scales the report's own scales
 * @returns `undefined` where the scale or the value on it is unknown, or a percentage has no step
 * @example
 * gradeStretch({ scale: "house", value: "even-wear" }, []); // [0.4, 0.6]
 */
export function gradeStretch(
  grade: { readonly scale: string; readonly value: string | number },
  scales: readonly GradeScale[],
): Stretch | undefined {
  const { scale: id, value } = grade;
  if (id === "house") {
    return stretchOfIndex(
      houseGrades.findIndex((house) => house === value),
      houseGrades.length,
    );
  }
  const scale = scales.find((candidate) => candidate.id === id);
  if (scale === undefined) return undefined;
  if (id === "percent") {
    return typeof value === "number" && scale.step !== undefined
      ? percentStretch(value, scale.step)
      : undefined;
  }
  return typeof value === "string" ? ownStretch(scale, value) : undefined;
}

/**
 * The house grade a stretch's middle lies in; on a boundary the better one.
 *
 * @example
 * houseGradeOf([0.5, 0.75]); // "light-wear"
 */
export function houseGradeOf([low, high]: Stretch): HouseGrade {
  // 1e-9: thirds and fifths meet at boundaries that floating point misses by less.
  const index = Math.floor(((low + high) / 2) * houseGrades.length + 1e-9);
  return houseGrades[Math.max(index, 0)] ?? "as-new";
}

/**
 * The house grades a grade on another scale is mapped to, from worst to best: those that share more than half of
 * either with it, else the one its middle lies in.
 *
 * @returns empty for a house grade, which is none but itself, and where the scale or the value is unknown
 * @example
 * mappedTo({ scale: "stars", value: "two" }, [threeStars]); // ["even-wear"]
 */
export function mappedTo(
  grade: { readonly scale: string; readonly value: string | number },
  scales: readonly GradeScale[],
): HouseGrade[] {
  const stretch = grade.scale === "house" ? undefined : gradeStretch(grade, scales);
  if (stretch === undefined) return [];
  const [low, high] = stretch;
  const half = Math.min(houseStep, high - low) / 2;
  const covered = houseGrades.filter((_, index) => {
    const shared = Math.min(high, (index + 1) * houseStep) - Math.max(low, index * houseStep);
    return shared > half + 1e-9;
  });
  return covered.length === 0 ? [houseGradeOf(stretch)] : covered;
}
