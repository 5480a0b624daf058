import type { Acknowledgement, MatterAnswer, Summary } from "@evenhand/shared/summary";

/** What was answered so far, by matter; the words as they stand in the field. */
export type Answers = Partial<
  Record<Acknowledgement["matter"], { readonly answer: MatterAnswer; readonly words: string }>
>;

type Matters = Summary["openMatters"];
/** The service asks for as many. */
const fewestLetters = 10;
const isEnough = (words: string): boolean => words.trim().length >= fewestLetters;

/** What stops the money, and what is taken as it is, asks for the buyer's own words. */
export const needsWords = (severity: Matters[number]["severity"], answer: MatterAnswer): boolean =>
  severity === "halt" || answer === "as-it-is";

/** How many matters still need an answer, or its words. Words begun and too short are no words. */
export const leftOpen = (matters: Matters, answers: Answers): number =>
  matters.filter(({ matter, severity }) => {
    const given = answers[matter];
    if (given === undefined) return true;
    const begun = given.words.trim() !== "";
    return (begun || needsWords(severity, given.answer)) && !isEnough(given.words);
  }).length;

/** As the service takes them. */
export const acknowledgementsOf = (matters: Matters, answers: Answers): Acknowledgement[] =>
  matters.flatMap(({ matter }) => {
    const given = answers[matter];
    if (given === undefined) return [];
    const words = given.words.trim();
    return [{ matter, answer: given.answer, ...(words === "" ? {} : { words }) }];
  });
