import type { RuleResult } from "@evenhand/shared/cross-check";
import { normalizeNumber } from "../identifier-text/index.ts";
import { figure } from "../rule-result/index.ts";
import { chassisPatternRecord } from "./record.ts";

type Place = (character: string) => boolean;

const digit: Place = (character) => /^\d$/.test(character);
const letter: Place = (character) => /^[A-Z]$/.test(character);

const placeOf = (piece: string): Place => {
  if (piece === "#") return digit;
  if (piece === "@") return letter;
  if (piece === "?") return (character) => digit(character) || letter(character);
  if (piece.startsWith("[")) return (character) => character !== "" && piece.slice(1, -1).includes(character);
  return (character) => character === piece;
};

/**
 * The places of a maker's form, as a firm writes it: `#` a digit, `@` a letter, `?` either, `[123]` one of those
 * listed, any other character itself. Matching looks at each place once, so no form can be slow.
 */
const placesOf = (pattern: string): Place[] =>
  (normalizeNumber(pattern).match(/\[[^\]]*\]|./g) ?? []).map(placeOf);

export type ChassisPatternInput = {
  readonly number: string;
  /** The maker's form for the model and year, entered by the firm. */
  readonly pattern?: string;
  /** One person read it, once: what is wrong with it may be the reading. */
  readonly readOnce?: boolean;
};

/**
 * Form of an older chassis number against the maker's own, as the firm entered it. A number that was read once is to be read
 * again before anything is made of it.
 *
 * Source: the firm's entry.
 *
 * @example chassisPattern({ number: "TM467R 20871", pattern: "T[MN]###[RW]#####" }).reason // "matches"
 */
export const chassisPattern = ({ number, pattern, readOnce }: ChassisPatternInput): RuleResult => {
  const text = normalizeNumber(number);
  if (pattern === undefined) return chassisPatternRecord.answer("no-pattern", { words: { number: text } });
  const places = placesOf(pattern);
  const wrong = places.findIndex((fits, index) => !fits(text[index] ?? ""));
  const fits = wrong < 0 && text.length === places.length;
  const place = wrong < 0 ? places.length : wrong;
  const wrongly = readOnce === true ? "read-again" : "does-not-match";
  return chassisPatternRecord.answer(fits ? "matches" : wrongly, {
    words: { number: text, pattern },
    figures: fits ? {} : { place: figure(place + 1) },
  });
};
