import type { CodeFigures } from "@evenhand/shared/comparison";
import type { CodeSystem } from "@evenhand/shared/sheet";
import { hasRightCheckDigit } from "@evenhand/handbook/check-digit";
import { isInWords, isSameAsNormalized, normalizeCode, saysLessThan } from "@evenhand/handbook/code-text";
import type { NormalizedCode } from "@evenhand/handbook/code-text";
import { misreading } from "@evenhand/handbook/identifier-text";
import { excludeEachOther } from "@evenhand/handbook/written-words";
import type { Judgment } from "../judgment/index.ts";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";

export { normalizeCode };

const LENGTH_WITH_CHECK_DIGIT = 17;

/** Whose text passes its check digit: only where both have the length at which one exists. */
const whichPasses = (system: CodeSystem, a: string, b: string, checked: boolean): CodeFigures["passes"] => {
  if (!checked || (system !== "vin" && system !== "chassis-number")) return null;
  if (a.length !== LENGTH_WITH_CHECK_DIGIT || b.length !== LENGTH_WITH_CHECK_DIGIT) return null;
  const passesA = hasRightCheckDigit(a);
  const passesB = hasRightCheckDigit(b);
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

/** Characters whose shapes are taken for each other under paint, dirt or wear, beside those of print. */
const WORN_SHAPES = ["38", "68", "56", "17", "49", "EF", "PR", "0OD", "1IL", "2Z", "5S", "8B", "CG", "UV"];

const isWornShape = (a: string, b: string): boolean =>
  WORN_SHAPES.some((shapes) => shapes.includes(a) && shapes.includes(b));

const oneWornShape = (a: string, b: string): boolean => {
  if (a.length !== b.length) return false;
  const [at, ...more] = places(a, b);
  return at !== undefined && more.length === 0 && isWornShape(a[at] ?? "", b[at] ?? "");
};

/** One character dropped, or written twice. */
const oneDropped = (a: string, b: string): boolean => {
  const long = a.length > b.length ? a : b;
  const short = a.length > b.length ? b : a;
  if (long.length !== short.length + 1 || short.length < 4) return false;
  let at = 0;
  while (at < short.length && long[at] === short[at]) at += 1;
  // From the first place where they part, the longer one goes on a character later: whichever of a pair was dropped.
  return long.slice(at + 1) === short.slice(at);
};

type Said = { readonly outcome: Judgment["outcome"]; readonly reason: Reason };

const OTHER: Said = { outcome: "differ", reason: "other-code" };
const LESS: Said = { outcome: "consistent", reason: "says-less" };
const IN_OWN_WORDS: Said = { outcome: "incomparable", reason: "own-words" };

/** How a thing is told differs from person to person; only what cannot be true at once contradicts it. */
const judgeApart = (system: CodeSystem, a: string, b: string): Said => {
  if (system === "own-words") return IN_OWN_WORDS;
  return system === "description" && !excludeEachOther(a, b) ? IN_OWN_WORDS : OTHER;
};

const judge = (system: CodeSystem, codeA: NormalizedCode, codeB: NormalizedCode): Said => {
  if (isSameAsNormalized(system, codeA, codeB)) return { outcome: "agree", reason: "same-code" };
  if (isInWords(system, codeA.text) || isInWords(system, codeB.text)) return IN_OWN_WORDS;
  // Sizes have no look-alikes: another figure is another size.
  if (system === "tire-size") return saysLessThan(system, codeA, codeB) ? LESS : OTHER;
  const [a, b] = [codeA.normalized, codeB.normalized];
  const apart = misreading(a, b);
  if (apart === "exchanged") return { outcome: "doubtful", reason: "two-exchanged" };
  if (apart === "look-alike" || oneWornShape(a, b)) return { outcome: "doubtful", reason: "one-look-alike" };
  if (oneDropped(a, b)) return { outcome: "doubtful", reason: "one-dropped" };
  return saysLessThan(system, codeA, codeB) ? LESS : judgeApart(system, codeA.text, codeB.text);
};

/**
 * Compares two codes by what they mean in their system: a date however it is written, a tire by its date alone, a part number with
 * and without its suffix agree; a year, a shade left out says less and contradicts nothing; what people tell in words of their own is
 * set against each other only where it cannot both be true. One look-alike character, one dropped or doubled, one exchange of neighbors apart is "probably
 * misread" and doubtful, with the check digit (49 CFR 565.15) as judge of which reading is right.
 *
 * @param checked whether a check digit applies to this car (model year 1981 on)
 * @example compareCode("casting-number", "4417 B", "4417", false).outcome // "agree"
 */
export const compareCode = (system: CodeSystem, textA: string, textB: string, checked: boolean): Judgment => {
  const a = normalizeCode(system, textA);
  const b = normalizeCode(system, textB);
  const { outcome, reason } = judge(system, { text: textA, normalized: a }, { text: textB, normalized: b });
  return {
    outcome,
    reason,
    direction: "neither",
    standing: standingOf(outcome),
    figures: { of: "code", a, b, passes: whichPasses(system, a, b, checked), differsAt: places(a, b) },
    limits: undefined,
    marks: undefined,
    coverageOnly: undefined,
  };
};
