import { needsWords, unanswered, type Unanswered } from "@evenhand/decision/matter-answers";
import type { Acknowledgement, MatterAnswer, OpenMatter } from "@evenhand/shared/summary";

/** What was answered of a matter so far; the words as they stand in the field. */
export interface Given {
  readonly answer: MatterAnswer | null;
  readonly words: string;
}
/** By the matter's id. */
export type Answers = Readonly<Record<string, Given>>;

type Asked = Pick<OpenMatter, "id" | "severity">;

/** The service asks for as many. */
const fewestLetters = 10;

export const nothingGiven: Given = { answer: null, words: "" };

/** As the service takes them. Words begun and too short are no words. */
export const acknowledgementsOf = (matters: readonly Asked[], answers: Answers): Acknowledgement[] =>
  matters.flatMap(({ id }): Acknowledgement[] => {
    const { answer, words } = answers[id] ?? nothingGiven;
    if (answer === null) return [];
    const said = words.trim();
    return [{ matter: id, answer, ...(said.length < fewestLetters ? {} : { words: said }) }];
  });

export type Lack = Unanswered["because"] | "too-short";

/** What is still missing of a matter; `undefined` where it is answered for. Words begun are asked for whole, or are lost. */
export const lackOf = (matters: readonly Asked[], answers: Answers, id: string): Lack | undefined => {
  const missing = unanswered(matters, acknowledgementsOf(matters, answers)).find(
    ({ matter }) => matter === id,
  );
  if (missing?.because === "not-answered") return missing.because;
  const words = (answers[id]?.words ?? "").trim();
  return words !== "" && words.length < fewestLetters ? "too-short" : missing?.because;
};

/** Matters that still need an answer, or its words, in order. */
export const openOf = <M extends Asked>(matters: readonly M[], answers: Answers): readonly M[] =>
  matters.filter(({ id }) => lackOf(matters, answers, id) !== undefined);

/** Whether the field for words stands there: what stops the money has it at once, the rest once they ask for it or hold any. */
export const showsWords = ({ severity }: Asked, { answer, words }: Given): boolean =>
  words !== "" || needsWords(severity, answer ?? "first");
