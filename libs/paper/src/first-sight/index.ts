import { dearerFirst } from "@evenhand/shared/dearer-first";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import { carAndFigures, dealersLine } from "../answer-paper/head.ts";
import { unknownFrom } from "../answer-paper/beside.ts";
import { wrongNamed } from "../answer-paper/wrong.ts";
import { say } from "../answer-paper/messages.ts";
import type { Block } from "../blocks/index.ts";

/** Matters of which more than the headline is told: what the first screen has room for. */
const TOLD = 3;

/**
 * Page one in short, for whoever waits for the page itself on a weak line: the car and who looked, four figures, every matter
 * by its headline, of the first what was found and what to do, what nobody knows, and the dealer's own line. What it says the page
 * says too, in more words.
 *
 * @example firstSight({ answer, cost: null })[0] // { kind: "title", text: "1968 Larksong Tern" }
 */
export const firstSight = ({
  answer,
  cost,
}: {
  readonly answer: Answer;
  /** `null` for whoever is shown none. */
  readonly cost: AnswerCost | null;
}): Block[] => [
  ...carAndFigures(answer, cost),
  ...wrongNamed(dearerFirst(answer, cost), cost, TOLD),
  ...unknownFrom(answer),
  ...dealersLine(answer),
  { kind: "text", runs: [{ text: say("plain"), tone: "strong" }] },
];
