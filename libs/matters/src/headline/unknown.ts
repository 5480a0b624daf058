import type { Group, Line } from "../join/line.ts";
import { needOf } from "../need/index.ts";
import { named } from "./named.ts";
import { phraseOf, placeWords, saidOf } from "./phrase.ts";
import type { Reports } from "./phrase.ts";

const isClaimed = ({ entry }: Line): boolean => entry.finding.a !== null || entry.finding.b !== null;

/** What was claimed and not seen is named with the claim; of what nobody spoke of, the thing alone. */
const unknownPhrase = ({ entry }: Line, reports: Reports): string => {
  if (entry.finding.b !== null && entry.outcome !== "unseen") return phraseOf(entry, reports);
  const claim = saidOf(entry, "a", reports);
  return placeWords(entry, reports.sheet) + (claim === undefined ? "" : ` (stated: ${claim})`);
};

const claimsFirst = (lines: readonly Line[]): Line[] =>
  lines.toSorted(
    (a, b) => Number(isClaimed(b)) - Number(isClaimed(a)) || a.weight - b.weight || a.index - b.index,
  );

/** What a place would have needed, in a few words. */
const NEEDS: Readonly<Record<string, string>> = {
  "unseen-papers": "papers",
  "unseen-numbers": "numbers on the car",
  "unseen-opened": "to be opened",
  "unseen-lift": "on a lift",
  "unseen-road": "on the road",
  "unseen-running": "engine cold or hot",
  "unseen-looking": "by looking alone",
  "no-yardstick": "without a yardstick",
};

/** Where something is looked at that needs one thing: by system; else by what it would have needed. */
const heading = ({ entry }: Line, { kind }: Group, { sheet }: Reports): string => {
  const item = sheet.items.get(entry.item)?.item;
  if (item === undefined) return entry.item;
  if (NEEDS[kind.id] === undefined) return NEEDS[needOf(entry, item)] ?? item.section;
  const words = sheet.sheet.sections.find(({ id }) => id === item.section)?.words.american;
  return (words ?? item.section).toLowerCase();
};

/** How many of each, the most first: what a second look would have to take in. */
const counted = (lines: readonly Line[], group: Group, reports: Reports): string => {
  const of = [...Map.groupBy(lines, (line) => heading(line, group, reports))];
  if (of.length < 2) return "";
  const most = of.sort(([a, some], [b, others]) => others.length - some.length || (a < b ? -1 : 1));
  return `: ${most.map(([words, { length }]) => `${words} ${length}`).join(", ")}`;
};

/** What was claimed first, three by name, the rest counted by what it would have needed or by system. */
export const unknownWords = (group: Group, reports: Reports): string => {
  const lines = claimsFirst(group.lines);
  const first = named(lines);
  const said = first.map((line) => unknownPhrase(line, reports)).join("; ");
  const rest = lines.filter((line) => !first.includes(line));
  return rest.length === 0 ? said : `${said}; and ${rest.length} more${counted(rest, group, reports)}`;
};
