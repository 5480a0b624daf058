import { twoFigures } from "@evenhand/decision/two-figures";
import type { Decision } from "@evenhand/shared/http/summaries";
import type { Summary } from "@evenhand/shared/summary";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import type { Block, Figure, Pages } from "../blocks/index.ts";
import { instantSaid, moneySaid } from "../said/index.ts";
import { shorten } from "../shorten/index.ts";
import { decisionBlocks } from "./decision.ts";
import { brokenBlocks, lineBlocks, releaseBlocks, unseenBlocks } from "./lines.ts";
import { isGrave, matterBlocks, openBlocks } from "./matters.ts";
import { say } from "./messages.ts";

export type SummaryPaperInput = {
  readonly summary: Summary;
  readonly decision: Decision | null;
  /** Words of the sheet, since a summary holds ids. */
  readonly words: SheetWords;
  /** Who stated and who found, as their sealed reports say. */
  readonly stated: string;
  readonly found: string;
  /** SHA-256 of the summary's bytes, and where they are had. */
  readonly hash: string;
  readonly address: string;
};

const NAME = 60;
const HASH_SHOWN = 16;
const CAUTIONS = ["certificate", "valuation", "contract", "law", "road"] as const;

const heading = (text: string): Block => ({ kind: "heading", text });
const text = (words: string): Block => ({ kind: "text", runs: [{ text: words }] });

const carOf = ({ vehicle: { modelYear, make, model } }: Summary) => ({
  year: String(modelYear),
  make: shorten(make, NAME),
  model: shorten(model, NAME),
});

const amounts = ({ currency, total }: NonNullable<Summary["cost"]>) => {
  const money = (minor: number): string => moneySaid({ minor: twoFigures(minor), currency });
  return { low: money(total.low), likely: money(total.likely), high: money(total.high) };
};

const costFigure = ({ cost }: Summary): Figure => {
  const name = say("figure.cost");
  if (cost === null) return { name, value: say("figure.cost.none"), note: say("figure.cost.none.note") };
  const { low, likely, high } = amounts(cost);
  return { name, value: say("figure.cost.value", { low, high }), note: say("figure.cost.note", { likely }) };
};

const figuresOf = (summary: Summary): Figure[] => [
  {
    name: say("figure.matters"),
    value: String(summary.matters.length),
    note: say("figure.matters.note", { count: summary.matters.filter(isGrave).length }),
  },
  {
    name: say("figure.doubt"),
    value: String(summary.inDoubt.length),
    note: say("figure.doubt.note"),
  },
  { name: say("figure.unseen"), value: String(summary.unseen.length), note: say("figure.unseen.note") },
  costFigure(summary),
];

const costBlocks = ({ cost }: Summary): Block[] => {
  if (cost === null) return [];
  return [
    heading(say("cost")),
    text(say("cost.range", { ...amounts(cost), table: cost.table })),
    ...(cost.unset.length === 0 ? [] : [text(say("cost.unset", { count: cost.unset.length }))]),
    text(say("cost.plain")),
  ];
};

const coded = (words: string, code: string): Block => ({
  kind: "text",
  runs: [{ text: words }, { text: code, tone: "code" }],
});

const madeOf = ({ statement, inspection, comparison, coverage }: Summary): Block[] => {
  const { statedAndSeen: seen, stated, seen: all, onSheet: sheet } = coverage;
  return [
    heading(say("made-of")),
    coded(say("made.statement", { version: statement.version }), statement.seal),
    coded(say("made.inspection", { version: inspection.version }), inspection.seal),
    coded(say("made.comparison", { engine: comparison.engine }), comparison.hash),
    text(say("coverage", { seen, stated, all, sheet })),
  ];
};

const hashBlocks = ({ hash, address }: SummaryPaperInput): Block[] => [
  heading(say("hash")),
  coded(say("hash.sha"), hash),
  text(say("hash.how", { address })),
];

const pageOne = (input: SummaryPaperInput): Block[] => {
  const { summary, decision, stated, found } = input;
  const between = say("between", { stated: shorten(stated, NAME), found: shorten(found, NAME) });
  return [
    { kind: "title", text: say("title", carOf(summary)) },
    { kind: "text", runs: [{ text: summary.vehicle.identification, tone: "code" }] },
    {
      kind: "text",
      runs: [{ text: say("made", { at: instantSaid(summary.createdAt) }) }, { text: between }],
    },
    { kind: "figures", figures: figuresOf(summary) },
    ...decisionBlocks(summary, decision),
    ...openBlocks(summary, decision),
    heading(say("cautions")),
    ...CAUTIONS.map((one): Block => ({
      kind: "item",
      label: "•",
      runs: [{ text: say(`caution.${one}`) }],
    })),
    ...hashBlocks(input),
  ];
};

/**
 * The summary on paper: on page one what was decided and what is open, the cautions, the hash and how to check it; then the matters with
 * their states, what was stated beside what was found, broken rules, what was laid before the dealer, and what it is made of. The
 * same summary and decision give the same paper.
 *
 * @example summaryPaper({ summary, decision: null, words, stated, found, hash, address }).at // when the summary was made
 */
export const summaryPaper = (input: SummaryPaperInput): Pages => {
  const { summary, words, hash } = input;
  const car = carOf(summary);
  return {
    title: say("title", car),
    subject: say("subject"),
    at: summary.createdAt,
    foot: say("foot", { car: say("car", car), hash: hash.slice(0, HASH_SHOWN) }),
    blocks: [
      ...pageOne(input),
      { kind: "columns", blocks: matterBlocks(summary) },
      ...lineBlocks(summary, words),
      {
        kind: "columns",
        blocks: [
          ...unseenBlocks(summary, words),
          ...brokenBlocks(summary),
          ...releaseBlocks(summary, words),
          ...costBlocks(summary),
        ],
      },
      ...madeOf(summary),
    ],
  };
};
