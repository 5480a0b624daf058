import { listed } from "@evenhand/message/listed";
import { matterId } from "@evenhand/shared/matter-id";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import type { Block } from "../blocks/index.ts";
import { moneySaid, moreSaid } from "../said/index.ts";
import { shorten } from "../shorten/index.ts";
import { say } from "./messages.ts";

/** Characters of a line, and of a question or a sentence. */
const LINE = 120;
const SENTENCE = 220;

/** How many are told of each list; the others are counted. */
type Most = {
  readonly stops: number;
  readonly unknown: number;
  readonly questions: number;
  readonly cost: number;
  readonly soft: number;
  /** Characters of a line, and of a question or a sentence. */
  readonly line: number;
  readonly sentence: number;
};

const heading = (text: string): Block => ({ kind: "heading", text });
const text = (words: string, small = false): Block => ({
  kind: "text",
  runs: [{ text: words }],
  ...(small ? { small: true as const } : {}),
});
const item = (words: string, label = "•"): Block => ({ kind: "item", label, runs: [{ text: words }] });
const rest = (all: number, most: number): Block[] => (all > most ? [text(moreSaid(all - most))] : []);

type ListLook = { readonly labels?: (at: number) => string; readonly longest?: number };

/** A list under its heading: the first of it, and how many more there are; nothing where there is nothing. */
export const someOf = (
  title: string,
  all: readonly string[],
  most: number,
  { labels = () => "•", longest = SENTENCE }: ListLook = {},
): Block[] =>
  all.length === 0
    ? []
    : [
        heading(title),
        ...all.slice(0, most).map((words, at) => item(shorten(words, longest), labels(at))),
        ...rest(all.length, most),
      ];

const stops = ({ stops: all }: Answer, { stops: most, line }: Most): Block[] => {
  const known = all.filter((stop) => stop.known).map(({ words }) => words);
  const unknown = all.filter((stop) => !stop.known).map(({ words }) => words);
  const more = unknown.length > most ? [moreSaid(unknown.length - most)] : [];
  const list = listed([...unknown.slice(0, most).map((words) => shorten(words, line)), ...more], "semicolon");
  return [
    heading(say("stops")),
    ...(all.length === 0 ? [text(say("stops.none"))] : []),
    ...known.slice(0, most).map((words) => item(shorten(words, line))),
    ...rest(known.length, most),
    ...(unknown.length === 0 ? [] : [text(say("stops.unknown", { count: unknown.length, list }))]),
  ];
};

const unknown = ({ unknown: all, matters }: Answer, { unknown: most, line }: Most): Block[] => {
  const headlines = all.map(({ matter }) => matter.headline);
  const labels = (at: number): string => String(matters.length + at + 1);
  return someOf(say("unknown"), headlines, most, { labels, longest: line });
};

const cost = ({ matters, unknown: open }: Answer, priced: AnswerCost | null, most: number): Block[] => {
  if (priced === null) return [];
  if (priced.cost === null) return [heading(say("cost")), text(say("cost.none"))];
  const { currency, table, total, byMatter } = priced.cost;
  const money = (minor: number): string => moneySaid({ minor, currency });
  const headlines = new Map([...matters, ...open].map(({ matter }) => [matterId(matter), matter.headline]));
  const [low, high, likely] = [money(total.low), money(total.high), money(total.likely)];
  return [
    heading(say("cost")),
    text(say("cost.range", { low, high, likely, table: shorten(table, LINE / 2) })),
    ...byMatter.slice(0, most).map((part) => {
      const headline = shorten(headlines.get(part.matter) ?? part.matter, LINE / 2);
      return item(say("cost.part", { headline, amount: money(part.likely) }));
    }),
    text(say("cost.plain"), true),
  ];
};

const countsOf = ({ stated, fell, doubtful, unseen, notComparable, disclosed, held }: Answer["claims"]) => ({
  stated,
  fell,
  doubtful,
  unseen,
  notComparable,
  disclosed,
  held,
});

const claims = ({ claims: said }: Answer): Block[] => [
  heading(say("claims")),
  text(say("claims.counts", countsOf(said))),
  ...(said.statedWorse ? [text(say("claims.worse", { count: said.statedWorse }))] : []),
];

const most: Most = { stops: 8, unknown: 8, questions: 5, cost: 3, soft: 4, line: LINE, sentence: SENTENCE };
/** What is told of less, step by step: what weighs least first. */
const less: readonly Partial<Most>[] = [
  { soft: 3 },
  { soft: 2 },
  { soft: 1 },
  { stops: 6, unknown: 6 },
  { cost: 2 },
  { questions: 4 },
  { stops: 5, unknown: 5 },
  { cost: 1 },
  { questions: 3 },
  { stops: 4, unknown: 4 },
  { cost: 0 },
  { questions: 2, stops: 3, unknown: 3 },
  { questions: 1, stops: 2, unknown: 2 },
  { stops: 1, unknown: 1 },
  { line: 60, sentence: 90 },
];

/** The headlines of what nobody knows, the others counted. */
export const unknownFrom = (answer: Answer): Block[] => unknown(answer, most);

/** What stands beside the matters, from the fullest to the tersest. */
export const besideFrom = (answer: Answer, priced: AnswerCost | null): Block[][] => {
  const soft = (answer.soft ?? []).map(({ words }) => words);
  let told = most;
  const tellings = [most, ...less.map((step) => (told = { ...told, ...step }))];
  return tellings.map((one) => [
    ...stops(answer, one),
    ...unknown(answer, one),
    ...someOf(say("questions"), answer.questions, one.questions, {
      labels: (at) => String(at + 1),
      longest: one.sentence,
    }),
    ...cost(answer, priced, one.cost),
    ...claims(answer),
    ...someOf(say("soft"), soft, one.soft, { longest: one.sentence }),
  ]);
};
