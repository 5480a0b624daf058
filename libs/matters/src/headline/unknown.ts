import { listed } from "@evenhand/message/listed";
import type { Group, Line } from "../join/line.ts";
import { needOf } from "../need/index.ts";
import { named } from "./named.ts";
import { foundMessages, needMessages, wordsFor } from "./messages.ts";
import { phraseOf, placeWords, saidOf, withClaim } from "./phrase.ts";
import type { Reports } from "./phrase.ts";

const isClaimed = ({ entry }: Line): boolean => entry.finding.a !== null || entry.finding.b !== null;

/** What was claimed and not seen is named with the claim; of what nobody spoke of, the thing alone. */
const unknownPhrase = ({ entry }: Line, reports: Reports): string => {
  if (entry.finding.b !== null && entry.outcome !== "unseen") return phraseOf(entry, reports);
  return withClaim(placeWords(entry, reports.sheet), saidOf(entry, "a", reports));
};

const claimsFirst = (worstFirst: readonly Line[]): readonly Line[] => {
  const claimed = worstFirst.filter(isClaimed);
  if (claimed.length === 0 || claimed.length === worstFirst.length) return worstFirst;
  return [...claimed, ...worstFirst.filter((line) => !isClaimed(line))];
};

/** Where something is looked at that needs one thing: by system; else by what it would have needed. */
const heading = ({ entry }: Line, { kind }: Group, { sheet }: Reports): string => {
  const item = sheet.items.get(entry.item)?.item;
  if (item === undefined) return entry.item;
  if (wordsFor(needMessages, kind.id) === undefined) {
    return wordsFor(needMessages, needOf(entry, item)) ?? item.section;
  }
  const words = sheet.sheet.sections.find(({ id }) => id === item.section)?.words.american;
  return (words ?? item.section).toLowerCase();
};

/** How many of each, the most first: what a second look would have to take in. */
const counted = (lines: readonly Line[], group: Group, reports: Reports): string | undefined => {
  const of = [...Map.groupBy(lines, (line) => heading(line, group, reports))];
  if (of.length < 2) return undefined;
  const most = of.sort(([a, some], [b, others]) => others.length - some.length || (a < b ? -1 : 1));
  return listed(most.map(([words, { length }]) => foundMessages.say("count", { of: words, count: length })));
};

/**
 * What was claimed first, three by name, the rest counted by what it would have needed or by system.
 *
 * @param group its lines worst first
 */
export const unknownWords = (group: Group, reports: Reports): string => {
  const lines = claimsFirst(group.lines);
  const first = named(lines);
  const said = listed(
    first.map((line) => unknownPhrase(line, reports)),
    "semicolon",
  );
  const rest = lines.filter((line) => !first.includes(line));
  if (rest.length === 0) return said;
  const counts = counted(rest, group, reports);
  const list = foundMessages.say("more", { list: said, count: rest.length });
  return counts === undefined ? list : foundMessages.say("more-by", { list, counts });
};
