import { tokenize } from "../tokenize/index.ts";

const choices = (word: string): string[] => {
  const open = word.startsWith("(") && word.endsWith(")");
  const inner = open ? word.slice(1, -1) : word;
  return [...inner.split("/"), ...(open ? [""] : [])];
};

/**
 * The phrases a pattern stands for, each as the stems of its words: `a/b` is one or the other, `(a)` may be left out, one word each.
 *
 * @example
 * expandPattern("boot/trunk (lid)"); // [["boot", "lid"], ["boot"], ["trunk", "lid"], ["trunk"]]
 */
export const expandPattern = (pattern: string): string[][] =>
  pattern
    .trim()
    .split(/\s+/u)
    .reduce<string[]>(
      (made, word) => made.flatMap((before) => choices(word).map((one) => `${before} ${one}`)),
      [""],
    )
    .map((phrase) =>
      tokenize(phrase)
        .filter(({ kind }) => kind !== "mark" || phrase.trim().length === 1)
        .map((token) => token.stem),
    )
    .filter((phrase) => phrase.length > 0);
