import { stemAt } from "../token-text/index.ts";
import type { Token } from "../tokenize/index.ts";

/** A number in a text, from token `from` up to, not including, token `to`. */
export type NumberFound = { readonly value: number; readonly from: number; readonly to: number };

const list = (words: string, first: number, step = 1): [string, number][] =>
  words.split(" ").map((word, index) => [word, first + index * step]);

const UNITS = new Map(list("zero one two three four five six seven eight nine", 0));
const TEENS = new Map(
  list("ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen", 10),
);
const TENS = new Map([
  ...list("twenty thirty forty fifty sixty seventy eighty ninety", 20, 10),
  ["fourty", 40] as const,
]);
const PARTS = new Map([
  ["half", 2],
  ["quarter", 4],
  ["eighth", 8],
  ["sixteenth", 16],
  ["third", 3],
  ["tenth", 10],
]);
const OH = new Set(["oh", "o", "zero", "nought", "naught"]);

/** Every word a number may be made of; none of them is a misheard word of the trade. */
export const numberWords: ReadonlySet<string> = new Set([
  ...UNITS.keys(),
  ...TEENS.keys(),
  ...TENS.keys(),
  ...PARTS.keys(),
  ...OH,
  "hundred",
  "thousand",
  "grand",
  "point",
]);

const digitOf = (stem: string): number | undefined => (OH.has(stem) ? 0 : UNITS.get(stem));

type Read = { readonly value: number; readonly to: number };

/** Digits said one by one after the point: "six eight", "oh three". */
const decimalsAt = (tokens: readonly Token[], from: number): { digits: string; to: number } => {
  let digits = "";
  let to = from;
  for (; to < tokens.length; to += 1) {
    const token = tokens[to];
    const digit = token === undefined ? undefined : digitOf(token.stem);
    if (digit !== undefined) digits += String(digit);
    else if (token?.stem === "-" && digits !== "" && digitOf(stemAt(tokens, to + 1)) !== undefined) continue;
    else if (token?.kind === "number" && /^\d+$/u.test(token.stem)) digits += token.stem;
    else {
      const tens = digits === "" ? (TENS.get(token?.stem ?? "") ?? TEENS.get(token?.stem ?? "")) : undefined;
      if (tens === undefined) break;
      const unit = tens >= 20 ? UNITS.get(stemAt(tokens, to + 1)) : undefined;
      return { digits: String(tens + (unit ?? 0)), to: to + (unit === undefined ? 1 : 2) };
    }
  }
  return { digits, to };
};

/** A hyphen between number words is a breath, no minus. */
const past = (tokens: readonly Token[], at: number): number => (stemAt(tokens, at) === "-" ? at + 1 : at);

const isLarge = (stem: string): boolean => TENS.has(stem) || TEENS.has(stem) || OH.has(stem);

/** Below a hundred: "twelve", "forty five", "forty". In a row of "one eighty one eighty five" a unit before a ten opens the next number. */
const smallAt = (tokens: readonly Token[], from: number, inRow: boolean): Read | undefined => {
  const stem = stemAt(tokens, from);
  const teen = TEENS.get(stem);
  if (teen !== undefined) return { value: teen, to: from + 1 };
  const tens = TENS.get(stem);
  if (tens === undefined) return undefined;
  const next = past(tokens, from + 1);
  const unit = UNITS.get(stemAt(tokens, next));
  const opensNext = inRow && isLarge(stemAt(tokens, next + 1));
  if (unit === undefined || unit === 0 || opensNext) return { value: tens, to: from + 1 };
  return { value: tens + unit, to: next + 1 };
};

/** "one forty five" is 145, "one oh eight" 108, "six fifty" 650. */
const shortHundredsAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const unit = UNITS.get(stemAt(tokens, from));
  if (unit === undefined || unit === 0) return undefined;
  const next = past(tokens, from + 1);
  if (OH.has(stemAt(tokens, next))) {
    const last = UNITS.get(stemAt(tokens, next + 1));
    return last === undefined ? undefined : { value: unit * 100 + last, to: next + 2 };
  }
  if (
    /^second$/u.test(stemAt(tokens, next + 1)) ||
    (/^-$/u.test(stemAt(tokens, next + 1)) && stemAt(tokens, next + 2) === "second")
  )
    return undefined;
  const small = smallAt(tokens, next, true);
  return small === undefined ? undefined : { value: unit * 100 + small.value, to: small.to };
};

const belowHundredAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const small = smallAt(tokens, from, false);
  if (small !== undefined) return small;
  const unit = UNITS.get(stemAt(tokens, from));
  return unit === undefined ? undefined : { value: unit, to: from + 1 };
};

const digitsAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const token = tokens[from];
  return token?.kind === "number" ? { value: Number(token.stem), to: from + 1 } : undefined;
};

const SCALES = new Map([
  ["hundred", 100],
  ["thousand", 1000],
  ["grand", 1000],
  ["k", 1000],
]);

/** "ninety seven thousand four hundred", "a hundred and fifty", "two hundred sixty", "64 thousand". */
const longAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const article = /^an?$/u.test(stemAt(tokens, from)) && SCALES.has(stemAt(tokens, from + 1));
  // "Hundred ninety-four thousand", as who speaks the language as a second one leaves out the article.
  const bare =
    stemAt(tokens, from) === "hundred" && belowHundredAt(tokens, past(tokens, from + 1)) !== undefined;
  const first =
    article || bare
      ? { value: 1, to: article ? from + 1 : from }
      : (digitsAt(tokens, from) ?? belowHundredAt(tokens, from));
  if (first === undefined) return undefined;
  let total = 0;
  let current = first.value;
  let to = first.to;
  let scaled = false;
  for (;;) {
    const scale = SCALES.get(stemAt(tokens, past(tokens, to)));
    if (scale !== undefined && current < scale * 1000) {
      to = past(tokens, to) + 1;
      scaled = true;
      if (scale === 1000) {
        total += current * 1000;
        current = 0;
      } else current *= 100;
    } else {
      if (!scaled) break;
      // "Fifty at two thousand and twenty at idle" are two numbers.
      if (total > 0 && /^(?:and|,)$/u.test(stemAt(tokens, to)) && stemAt(tokens, from - 1) === "at") break;
      const skip =
        /^(?:and|,)$/u.test(stemAt(tokens, to)) && total > 0
          ? to + 1
          : stemAt(tokens, to) === "and"
            ? to + 1
            : to;
      const more = moreAt(tokens, skip, current);
      if (more === undefined) break;
      current += more.value;
      to = more.to;
      if (SCALES.get(stemAt(tokens, past(tokens, to))) === undefined) break;
    }
  }
  return scaled ? { value: total + current, to } : undefined;
};

const moreAt = (tokens: readonly Token[], at: number, current: number): Read | undefined => {
  if (current === 0) {
    const short = shortHundredsAt(tokens, at);
    if (short !== undefined) return short;
  }
  const next = belowHundredAt(tokens, at);
  if (next === undefined) return undefined;
  const scale = SCALES.get(stemAt(tokens, next.to));
  if (scale === 100 && current === 0) {
    const rest = stemAt(tokens, next.to + 1) === "and" ? next.to + 2 : next.to + 1;
    const last = belowHundredAt(tokens, rest);
    return { value: next.value * 100 + (last?.value ?? 0), to: last?.to ?? next.to + 1 };
  }
  return current % 100 === 0 ? next : undefined;
};

/** "twenty twenty-four" is 2024, "nineteen ninety-six" 1996, "twenty oh eight" 2008. */
const yearAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const century =
    stemAt(tokens, from) === "twenty" ? 2000 : stemAt(tokens, from) === "nineteen" ? 1900 : undefined;
  if (century === undefined) return undefined;
  const next = past(tokens, from + 1);
  if (OH.has(stemAt(tokens, next))) {
    const unit = UNITS.get(stemAt(tokens, next + 1));
    return unit === undefined ? undefined : { value: century + unit, to: next + 2 };
  }
  const rest = smallAt(tokens, next, false);
  if (
    rest === undefined ||
    (century === 2000 && rest.value > LATEST) ||
    (century === 1900 && rest.value < 20)
  )
    return undefined;
  return SCALES.has(stemAt(tokens, rest.to)) ? undefined : { value: century + rest.value, to: rest.to };
};
/** Of this century, years up to here are said "twenty …". */
const LATEST = 39;

/** "half an inch", "three quarters", "a quarter", "three eighths". */
const fractionAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const lead = /^an?$/u.test(stemAt(tokens, from)) ? from + 1 : from;
  const bare = PARTS.get(stemAt(tokens, lead));
  if (bare !== undefined && bare !== 3 && (bare === 2 || bare === 4 || bare === 8))
    return { value: 1 / bare, to: lead + 1 };
  const count =
    UNITS.get(stemAt(tokens, from)) ??
    (tokens[from]?.kind === "number" ? Number(stemAt(tokens, from)) : undefined);
  const next = past(tokens, from + 1);
  const part = PARTS.get(stemAt(tokens, next));
  if (count === undefined || part === undefined || count >= part) return undefined;
  return { value: count / part, to: next + 1 };
};

/** "and a half" after a whole number. */
const withHalf = (tokens: readonly Token[], read: Read): Read => {
  const at = past(tokens, read.to);
  if (stemAt(tokens, at) !== "and") return read;
  const part = fractionAt(tokens, at + 1);
  return part === undefined || part.value >= 1 ? read : { value: read.value + part.value, to: part.to };
};

const withPoint = (tokens: readonly Token[], read: Read): Read => {
  if (stemAt(tokens, read.to) !== "point") return read;
  const { digits, to } = decimalsAt(tokens, read.to + 1);
  return digits === "" ? read : { value: Number(`${read.value}.${digits}`), to };
};

const pointAt = (tokens: readonly Token[], from: number): Read | undefined => {
  const start = OH.has(stemAt(tokens, from)) ? from + 1 : from;
  if (stemAt(tokens, start) !== "point") return undefined;
  const { digits, to } = decimalsAt(tokens, start + 1);
  return digits === "" ? undefined : { value: Number(`0.${digits}`), to };
};

const LEAST_SPELLED = 4;
const LONGEST_SPELLED = 7;

/** "Five four two one eight": figure by figure, at least four of them. */
const spelledAt = (tokens: readonly Token[], from: number): Read | undefined => {
  let [digits, to] = ["", from];
  for (; to < tokens.length; to += 1) {
    const stem = stemAt(tokens, to);
    const digit = OH.has(stem) || stem === "zero" ? 0 : UNITS.get(stem);
    if (digit === undefined || digit > 9 || digits.length > LONGEST_SPELLED) break;
    digits += String(digit);
  }
  return digits.length >= LEAST_SPELLED && !SCALES.has(stemAt(tokens, to))
    ? { value: Number(digits), to }
    : undefined;
};

/**
 * The number that begins at a token, in figures or in words, the way people say them: "ninety-seven thousand four hundred",
 * "one forty-five", "point oh-eight", "three quarters", "two and a half". Nothing where none begins there.
 *
 * @example
 * numberAt(tokenize("one forty-five on number three"), 0)?.value; // 145
 */
export const numberAt = (tokens: readonly Token[], from: number): NumberFound | undefined => {
  const read =
    spelledAt(tokens, from) ??
    pointAt(tokens, from) ??
    yearAt(tokens, from) ??
    longAt(tokens, from) ??
    fractionAt(tokens, from) ??
    shortHundredsAt(tokens, from) ??
    digitsAt(tokens, from) ??
    belowHundredAt(tokens, from);
  if (read === undefined) return undefined;
  return { from, ...withHalf(tokens, withPoint(tokens, read)) };
};

/**
 * Every number of a text, in order, none within another.
 *
 * @example
 * numbersIn(tokenize("thirty psi in front, 28 behind")).map(({ value }) => value); // [30, 28]
 */
export const numbersIn = (tokens: readonly Token[]): NumberFound[] => {
  const found: NumberFound[] = [];
  for (let at = 0; at < tokens.length;) {
    const number = numberAt(tokens, at);
    if (number !== undefined) found.push(number);
    at = number?.to ?? at + 1;
  }
  return found;
};
