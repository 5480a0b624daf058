import type { Token } from "../tokenize/index.ts";

type Stems = readonly Pick<Token, "stem">[];

/**
 * The stem of a token; nothing before the first and behind the last.
 *
 * @example stemAt(tokenize("good doors"), 1) // "door"
 */
export const stemAt = (tokens: Stems, at: number): string => tokens[at]?.stem ?? "";

/**
 * Stems from a token up to another, as one text to search in.
 *
 * @example stemText(tokenize("both doors are good"), 0, 2) // "both door"
 */
export const stemText = (tokens: Stems, from: number, to: number): string =>
  tokens
    .slice(Math.max(0, from), to)
    .map(({ stem }) => stem)
    .join(" ");
