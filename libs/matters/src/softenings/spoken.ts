import type { Comparison, SideSoftness } from "@evenhand/shared/comparison";
import type { Softening } from "@evenhand/shared/page-one";
import type { Report } from "@evenhand/shared/report";
import { capital } from "@evenhand/message/first-letter";
import { listed } from "@evenhand/message/listed";
import { reportWords } from "@evenhand/comparison/sentence";
import { softPlaces } from "@evenhand/comparison/softness";
import { spokenMessages as messages } from "./messages.ts";

type SoftWay = keyof typeof WEIGHT;

type Spoken = Pick<Report, "findings" | "scales">;

/** Both reports, for the words of their own scales. */
export type SpokenBy = { readonly a: Spoken; readonly b: Spoken };

type Compared = Pick<Comparison, "softness" | "entries" | "a" | "b">;

/** A share of what could be soft from which page one speaks of it, and no less than so many: an honest hedge is no news. */
const SAID_FROM = 0.2;
const AT_LEAST = 3;

/** How much each tells against what a side says, where all of it is so; the share counts beside it. No source. */
const WEIGHT = {
  open: 1,
  hedged: 0.95,
  coarse: 0.9,
  praised: 0.9,
  "wide-scale": 0.85,
  scattered: 0.85,
  vague: 0.8,
  unmeasured: 0.7,
  days: 0.1,
} as const;

type Counted = {
  readonly side: "a" | "b";
  readonly way: SoftWay;
  readonly count: number;
  readonly of: number;
  readonly words: () => string;
};

const praisedWords = (
  entries: Comparison["entries"],
  indexes: readonly number[],
  side: "a" | "b",
  { findings, scales }: Spoken,
): string => {
  const words = indexes.flatMap((index) => {
    const answer = findings[entries[index]?.finding[side] ?? -1]?.answer;
    if (answer?.kind !== "grade") return [];
    const scale = scales.find(({ id }) => id === answer.scale);
    return [scale?.grades.find(({ id }) => id === answer.value)?.name ?? String(answer.value)];
  });
  return listed([...new Set(words)].map((word) => messages.say("word", { word })));
};

const OPEN = ["unmentioned", "not-seen", "not-known"] as const;

const whyWords = (own: SideSoftness): string =>
  listed(
    OPEN.flatMap((kind) => {
      const count = softPlaces(own, kind);
      return count === 0 ? [] : [messages.say(kind, { count })];
    }),
  );

const waysOf = (side: "a" | "b", comparison: Compared, own: SideSoftness, report: Spoken): Counted[] => {
  const name = capital(reportWords(comparison[side].kind));
  const { decisive } = comparison.softness;
  const { answered, readings, grades, faults } = own;
  const plain = (way: "coarse" | "scattered" | "vague" | "wide-scale", of: number): Counted => {
    const count = softPlaces(own, way);
    return { side, way, count, of, words: () => messages.say(way, { Side: name, count, of }) };
  };
  const open = softPlaces(own, ...OPEN);
  const [hedged, told] = [softPlaces(own, "hedged"), softPlaces(own, "second-hand")];
  const [eye, unnamed] = [softPlaces(own, "by-eye"), softPlaces(own, "unnamed")];
  const praised = own.soft.praised ?? [];
  return [
    {
      side,
      way: "open",
      count: open,
      of: decisive,
      words: () => messages.say("open", { Side: name, count: open, of: decisive, why: whyWords(own) }),
    },
    {
      side,
      way: "hedged",
      count: hedged + told,
      of: answered,
      words: () => messages.say("hedged", { Side: name, of: answered, hedged, told }),
    },
    {
      side,
      way: "unmeasured",
      count: eye + unnamed,
      of: readings,
      words: () => messages.say("unmeasured", { Side: name, of: readings, count: eye + unnamed, eye }),
    },
    plain("coarse", readings),
    plain("scattered", readings),
    plain("vague", faults),
    plain("wide-scale", grades),
    {
      side,
      way: "praised",
      count: praised.length,
      of: grades,
      words: () => {
        const words = praisedWords(comparison.entries, praised, side, report);
        return messages.say("praised", { Side: name, count: praised.length, of: grades, words });
      },
    },
  ];
};

const daysOf = ({ a, softness }: Compared): Counted[] => {
  const count = softness.betweenDays?.length ?? 0;
  const of = softness.sides?.a.readings ?? count;
  const said = { side: reportWords(a.kind), count, date: a.started.slice(0, 10) };
  return count === 0 ? [] : [{ side: "a", way: "days", count, of, words: () => messages.say("days", said) }];
};

const weightOf = ({ way, count, of }: Counted): number => (WEIGHT[way] * count) / Math.max(of, 1);

/** One of these is news: an honest report has none. */
const RARE: ReadonlySet<SoftWay> = new Set(["days", "praised"]);

const isNews = ({ way, count, of }: Counted): boolean =>
  count > 0 && (RARE.has(way) || (count >= Math.min(AT_LEAST, of) && count >= SAID_FROM * of));

/**
 * How soft both sides speak, in a sentence each way that tells, the worst first.
 *
 * @example spokenSoftly(comparison, reports)[0]?.words // "Of its 210 answers that count, the statement hedges 180 and …"
 */
export const spokenSoftly = (comparison: Compared, reports: SpokenBy): Softening[] => {
  const { sides } = comparison.softness;
  if (sides === undefined) return [];
  return [
    ...waysOf("a", comparison, sides.a, reports.a),
    ...waysOf("b", comparison, sides.b, reports.b),
    ...daysOf(comparison),
  ]
    .filter(isNews)
    .sort((one, other) => weightOf(other) - weightOf(one))
    .map(({ side, way, words }) => ({ of: way, side, words: words() }));
};
