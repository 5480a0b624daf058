import type { RepairedToken } from "@evenhand/lexicon/repair";

const DIGITS: Readonly<Record<string, string>> = {
  zero: "0",
  oh: "0",
  o: "0",
  one: "1",
  two: "2",
  three: "3",
  four: "4",
  five: "5",
  six: "6",
  seven: "7",
  eight: "8",
  nine: "9",
};
const BETWEEN = /^(?:is|are|s|was|reads|read|stamped|shows|number|code|it|of|in|on|the|from|date|:|,)$/u;
const SMALL_LETTERS = 3;
const NO_CODE = /^(?:on|all|the|in|is|and|of|for|at|it|no|we|i|a|an|to|so|but|or|by|s|my|as|be)$/u;

const codeAt = (
  text: string,
  tokens: readonly RepairedToken[],
  at: number,
  to: number,
): { code: string; end: number } => {
  let code = "";
  let figures = false;
  let end = at;
  for (; end < to; end += 1) {
    const token = tokens[end];
    if (token === undefined) break;
    const digit = Object.hasOwn(DIGITS, token.stem) ? DIGITS[token.stem] : undefined;
    const raw = text.slice(token.start, token.end);
    const isLetters =
      token.kind === "word" &&
      raw.length <= SMALL_LETTERS &&
      raw === raw.toUpperCase() &&
      !NO_CODE.test(token.stem);
    const joins = /^[-–*./]$/u.test(token.stem) && end > at;
    if (token.kind === "number") {
      code += raw;
      figures = true;
    } else if (digit !== undefined && !figures) code += digit;
    else if (isLetters || joins || (/^[a-z]$/iu.test(raw) && end > at)) code += raw.toUpperCase();
    else break;
    // Marks that no word or number is made of ("*") stand between tokens.
    const next = tokens[end + 1];
    const gap = next === undefined ? "" : text.slice(token.end, next.start);
    if (/^[*/]$/u.test(gap)) code += gap;
  }
  return { code: code.replace(/[-–.,/]+$/u, ""), end };
};

/**
 * A code said or written after its name: letters, figures and figures said one by one, put together.
 *
 * @example
 * codeIn("engine number 6C 40118", tokens, 2, 5); // "6C40118"
 */
export const codeIn = (
  text: string,
  tokens: readonly RepairedToken[],
  from: number,
  to: number,
): string | undefined => {
  let at = from;
  while (at < to && BETWEEN.test(tokens[at]?.stem ?? "")) at += 1;
  const { code } = codeAt(text, tokens, at, to);
  return /\d/u.test(code) && code.length >= 2 ? code : undefined;
};
