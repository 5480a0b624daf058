import { outcomeWords, severityWords, standingWords } from "@evenhand/comparison/sentence";
import { findRule } from "@evenhand/handbook/rules";
import { sentence } from "@evenhand/handbook/sentence";
import { capital } from "@evenhand/message/first-letter";
import { outcomeSign } from "@evenhand/shared/outcome";
import type { Summary, SummaryItem } from "@evenhand/shared/summary";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import type { Block, Facing, Run } from "../blocks/index.ts";
import { say } from "./messages.ts";

/** Standings that only repeat the outcome. */
const SAME_WORD: ReadonlySet<string> = new Set([
  "differs",
  "in-doubt",
  "unseen",
  "not-mentioned",
  "not-comparable",
]);

const silent = (words: string): Run => ({ text: words, tone: "faint" });

const facing = (
  { item, position, outcome, standing, severity, found, said }: SummaryItem,
  words: SheetWords,
) => ({
  kind: "facing" as const,
  place: capital(words.place(item, position)),
  tag: severity === null ? "" : severityWords(severity, found),
  sign: outcomeSign[outcome],
  stands: SAME_WORD.has(standing) ? outcomeWords(outcome) : standingWords(standing),
  stated: said?.stated == null ? silent(say("silent")) : { text: said.stated },
  found: said?.found == null ? silent(say("not-looked")) : { text: said.found },
});

const lines = (heading: string, none: string, items: readonly SummaryItem[], words: SheetWords): Block[] => {
  const rows: Facing[] = items.map((one) => facing(one, words));
  const title: Block = { kind: "heading", text: heading };
  if (rows.length === 0) return none === "" ? [] : [title, { kind: "text", runs: [{ text: none }] }];
  return [title, { kind: "facing-head", stated: say("stated"), found: say("found") }, ...rows];
};

/** What was stated beside what was found: in doubt, bad by both, and what nobody saw. */
export const lineBlocks = ({ inDoubt, bothBad, unseen }: Summary, words: SheetWords): Block[] => [
  ...lines(say("in-doubt", { count: inDoubt.length }), say("in-doubt.none"), inDoubt, words),
  ...lines(say("both-bad", { count: bothBad.length }), "", bothBad, words),
  ...lines(say("unseen", { count: unseen.length }), say("unseen.none"), unseen, words),
];

/** The broken rules, each with what it read. */
export const brokenBlocks = ({ broken }: Summary): Block[] => [
  { kind: "heading", text: say("broken", { count: broken.length }) },
  ...(broken.length === 0 ? [{ kind: "text" as const, runs: [{ text: say("broken.none") }] }] : []),
  ...broken.map((check): Block => ({
    kind: "item",
    label: "≠",
    runs: [{ text: capital(findRule(check.rule)?.title ?? check.rule), tone: "strong" }],
    under: [{ text: sentence(check) }],
  })),
];

/** What was laid before the dealer, line by line, and what they answered. */
export const releaseBlocks = (summary: Summary, words: SheetWords): Block[] => {
  const { releases, inDoubt, unseen, bothBad, openMatters } = summary;
  if (releases.length === 0) return [];
  const all = [...inDoubt, ...unseen, ...bothBad, ...openMatters.flatMap((open) => open.lines)];
  const places = new Map(all.map((one) => [one.entry, capital(words.place(one.item, one.position))]));
  return [
    { kind: "heading", text: say("releases") },
    ...releases.map(({ entry, state, reason }): Block => ({
      kind: "item",
      label: "•",
      runs: [
        { text: places.get(entry) ?? say("release.line", { number: entry + 1 }), tone: "strong" },
        { text: say(`release.${state}`) },
        ...(reason === null ? [] : [{ text: say("release.reason", { reason }) }]),
      ],
    })),
  ];
};
