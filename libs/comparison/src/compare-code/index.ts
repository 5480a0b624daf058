import type { CodeFigures } from "@evenhand/shared/comparison";
import type { CodeSystem } from "@evenhand/shared/sheet";
import { hasRightCheckDigit } from "@evenhand/handbook/check-digit";
import { misreading, normalizeNumber, normalizeVin } from "@evenhand/handbook/identifier-text";
import type { Judgment } from "../judgment/index.ts";
import { standingOf } from "../standing/index.ts";

const bySystem = (system: CodeSystem, text: string): string => {
  if (system === "text") return text.replaceAll(/\s+/g, " ");
  if (system === "tire-size") return text.replaceAll(/\s+/g, "");
  if (system === "tire-identification") return normalizeNumber(text).replace(/^DOT/, "");
  return system === "vin" || system === "chassis-number" ? normalizeVin(text) : normalizeNumber(text);
};

/**
 * A code as it is compared in its system: capitals without spaces and marks; in a VIN the letters it never holds
 * read as digits; free text only loses case and doubled spaces, since its marks can carry meaning. Text of nothing
 * but marks stays as it is.
 *
 * @example normalizeCode("tire-size", "P205/75 R15") // "P205/75R15"
 */
export const normalizeCode = (system: CodeSystem, text: string): string =>
  (bySystem(system, text) || text).trim().toUpperCase();

const LENGTH_WITH_CHECK_DIGIT = 17;

/** Whose text passes its check digit: only where both have the length at which one exists. */
const whichPasses = (system: CodeSystem, a: string, b: string, checked: boolean): CodeFigures["passes"] => {
  if (!checked || (system !== "vin" && system !== "chassis-number")) return null;
  if (a.length !== LENGTH_WITH_CHECK_DIGIT || b.length !== LENGTH_WITH_CHECK_DIGIT) return null;
  const [passesA, passesB] = [hasRightCheckDigit(a), hasRightCheckDigit(b)];
  if (passesA === passesB) return passesA ? "both" : "neither";
  return passesA ? "a" : "b";
};

const places = (a: string, b: string): number[] => {
  const differing: number[] = [];
  for (let index = 0; index < Math.max(a.length, b.length); index += 1) {
    if (a[index] !== b[index]) differing.push(index);
  }
  return differing;
};

const REASONS = {
  same: "same-code",
  "look-alike": "one-look-alike",
  exchanged: "two-exchanged",
  other: "other-code",
} as const;
const OUTCOMES = { same: "agree", "look-alike": "doubtful", exchanged: "doubtful", other: "differ" } as const;

/**
 * Compares two codes: one look-alike character or one exchange of neighbors apart is "probably misread" and
 * doubtful, with the check digit (49 CFR 565.15) as judge of which reading is right.
 *
 * @param checked whether a check digit applies to this car (model year 1981 on)
 * @example compareCode("vin", "1HGCM82633A004352", "1HGCM8Z633A004352", true).figures.passes // "a"
 */
export const compareCode = (system: CodeSystem, textA: string, textB: string, checked: boolean): Judgment => {
  const [a, b] = [normalizeCode(system, textA), normalizeCode(system, textB)];
  const apart = a === b ? "same" : misreading(a, b);
  const outcome = OUTCOMES[apart];
  return {
    outcome,
    reason: REASONS[apart],
    direction: "neither",
    standing: standingOf(outcome),
    figures: { of: "code", a, b, passes: whichPasses(system, a, b, checked), differsAt: places(a, b) },
  };
};
