import { type QuestionChange, QuestionState } from "@evenhand/shared/http/questions";
import type { StateTable } from "../state-table/index.ts";

export type QuestionMove = "rewrite" | "leave" | "send" | "withdraw" | "answer" | "publish";

/** A buyer's question about a place of the sheet: theirs alone until it is sent, answered by a finding, out with the seal on that. */
export const QUESTION_STATES: StateTable<QuestionState, QuestionMove, "buyer" | "dealer"> = {
  states: QuestionState.options,
  moves: ["rewrite", "leave", "send", "withdraw", "answer", "publish"],
  actors: ["buyer", "dealer"],
  first: ["drafted"],
  rows: [
    { move: "rewrite", from: ["drafted"], to: "drafted", actors: ["buyer"] },
    { move: "leave", from: ["drafted"], to: "drafted", actors: ["buyer"] },
    { move: "leave", from: ["asked"], to: "asked", actors: ["buyer"] },
    { move: "send", from: ["drafted"], to: "asked", actors: ["buyer"] },
    { move: "withdraw", from: ["drafted", "asked"], to: "withdrawn", actors: ["buyer"] },
    { move: "answer", from: ["asked"], to: "answered", actors: ["dealer"] },
    { move: "publish", from: ["answered"], to: "published", actors: ["dealer"] },
  ],
};

/** States in which a question still waits for its buyer or for an answer. */
export const OPEN_QUESTIONS: readonly QuestionState[] = ["drafted", "asked"];

/**
 * The moves that a change of a question makes, in the order in which they are made: new words first, so that what is asked already
 * is not reworded by taking it back.
 *
 * @example movesOfChange({ text: "Does it sound?", move: "send" }) // ["rewrite", "send"]
 * @example movesOfChange({}) // ["leave"]
 */
export const movesOfChange = ({ text, move }: QuestionChange): readonly QuestionMove[] => {
  const moves: QuestionMove[] = [
    ...(text === undefined ? [] : ["rewrite" as const]),
    ...(move ? [move] : []),
  ];
  return moves.length === 0 ? ["leave"] : moves;
};
