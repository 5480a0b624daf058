import { numberAt } from "@evenhand/lexicon/number-words";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import type { SaidNumber } from "../answer-of/index.ts";

export const indexOf = (
  tokens: readonly RepairedToken[],
  { from, value, unit }: SaidNumber,
): number | undefined => {
  const before = tokens[from - 1]?.stem ?? "";
  const whole = Number.isInteger(value) && value >= 1 && value <= 16 && unit === undefined;
  return whole && /^(?:on|number|cylinder|no|#)$/u.test(before) ? value : undefined;
};

/** "The right one", "another one": no number. */
export const isPronoun = (tokens: readonly RepairedToken[], { from, to, unit, value }: SaidNumber): boolean =>
  value === 1 &&
  unit === undefined &&
  to - from === 1 &&
  tokens[from]?.stem === "one" &&
  // "I've got one key" counts.
  tokens[to]?.stem !== "key" &&
  (tokens[to]?.stem === "of" ||
    (!/^(?:on|number|cylinder|and|,)$/u.test(tokens[from - 1]?.stem ?? "") &&
      numberAt(tokens, from - 1) === undefined));

/** "Cylinders one through six" counts them. */
export const isRange = (tokens: readonly RepairedToken[], { from, to, value, unit }: SaidNumber): boolean =>
  Number.isInteger(value) &&
  value <= 16 &&
  unit === undefined &&
  (/^(?:through|to|thru)$/u.test(tokens[to]?.stem ?? "") ||
    /^(?:through|thru)$/u.test(tokens[from - 1]?.stem ?? ""));

/** "Six cylinders", "four doors": how many there are, and no reading of them. */
export const isCountOf = (tokens: readonly RepairedToken[], { to, unit, value }: SaidNumber): boolean =>
  unit === undefined &&
  Number.isInteger(value) &&
  value <= 16 &&
  tokens[tokens[to]?.stem === "-" ? to + 1 : to]?.stem === "cylinder";

/** "You won't see it from ten feet", "at twenty paces": from how far away one looks, and no length of anything. */
export const isDistance = (tokens: readonly RepairedToken[], { from, to, unit }: SaidNumber): boolean =>
  /^(?:ft|in|m)$/u.test(unit ?? "") &&
  (/^(?:away|off|back)$/u.test(tokens[to]?.stem ?? "") ||
    (tokens[from - 1]?.stem === "from" && !/^(?:up|down|behind)$/u.test(tokens[to]?.stem ?? "")));

/** "It should be a hundred and seventy", "ought to give one fifty". */
const isWanted = (tokens: readonly RepairedToken[], from: number): boolean =>
  /\b(?:should|ought to|supposed to|meant to) (?:be|give|read|show|have|measure|make)(?: (?:about|around|an?|at|at least))*$/u.test(
    tokens
      .slice(Math.max(0, from - 5), from)
      .map(({ stem }) => stem)
      .join(" "),
  );

/** "Limit eight", "minimum of eight": what a thing should be, and not what it is. */
export const isLimit = (tokens: readonly RepairedToken[], { from }: SaidNumber): boolean =>
  isWanted(tokens, from) ||
  /^(?:limit|minimum|min|maximum|max|spec|specification)$/u.test(
    tokens[/^(?:of|is|s|:|are)$/u.test(tokens[from - 1]?.stem ?? "") ? from - 2 : from - 1]?.stem ?? "",
  );
