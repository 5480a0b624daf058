import type { GradeScale } from "@evenhand/shared/report";
import { gradeStretch } from "../grade-scale/index.ts";

/** Words that a buyer takes for the best there is (a list of our own, no source). */
const PRAISE =
  /\b(?:flawless|perfect|faultless|immaculate|pristine|mint|spotless|excellent|superb|as[ -]new|like[ -]new|brand[ -]new)\b/iu;

const MIDDLE = 0.5;
const ROUNDING = 1e-9;

/**
 * Whether a grade of a report's own scale is called by a word of praise and stands, by its rank, in the middle of that scale or under it:
 * whoever reads the word takes it for more than it is compared as.
 *
 * @example isPraise({ scale: "own", value: "flawless" }, [fiveWordsWithFlawlessThird]) // true
 */
export const isPraise = (
  grade: { readonly scale: string; readonly value: string | number },
  scales: readonly GradeScale[],
): boolean => {
  if (grade.scale === "house" || grade.scale === "percent") return false;
  const word = scales.find(({ id }) => id === grade.scale)?.grades.find(({ id }) => id === grade.value);
  const stretch = gradeStretch(grade, scales);
  return (
    word !== undefined &&
    stretch !== undefined &&
    PRAISE.test(word.name) &&
    (stretch[0] + stretch[1]) / 2 <= MIDDLE + ROUNDING
  );
};
