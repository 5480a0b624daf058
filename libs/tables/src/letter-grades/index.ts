import type { GradeScale } from "@evenhand/shared/report";
import { gradeScale } from "../answer-of/grade.ts";
import type { Grid } from "../grid/index.ts";

/** Grades that people write as one letter or two, worst first. No source: common practice. */
export const LETTER_GRADES: ReadonlyMap<string, string> = new Map([
  ["p", "poor"],
  ["f", "fair"],
  ["g", "good"],
  ["vg", "very good"],
  ["e", "excellent"],
]);
const GRADES = [...LETTER_GRADES];

/** How a key explains each of them. */
const KEYS = GRADES.map(
  ([letter, name]) =>
    [letter, new RegExp(`(?<!\\w)${letter}\\s*(?:=|:|-|–|is)\\s*(?<!very )${name}\\b`, "i")] as const,
);

/** Letters of a sheet that grade, by themselves in a cell, and the scale they are on. */
export type LetterGrades = { readonly scale: GradeScale; readonly names: ReadonlyMap<string, string> };

/** `G`, `F` and `P` are good, fair and poor only together: `F` beside `P` alone is a failure beside a pass. */
const gradesOf = (letters: ReadonlySet<string>): LetterGrades | undefined => {
  const used = GRADES.filter(([letter]) => letters.has(letter));
  if (used.length < 3 || !letters.has("g") || !letters.has("p")) return undefined;
  const names = used.map(([, name]) => name);
  return {
    scale: gradeScale(`letters-${used.map(([letter]) => letter).join("")}`, names),
    names: new Map(used),
  };
};

/** `G = good  F = fair  P = poor` explains each letter by its own word. */
export const explainedLetters = (text: string): LetterGrades | undefined =>
  gradesOf(new Set(KEYS.flatMap(([letter, key]) => (key.test(text) ? [letter] : []))));

/** `G/F/P`, `Rating (E/G/F/P)` over a column. */
const headed = (text: string): LetterGrades | undefined => {
  const list = /(?<!\w)[A-Z]{1,2}(?:\s*[/|,]\s*[A-Z]{1,2}){2,4}(?!\w)/.exec(text)?.[0];
  const letters = list?.toLowerCase().split(/\W+/) ?? [];
  return letters.every((letter) => LETTER_GRADES.has(letter)) ? gradesOf(new Set(letters)) : undefined;
};

/** With no key at all: a sheet that answers `G`, `F` and `P` again and again. */
const used = (grids: readonly Grid[]): LetterGrades | undefined => {
  const once = new Set<string>();
  const twice = new Set<string>();
  for (const { rows } of grids)
    for (const { cells } of rows)
      for (const { text } of cells) {
        const letter = text.trim();
        if (letter === letter.toUpperCase() && LETTER_GRADES.has(letter.toLowerCase()))
          (once.has(letter) ? twice : once).add(letter);
      }
  return gradesOf(new Set([...twice].map((letter) => letter.toLowerCase())));
};

/**
 * The letters by which a sheet grades, from its key, a heading, or from their use.
 *
 * @returns nothing where letters stand for something else, as `P` and `F` for pass and fail
 * @example letterGradesOf([grid("Item,G/F/P")])?.names.get("p") // "poor"
 */
export const letterGradesOf = (grids: readonly Grid[]): LetterGrades | undefined => {
  for (const { rows } of grids)
    for (const { cells } of rows)
      for (const { text } of cells) {
        const found = explainedLetters(text) ?? headed(text);
        if (found !== undefined) return found;
      }
  return used(grids);
};
