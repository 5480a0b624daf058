import { severityWords } from "@evenhand/comparison/sentence";
import { findRule } from "@evenhand/handbook/rules";
import { sentence } from "@evenhand/handbook/sentence";
import { capital, lowered } from "@evenhand/message/first-letter";
import { listed } from "@evenhand/message/listed";
import { outcomeSign } from "@evenhand/shared/outcome";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import type { Block, Run } from "../blocks/index.ts";
import { type Alike, alike, placesOf } from "./alike.ts";
import { facingRows } from "./facing-row.ts";
import { say } from "./messages.ts";

type Lines = readonly SummaryItem[];

const weight = ({ severity, found }: SummaryItem): string =>
  severity === null ? say("no-severity") : capital(severityWords(severity, found));

const foundFirst = ([one]: Alike<SummaryItem>, [other]: Alike<SummaryItem>): number =>
  Number(other.found) - Number(one.found);

/** Rows of one weight under what it is, the heaviest first; places of one item that stand alike are one row. */
const rows = (all: Lines, words: SheetWords): Block[] =>
  alike(all, ({ severity }) => [severity])
    .flatMap((same) => alike(same, ({ found }) => [String(found)]).toSorted(foundFirst))
    .flatMap((same): Block[] => [
      { kind: "facing-part", text: weight(same[0]) },
      ...alike(same, ({ item, standing, outcome }) => [item, standing, outcome]).flatMap((row) =>
        facingRows(row, words),
      ),
    ]);

const lines = (heading: string, none: string, all: Lines, words: SheetWords): Block[] => {
  const title: Block = { kind: "heading", text: heading };
  if (all.length === 0) return none === "" ? [] : [title, { kind: "text", runs: [{ text: none }] }];
  return [title, { kind: "facing-head", stated: say("stated"), found: say("found") }, ...rows(all, words)];
};

/** What was stated beside what was found: in doubt, and bad by both. */
export const lineBlocks = ({ inDoubt, bothBad }: Summary, words: SheetWords): Block[] => [
  ...lines(say("in-doubt", { count: inDoubt.length }), say("in-doubt.none"), inDoubt, words),
  ...lines(say("both-bad", { count: bothBad.length }), "", bothBad, words),
];

const unseenPlaces = (all: Lines, words: SheetWords): string => {
  const same = alike(all, ({ item, said }) => [item, said?.stated ?? null]).map((alikes) => {
    const [{ said }] = alikes;
    const places = placesOf(alikes, words);
    return said?.stated == null ? places : say("unseen.stated", { places, stated: said.stated });
  });
  return say("these-places", { places: capital(listed(same, "semicolon")) });
};

const unseenOf = (why: Alike<SummaryItem>, words: SheetWords): Block => {
  const [first] = why;
  const reason = capital(first.said?.found ?? say("not-looked"));
  return {
    kind: "item",
    label: outcomeSign.unseen,
    runs: [
      { text: say("unseen.why", { reason, count: why.length }), tone: "strong" },
      { text: say("grave", { grave: lowered(weight(first)) }), tone: "faint" },
    ],
    under: [{ text: unseenPlaces(why, words) }],
  };
};

/** What nobody saw: by what it could be, then by why it was not seen. */
export const unseenBlocks = ({ unseen }: Summary, words: SheetWords): Block[] => [
  { kind: "heading", text: say("unseen", { count: unseen.length }) },
  ...(unseen.length === 0 ? [{ kind: "text" as const, runs: [{ text: say("unseen.none") }] }] : []),
  ...alike(unseen, ({ severity, found, said }) => [severity, String(found), said?.found ?? null]).map((why) =>
    unseenOf(why, words),
  ),
];

const sentences = (checks: Alike<CrossCheck>): Run[] =>
  alike(checks, (check) => [sentence(check)]).map(([check, ...same]) => ({
    text:
      same.length === 0
        ? sentence(check)
        : say("broken.times", { words: sentence(check), count: same.length + 1 }),
  }));

/** The broken rules, each with what it read. */
export const brokenBlocks = ({ broken }: Summary): Block[] => [
  { kind: "heading", text: say("broken", { count: broken.length }) },
  ...(broken.length === 0 ? [{ kind: "text" as const, runs: [{ text: say("broken.none") }] }] : []),
  ...alike(broken, ({ rule }) => [rule]).map((checks): Block => {
    const [{ rule }] = checks;
    const title = say("broken.rule", { rule: capital(findRule(rule)?.title ?? rule) });
    return { kind: "item", label: "≠", runs: [{ text: title, tone: "strong" }, ...sentences(checks)] };
  }),
];

type Release = Summary["releases"][number];

const laidPlaces = (
  laid: readonly Release[],
  lineOf: ReadonlyMap<number, SummaryItem>,
  words: SheetWords,
): string => {
  const known = laid.flatMap(({ entry }) => lineOf.get(entry) ?? []);
  const unknown = laid.filter(({ entry }) => !lineOf.has(entry));
  const places = [
    ...alike(known, ({ item }) => [item]).map((same) => placesOf(same, words)),
    ...unknown.map(({ entry }) => say("release.line", { number: entry + 1 })),
  ];
  return say("these-places", { places: capital(listed(places, "semicolon")) });
};

/** What was laid before the dealer and what they answered; lines that stand alike together. */
export const releaseBlocks = (summary: Summary, words: SheetWords): Block[] => {
  const { releases, inDoubt, unseen, bothBad, openMatters } = summary;
  if (releases.length === 0) return [];
  const all = [...inDoubt, ...unseen, ...bothBad, ...openMatters.flatMap((open) => open.lines)];
  const lineOf = new Map(all.map((line) => [line.entry, line]));
  return [
    { kind: "heading", text: say("releases") },
    ...alike(releases, ({ state, reason }) => [state, reason]).map((laid): Block => {
      const [{ state, reason }] = laid;
      return {
        kind: "item",
        label: "•",
        runs: [
          { text: say(`release.${state}`), tone: "strong" },
          ...(reason === null ? [] : [{ text: say("release.reason", { reason }) }]),
        ],
        under: [{ text: laidPlaces(laid, lineOf, words) }],
      };
    }),
  ];
};
