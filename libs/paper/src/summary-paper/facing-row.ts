import { outcomeWords, standingWords } from "@evenhand/comparison/sentence";
import { capital } from "@evenhand/message/first-letter";
import { listed } from "@evenhand/message/listed";
import { outcomeSign } from "@evenhand/shared/outcome";
import type { SummaryItem } from "@evenhand/shared/summary";
import type { SheetWords } from "@evenhand/wording/sheet-words";
import type { Facing, Run } from "../blocks/index.ts";
import { type Alike, alike, placesOf, positionOf } from "./alike.ts";
import { say } from "./messages.ts";

/** Standings that only repeat the outcome. */
const SAME_WORD: ReadonlySet<string> = new Set([
  "differs",
  "in-doubt",
  "unseen",
  "not-mentioned",
  "not-comparable",
]);

type Side = "stated" | "found";
const said =
  (side: Side) =>
  (line: SummaryItem): string | null =>
    line.said?.[side] ?? null;
const saidAlike = (row: Alike<SummaryItem>, side: Side): Alike<SummaryItem>[] =>
  alike(row, (line) => [said(side)(line)]);

/** What a side said of all places of a row: once where it is the same of each, else place by place. */
const saidBy = (row: Alike<SummaryItem>, side: Side, silence: string, words: SheetWords): Run => {
  const saidOf = said(side);
  const same = saidAlike(row, side);
  if (same.length === 1) {
    const once = saidOf(row[0]);
    return once === null ? { text: silence, tone: "faint" } : { text: once };
  }
  const each = same.map((lines) => {
    const positions = listed(lines.map((line) => positionOf(line, words)));
    return say("said-of", { positions, said: saidOf(lines[0]) ?? silence });
  });
  return { text: listed(each, "semicolon") };
};

const rowOf = (row: Alike<SummaryItem>, words: SheetWords): Facing => {
  const [{ item, outcome, standing }] = row;
  const byPlace = saidAlike(row, "stated").length > 1 || saidAlike(row, "found").length > 1;
  return {
    kind: "facing",
    place: capital(byPlace ? words.item(item) : placesOf(row, words)),
    sign: outcomeSign[outcome],
    stands: SAME_WORD.has(standing) ? outcomeWords(outcome) : standingWords(standing),
    stated: saidBy(row, "stated", say("silent"), words),
    found: saidBy(row, "found", say("not-looked"), words),
  };
};

/**
 * Lines of one item that stand alike, as one row where a side said the same of all places: the other then tells them apart. Where both
 * sides tell them apart, places of which both said the same are a row.
 */
export const facingRows = (alikes: Alike<SummaryItem>, words: SheetWords): Facing[] => {
  const sides = ["stated", "found"] as const;
  const once = sides.some((side) => saidAlike(alikes, side).length === 1);
  const rows = once ? [alikes] : alike(alikes, (line) => sides.map((side) => said(side)(line)));
  return rows.map((row) => rowOf(row, words));
};
