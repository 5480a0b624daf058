import type { Decision } from "@evenhand/shared/http/summaries";
import type { Acknowledgement, Summary } from "@evenhand/shared/summary";
import type { Block, Run } from "../blocks/index.ts";
import { instantSaid, moneySaid } from "../said/index.ts";
import { say } from "./messages.ts";

/** What the buyer said of an open matter. */
export const acknowledged = ({ answer, words }: Acknowledgement): Run[] => [
  { text: say(`acknowledged.${answer}`) },
  ...(words === undefined ? [] : [{ text: say("acknowledged.words", { words }) }]),
];

/** What was said of a matter that the summary does not hold. */
const unnamed = ({ openMatters }: Summary, { acknowledgements }: Decision): Block[] => {
  const named = new Set(openMatters.map(({ id }) => id));
  const others = acknowledgements.filter(({ matter }) => !named.has(matter));
  return others.map((one) => ({
    kind: "item",
    label: "•",
    runs: [{ text: say("acknowledged.unnamed"), tone: "strong" }, ...acknowledged(one)],
  }));
};

type Offer = Pick<Decision, "price" | "conditions" | "until">;

/** What is offered, on either side. */
const offered = ({ price, conditions, until }: Offer): Run[] => [
  ...(price === null ? [] : [{ text: say("decision.price", { price: moneySaid(price) }) }]),
  ...(conditions === null ? [] : [{ text: say("decision.conditions", { words: conditions }) }]),
  ...(until === null ? [] : [{ text: say("decision.until", { at: instantSaid(until) }) }]),
];

const answered = ({ answer }: Decision): Run[] => {
  if (answer === null) return [];
  const { note, offer, answeredAt } = answer;
  return [
    { text: say(`decision.answer.${answer.answer}`, { at: instantSaid(answeredAt) }), tone: "strong" },
    ...(offer === null ? [] : offered(offer)),
    ...(note === null ? [] : [{ text: say("decision.note", { note }) }]),
  ];
};

/** What came after the answer, or instead of one. */
const after = ({ reply, ended }: Decision): Run[] => [
  ...(reply === null
    ? []
    : [{ text: say(`decision.reply.${reply.reply}`, { at: instantSaid(reply.repliedAt) }) }]),
  ...(ended === null ? [] : [{ text: say(`decision.ended.${ended.how}`, { at: instantSaid(ended.at) }) }]),
];

const paragraph = (runs: readonly Run[]): Block[] => (runs.length === 0 ? [] : [{ kind: "text", runs }]);

/** What was decided on the summary; that nothing was, where nothing was. */
export const decisionBlocks = (summary: Summary, decision: Decision | null): Block[] => {
  if (decision === null) {
    const means: Block = { kind: "text", runs: [{ text: say("decision.none.means") }] };
    return [{ kind: "heading", text: say("decision.none") }, means];
  }
  return [
    { kind: "heading", text: say(`decision.${decision.decision}`, { at: instantSaid(decision.decidedAt) }) },
    ...paragraph(offered(decision)),
    ...paragraph(answered(decision)),
    ...paragraph(after(decision)),
    ...unnamed(summary, decision),
  ];
};
