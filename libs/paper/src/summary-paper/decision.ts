import type { Decision } from "@evenhand/shared/http/summaries";
import type { Acknowledgement, Summary } from "@evenhand/shared/summary";
import type { Block, Run } from "../blocks/index.ts";
import { instantSaid, moneySaid } from "../said/index.ts";
import { say } from "./messages.ts";

const acknowledged = (one: Acknowledgement, names: ReadonlyMap<string, string>): Block => ({
  kind: "item",
  label: "•",
  runs: [
    { text: names.get(one.matter) ?? say("acknowledged.unnamed"), tone: "strong" },
    { text: say(`acknowledged.${one.answer}`) },
    ...(one.words === undefined ? [] : [{ text: say("acknowledged.words", { words: one.words }) }]),
  ],
});

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

/** What was decided on the summary, with what was said of its open matters; that nothing was, where nothing was. */
export const decisionBlocks = ({ openMatters }: Summary, decision: Decision | null): Block[] => {
  if (decision === null) {
    const means: Block = { kind: "text", runs: [{ text: say("decision.none.means") }] };
    return [{ kind: "heading", text: say("decision.none") }, means];
  }
  const { acknowledgements } = decision;
  const names = new Map(openMatters.map(({ id, headline }) => [id, headline]));
  return [
    { kind: "heading", text: say(`decision.${decision.decision}`, { at: instantSaid(decision.decidedAt) }) },
    ...paragraph(offered(decision)),
    ...paragraph(answered(decision)),
    ...paragraph(after(decision)),
    ...(acknowledgements.length === 0 ? [] : paragraph([{ text: say("acknowledged"), tone: "faint" }])),
    ...acknowledgements.map((one) => acknowledged(one, names)),
  ];
};
