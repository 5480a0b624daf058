import { listed } from "@evenhand/message/listed";
import type { Answer, AnswerCost } from "@evenhand/shared/page-one";
import { say as sayTerm } from "@evenhand/wording/say";
import type { Block, Figure, Run } from "../blocks/index.ts";
import { daySaid, moneySaid, moreSaid, timeSaid } from "../said/index.ts";
import { shorten } from "../shorten/index.ts";
import { say } from "./messages.ts";

export const NAME = 60;
/** Characters of the dealer's line, so that it takes no more than a few lines of the page. */
const CLAIMS = 600;
const CLAIM = 60;

export const carOf = ({ vehicle: { modelYear, make, model } }: Answer) => ({
  year: String(modelYear),
  make: shorten(make, NAME),
  model: shorten(model, NAME),
});

const foundBy = ({ looked, b }: Answer): string => {
  const said = { by: shorten(looked.by, NAME), date: daySaid(looked.started, b.zone) };
  return looked.minutes === null
    ? say("found.open", said)
    : say("found", { ...said, time: timeSaid(looked.minutes) });
};

const notSeen = ({ looked: { couldNot } }: Answer): string[] => {
  if (couldNot.length === 0) return [];
  const reasons = couldNot.map(({ reason, places }) =>
    say("not-seen.reason", { reason: sayTerm(`not-seen.${reason}`), count: places }),
  );
  return [say("not-seen", { list: listed(reasons) })];
};

const costFigure = (priced: AnswerCost): Figure => {
  const { asking, cost } = priced;
  const note =
    asking === null ? say("figure.asking.none") : say("figure.asking", { price: moneySaid(asking) });
  const name = say("figure.cost");
  if (cost === null) return { name, value: say("figure.cost.none"), note };
  const money = (minor: number): string => moneySaid({ minor, currency: cost.currency });
  const { low, high } = cost.total;
  return { name, value: say("figure.cost.value", { low: money(low), high: money(high) }), note };
};

const figuresOf = (answer: Answer, priced: AnswerCost | null): Figure[] => {
  const { matters, unknown, stops } = answer;
  const grave = matters.filter(({ matter: { severity } }) => severity === "halt" || severity === "danger");
  const places = unknown.reduce((sum, { matter }) => sum + matter.lines.length, 0);
  const first = [...matters, ...unknown][0]?.matter;
  const couldStop = stops.filter(({ known }) => !known).length;
  return [
    {
      name: say("figure.wrong"),
      value: say("figure.wrong.value", { count: matters.length }),
      note: say("figure.wrong.note", { count: grave.length }),
    },
    {
      name: say("figure.unknown"),
      value: say("figure.unknown.value", { count: places }),
      note: say("figure.unknown.note", { count: couldStop }),
    },
    ...(priced === null ? [] : [costFigure(priced)]),
    ...(first === undefined
      ? []
      : [{ name: say("figure.next"), value: first.next.words, note: shorten(first.headline, CLAIM) }]),
  ];
};

/** The claims a car is sold by: what fell is struck through, and what became of each follows it. */
export const dealersLine = ({ claims: { line }, a }: Answer): Block[] => {
  if (line.length === 0) return [];
  let room = CLAIMS;
  const shown = line.filter(({ words }, at) => (room -= Math.min(words.length, CLAIM) + 20) >= 0 || at === 0);
  const runs = shown.flatMap(({ words, became: of }, at): Run[] => {
    const became = say(`became.${of}`);
    const text = at === line.length - 1 ? became : say("line.next", { became });
    return [
      { text: shorten(words, CLAIM), tone: of === "fell" ? "struck" : "strong" },
      { text, tone: of === "fell" ? "alarm" : "faint" },
    ];
  });
  const more: Run[] = line.length > shown.length ? [{ text: moreSaid(line.length - shown.length) }] : [];
  return [
    { kind: "heading", text: say("line", { by: shorten(a.organization, NAME) }) },
    { kind: "text", runs: [...runs, ...more] },
  ];
};

/** The car, who stated and who looked, what could not be seen and why, and the four figures. */
export const carAndFigures = (answer: Answer, cost: AnswerCost | null): Block[] => [
  { kind: "title", text: say("title", carOf(answer)) },
  { kind: "text", runs: [{ text: answer.vehicle.identification, tone: "code" }] },
  {
    kind: "text",
    runs: [
      {
        text: say("stated", {
          by: shorten(answer.a.organization, NAME),
          date: daySaid(answer.a.started, answer.a.zone),
        }),
      },
      ...[foundBy(answer), ...notSeen(answer)].map((text) => ({ text })),
    ],
  },
  { kind: "figures", figures: figuresOf(answer, cost) },
];
