import { dearerFirst } from "@evenhand/shared/dearer-first";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import type { Block, OnePage } from "../blocks/index.ts";
import { shorten } from "../shorten/index.ts";
import { besideFrom } from "./beside.ts";
import { carAndFigures, carOf, dealersLine, NAME } from "./head.ts";
import { say } from "./messages.ts";
import { wrongFrom } from "./wrong.ts";

export type AnswerPaperInput = {
  readonly answer: Answer;
  /** `null` for whoever is shown none. */
  readonly cost: AnswerCost | null;
  /** SHA-256 of the answer's bytes, and where they are had. */
  readonly hash: string;
  readonly address: string;
};

const endOf = ({ answer, hash, address }: AnswerPaperInput): Block[] => [
  { kind: "text", runs: [{ text: say("plain"), tone: "strong" }] },
  {
    kind: "text",
    small: true,
    runs: [
      { text: say("made", { engine: shorten(answer.engine, NAME) }) },
      { text: say("hash") },
      { text: hash, tone: "code" },
      { text: say("check", { address }) },
    ],
  },
];

/**
 * The answer on one page: the car and who looked, four figures, the dealer's own line, the matters worst first, and beside them what
 * stops the money, what nobody knows, what to ask and what it may cost; cautions and hash at the end. What does not fit is counted,
 * never cut. Nothing in it says that a car is good.
 *
 * @example answerPaper({ answer, cost: null, hash, address }).columns.length // 2
 */
export const answerPaper = (input: AnswerPaperInput): OnePage => {
  const { cost } = input;
  const answer = dearerFirst(input.answer, cost);
  const car = carOf(answer);
  return {
    title: say("file", car),
    subject: say("subject"),
    at: answer.b.started,
    foot: say("foot", { car: say("title", car) }),
    head: [...carAndFigures(answer, cost), ...dealersLine(answer)],
    columns: [
      { share: 0.64, from: wrongFrom(answer, cost) },
      { share: 0.36, from: besideFrom(answer, cost) },
    ],
    end: endOf(input),
  };
};
