import { capital } from "@evenhand/message/first-letter";
import { listed } from "@evenhand/message/listed";
import { matterId } from "@evenhand/shared/matter-id";
import type { Answer, AnswerCost, AnsweredMatter } from "@evenhand/shared/page-one";
import { say as sayTerm } from "@evenhand/wording/say";
import type { Block, Run } from "../blocks/index.ts";
import { moneySaid, moreSaid, timeSaid } from "../said/index.ts";
import { shorten } from "../shorten/index.ts";
import { someOf } from "./beside.ts";
import { say } from "./messages.ts";

const HEADLINE = 110;
const FOUND = 260;
const SHORT = 95;
const QUOTE = 150;
const CAUTIONS = 12;

const nextOf = ({ matter: { next } }: AnsweredMatter): string =>
  next.minutes === undefined
    ? say("matter.next", { next: next.words })
    : say("matter.next.minutes", { next: next.words, time: timeSaid(next.minutes) });

const likelyOf = ({ matter }: AnsweredMatter, priced: AnswerCost | null): Run[] => {
  const cost = priced?.cost ?? null;
  const part = cost?.byMatter.find((one) => one.matter === matterId(matter));
  if (cost === null || part === undefined) return [];
  const amount = moneySaid({ minor: part.likely, currency: cost.currency });
  return [{ text: say("matter.cost", { amount }) }];
};

/**
 * How much of the matters is told: of the first `told` what was found and what to do, of the first `short` the beginning of that, of the
 * first `quoted` the inspector's words too.
 */
type Telling = {
  readonly named: number;
  readonly told: number;
  readonly short: number;
  readonly quoted: number;
  readonly cautions: number;
};

/** The first things found, as many as are short; never the beginning of one, where it is not longer than all may be. */
const begun = (found: string): string => {
  const [first = "", ...others] = found.split("; ");
  let told = shorten(first, SHORT);
  for (const next of others) {
    const longer = listed([told, next], "semicolon");
    if (longer.length > SHORT) return say("matter.begun", { found: told });
    told = longer;
  }
  return say("matter.found", { found: told });
};

const isGrave = ({ matter: { severity } }: AnsweredMatter): boolean =>
  severity === "halt" || severity === "danger";

const matterItem = (
  one: AnsweredMatter,
  at: number,
  { told, short, quoted }: Telling,
  priced: AnswerCost | null,
): Block => {
  const { headline, severity, found } = one.matter;
  const [note] = one.notes;
  return {
    kind: "item",
    label: String(at + 1),
    runs: [
      { text: shorten(headline, HEADLINE), tone: "strong" },
      {
        text: say("matter.grave", { grave: sayTerm(`severity.${severity}`) }),
        tone: isGrave(one) ? "alarm" : "faint",
      },
    ],
    under: [
      ...(at < short
        ? [
            {
              text: capital(at < told ? say("matter.found", { found: shorten(found, FOUND) }) : begun(found)),
            },
          ]
        : []),
      ...(at < quoted && note !== undefined
        ? [{ text: say("matter.quote", { words: shorten(note.words, QUOTE) }) }]
        : []),
      ...(at < short ? [{ text: nextOf(one), tone: "strong" as const }, ...likelyOf(one, priced)] : []),
    ],
  };
};

const wrong = ({ matters }: Answer, telling: Telling, priced: AnswerCost | null): Block[] => {
  const left = matters.length - telling.named;
  return [
    { kind: "heading", text: say("matters") },
    ...(matters.length === 0 ? [{ kind: "text" as const, runs: [{ text: say("matters.none") }] }] : []),
    ...matters.slice(0, telling.named).map((one, at) => matterItem(one, at, telling, priced)),
    ...(left > 0
      ? [{ kind: "text" as const, runs: [{ text: moreSaid(left), tone: "strong" as const }] }]
      : []),
  ];
};

/** Every matter by its headline; of the first `short` what was found, in short, and what to do. */
export const wrongNamed = (answer: Answer, priced: AnswerCost | null, short: number): Block[] =>
  wrong(answer, { named: answer.matters.length, told: 0, short, quoted: 0, cautions: 0 }, priced);

const downFrom = (count: number, to: number): number[] =>
  Array.from({ length: Math.max(0, count - to + 1) }, (_, index) => count - index);

/**
 * The matters and the cautions from the fullest telling to the tersest: cautions are counted first, then the inspector's words go, from
 * the last matter on, then what was found is told in short and then not at all, then the last matters themselves, which are counted. The first is always named.
 */
export const wrongFrom = (answer: Answer, priced: AnswerCost | null): Block[][] => {
  const all = answer.matters.length;
  const whole: Telling = { named: all, told: all, short: all, quoted: all, cautions: CAUTIONS };
  const tellings: Telling[] = [
    ...downFrom(CAUTIONS, 1).map((cautions) => ({ ...whole, cautions })),
    ...downFrom(all - 1, 0).map((quoted) => ({ ...whole, quoted, cautions: 1 })),
    ...downFrom(all - 1, 0).map((told) => ({ ...whole, told, quoted: 0, cautions: 1 })),
    ...downFrom(all - 1, 0).map((short) => ({ ...whole, told: 0, short, quoted: 0, cautions: 1 })),
    ...downFrom(all - 1, 1).map((named) => ({ named, told: 0, short: 0, quoted: 0, cautions: 1 })),
  ];
  const words = answer.cautions.map(({ text }) => text);
  return tellings.map((telling) => [
    ...wrong(answer, telling, priced),
    ...someOf(say("cautions"), words, telling.cautions),
  ]);
};
