import { numberAt } from "@evenhand/lexicon/number-words";
import type { RepairedToken } from "@evenhand/lexicon/repair";
import { stemAt } from "@evenhand/lexicon/token-text";

/** A number below a hundred as it was said, `hundred`, or a letter, with the token after it. */
type Atom = { readonly said: number | string; readonly to: number };

const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
};
/** What may stand between the figures of a size: "two fifteen by fifteen", "seventy R fourteen". */
const BETWEEN = /^(?:by|on|x|and|inch|slash|-|–|\/|p)$/u;
const SPEEDS = /^(?:r|radial|hr|sr|vr|zr|s)$/u;
const LOADS = /^[a-hj-n]$/u;

const past = (tokens: readonly RepairedToken[], at: number): number =>
  stemAt(tokens, at) === "-" ? at + 1 : at;

/** A number from nought to ninety-nine at a token, ten and its unit together; three figures in a row apart. */
const atomAt = (tokens: readonly RepairedToken[], at: number): Atom | undefined => {
  const stem = stemAt(tokens, at);
  if (stem === "hundred") return { said: "hundred", to: at + 1 };
  if (/^(?:oh|o|zero)$/u.test(stem)) {
    const unit = numberAt(tokens.slice(past(tokens, at + 1), past(tokens, at + 1) + 1), 0);
    return unit !== undefined && unit.value < 10
      ? { said: unit.value, to: past(tokens, at + 1) + 1 }
      : undefined;
  }
  const ten = TENS[stem];
  if (ten !== undefined) {
    const next = past(tokens, at + 1);
    const unit = numberAt(tokens.slice(next, next + 1), 0);
    return unit !== undefined &&
      unit.value >= 1 &&
      unit.value < 10 &&
      TENS[stemAt(tokens, next)] === undefined
      ? { said: ten + unit.value, to: next + 1 }
      : { said: ten, to: at + 1 };
  }
  // "7.60-15"
  if (/^\d{1,2}\.\d[05]$/u.test(stem)) return { said: Math.round(Number(stem) * 100), to: at + 1 };
  const one = numberAt(tokens.slice(at, at + 1), 0);
  return one === undefined || one.value !== Math.floor(one.value)
    ? undefined
    : { said: one.value, to: at + 1 };
};

type Read = { readonly atoms: readonly (number | string)[]; readonly speed: string; readonly to: number };

const MOST_ATOMS = 6;

/** Figures said one after another, with no other word between them than those a size has. */
const atomsAt = (tokens: readonly RepairedToken[], from: number, to: number): Read => {
  const atoms: (number | string)[] = [];
  let [at, end, speed] = [from, from, ""];
  while (at < to && atoms.length < MOST_ATOMS) {
    const stem = stemAt(tokens, at);
    const atom = atomAt(tokens, at);
    if (atom !== undefined) {
      atoms.push(atom.said);
      at = atom.to;
      end = at;
    } else if (atoms.length === 0 && stem === "a" && stemAt(tokens, at + 1) === "hundred") at += 1;
    else if (atoms.length === 0 && LOADS.test(stem)) {
      atoms.push(stem.toUpperCase());
      at += 1;
    } else if (atoms.length > 0 && SPEEDS.test(stem)) {
      if (stem !== "s" || (atoms.length > 1 && speed === ""))
        speed = stem === "radial" ? "R" : stem.toUpperCase();
      at += 1;
    } else if (atoms.length > 0 && BETWEEN.test(stem)) at += 1;
    else break;
  }
  return { atoms, speed, to: end };
};

const isRim = (value: number | string | undefined): value is number =>
  typeof value === "number" && value >= 10 && value <= 22;
const isRatio = (value: number | string | undefined): value is number =>
  typeof value === "number" && value >= 25 && value <= 85 && value % 5 === 0;
const isNumber = (value: number | string | undefined): value is number => typeof value === "number";

/** "A hundred eighty-five", "two hundred five". */
const hundreds = ([a, b, c]: Read["atoms"]):
  { readonly width: number; readonly took: number } | undefined => {
  if (a === "hundred" && isNumber(b) && b < 100) return { width: 100 + b, took: 2 };
  return isNumber(a) && a <= 3 && b === "hundred" && isNumber(c) && c < 100
    ? { width: a * 100 + c, took: 3 }
    : undefined;
};

/** Width of a tire in millimeters from "two oh five", "one eighty-five" or 205; and how many figures it took. */
const widthOf = ([a, b]: Read["atoms"]): { readonly width: number; readonly took: number } | undefined => {
  if (isNumber(a) && a >= 105 && a <= 345 && a % 5 === 0) return { width: a, took: 1 };
  if (isNumber(a) && a >= 1 && a <= 3 && isNumber(b) && b < 100 && b % 5 === 0)
    return { width: a * 100 + b, took: 2 };
  return undefined;
};

const withSpeed = (speed: string): string => (speed === "" || speed === "S" ? "-" : speed);

/** "Two oh five seventy fifteen" is 205/70-15, "one sixty-five thirteen" 165-13. */
const metric = ({ atoms, speed }: Read): string | undefined => {
  const width = hundreds(atoms) ?? widthOf(atoms);
  if (width === undefined || width.width < 105 || width.width % 5 !== 0) return undefined;
  const [one, two] = atoms.slice(width.took);
  if (isRatio(one) && isRim(two)) return `${width.width}/${one}${withSpeed(speed)}${two}`;
  return isRim(one) ? `${width.width}${withSpeed(speed)}${one}` : undefined;
};

/** "Six seventy fifteen" is 6.70-15, "seven hundred sixteens" 7.00-16. */
const inches = ({ atoms, speed }: Read): string | undefined => {
  const [a, b, c] = atoms;
  if (isNumber(a) && a >= 400 && a <= 1000 && a % 5 === 0 && isRim(b))
    return `${(a / 100).toFixed(2)}${withSpeed(speed)}${b}`;
  if (!isNumber(a) || a < 3 || a > 10 || !isRim(c)) return undefined;
  const part = b === "hundred" ? 0 : isNumber(b) && b >= 10 && b < 100 && b % 5 === 0 ? b : undefined;
  return part === undefined ? undefined : `${a}.${String(part).padStart(2, "0")}${withSpeed(speed)}${c}`;
};

/** "G seventy-eight fifteen" is G78-15. */
const lettered = ({ atoms, speed }: Read): string | undefined => {
  const [a, b, c] = atoms;
  if (typeof a !== "string" || a === "hundred" || !isRim(c)) return undefined;
  return isNumber(b) && [78, 70, 60, 50].includes(b) ? `${a}${speed === "R" ? "R" : ""}${b}-${c}` : undefined;
};

/**
 * A tire's size said in words or figures: width, ratio and rim one after another.
 *
 * @example
 * tireSizeIn(tokens("two thirty-five sixty fifteen all round"), 0, 8); // "235/60-15"
 */
export const tireSizeIn = (
  tokens: readonly RepairedToken[],
  from: number,
  to: number,
): string | undefined => {
  for (let at = from; at < to; at += 1) {
    if (at > from && /^(?:hundred|-)$/u.test(stemAt(tokens, at - 1))) continue;
    if (at > from && numberAt(tokens, at - 1) !== undefined) continue;
    const read = atomsAt(tokens, at, to);
    const size = lettered(read) ?? metric(read) ?? inches(read);
    if (size !== undefined) return size;
  }
  return undefined;
};

const WEEKS = 53;
/** What years of this century begin with. */
const YEARS_OF = 20;
const two = (value: number): string => String(value).padStart(2, "0");

/** "Week thirty-two of twenty nineteen". */
const weekOf = (tokens: readonly RepairedToken[], from: number, to: number): string | undefined => {
  for (let at = from; at < to; at += 1) {
    if (stemAt(tokens, at) !== "week") continue;
    const week = numberAt(tokens, at + 1);
    const next =
      week === undefined ? at : /^(?:of|in|,)$/u.test(stemAt(tokens, week.to)) ? week.to + 1 : week.to;
    const year = week === undefined ? undefined : numberAt(tokens, next);
    if (week !== undefined && week.value <= WEEKS && year !== undefined && year.value >= 2000)
      return `${two(week.value)}${two(year.value % 100)}`;
  }
  return undefined;
};

/**
 * Week and year of a tire's date code, in four figures, said in words or figures.
 *
 * @param year year it was said in; a code of a later year is none
 * @example
 * tireDateIn(tokens("date code thirty-two nineteen"), 2, 6, 2026); // "3219"
 */
export const tireDateIn = (
  tokens: readonly RepairedToken[],
  from: number,
  to: number,
  year: number,
): string | undefined => {
  const said = weekOf(tokens, from, to);
  if (said !== undefined) return said;
  for (let at = from; at < to; at += 1) {
    if (at > from && numberAt(tokens, at - 1) !== undefined) continue;
    const raw = stemAt(tokens, at);
    const written = /^\d{4}$/u.test(raw)
      ? [Number(raw.slice(0, 2)), Number(raw.slice(2))]
      : atomsAt(tokens, at, to).atoms;
    const [week, of] = digitsJoined(written);
    // "Date code says 2016": a year.
    if (week === YEARS_OF && /^\d{4}$|^twenty$/u.test(raw)) continue;
    if (isNumber(week) && week >= 1 && week <= WEEKS && isNumber(of) && of <= year % 100)
      return `${two(week)}${two(of)}`;
  }
  return undefined;
};

/** "One four one eight" is fourteen eighteen. */
const digitsJoined = (atoms: Read["atoms"]): Read["atoms"] => {
  const [a, b, c, d] = atoms;
  const digits = [a, b, c, d].every((one) => isNumber(one) && one < 10);
  if (digits && isNumber(a) && isNumber(b) && isNumber(c) && isNumber(d)) return [a * 10 + b, c * 10 + d];
  if (isNumber(a) && isNumber(b) && isNumber(c) && b < 10 && c < 10 && a >= 10) return [a, b * 10 + c];
  return atoms;
};
