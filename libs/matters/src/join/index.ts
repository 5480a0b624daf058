import type { Comparison, Entry } from "@evenhand/shared/comparison";
import type { CrossCheck } from "@evenhand/shared/cross-check";
import { severityRank } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { kindAt, kindOf, kindOfRule } from "../kinds/index.ts";
import type { Kind } from "../kinds/index.ts";
import { needOf } from "../need/index.ts";
import { isGap, isOfMatter, isUnasked, weightOf } from "../weight/index.ts";
import { findPlace, isOfBody, joinBody } from "./body.ts";
import { partLines, weightOfGroup } from "./line.ts";
import type { Group, Line } from "./line.ts";
import type { Zone } from "../zone/index.ts";

const placeKey = (item: string, position: string): string => `${item}@${position}`;

/** Claims and readings that a broken rule decides belong to what the rule is about, whatever item they stand at. */
const ruledKinds = (checks: readonly CrossCheck[]): ReadonlyMap<string, Kind> => {
  const kinds = new Map<string, Kind>();
  for (const { verdict, rule, decides, bad } of checks) {
    const kind = verdict === "breaks" ? kindOfRule(rule) : undefined;
    if (kind === undefined || kind.family === "body") continue;
    for (const { item, position } of [...decides, ...bad]) {
      const key = placeKey(item, position);
      if (!kinds.has(key)) kinds.set(key, kind);
    }
  }
  return kinds;
};

const kindOfEntry = ({ item, position, marks }: Entry, ruled: ReadonlyMap<string, Kind>): Kind => {
  const own = kindAt(item, position);
  if (own.family === "body" || !marks.includes("by-figures")) return own;
  return ruled.get(placeKey(item, position)) ?? own;
};

const linesOf = (
  { entries, crossChecks }: Pick<Comparison, "entries" | "crossChecks">,
  { items }: Pick<CompiledSheet, "items">,
): Line[] => {
  const ruled = ruledKinds(crossChecks);
  const lines: Line[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry === undefined || !isOfMatter(entry)) continue;
    const compiled = items.get(entry.item);
    lines.push({ index, entry, compiled, weight: weightOf(entry), kind: kindOfEntry(entry, ruled) });
  }
  return lines;
};

const foundGroups = (lines: readonly Line[]): Group[] => {
  const { held: ofBody, others } = partLines(lines, isOfBody);
  return [
    ...joinBody(ofBody),
    ...[...Map.groupBy(others, ({ kind }) => kind.id)].map(([id, of]): Group => ({
      kind: kindOf(id),
      zone: null,
      lines: of,
    })),
  ];
};

const NEVER_JOINED: ReadonlySet<string> = new Set(["unseen-road", "unseen-running"]);

/** A group that something unseen can stand with, and how far down it stands by itself. */
type Home = { readonly group: Group; readonly weight: number };
/** Groups by their place, and those without one by their kind. */
type Homes = { readonly byZone: ReadonlyMap<Zone, Home>; readonly byKind: ReadonlyMap<string, Home> };

const homesOf = (groups: readonly Group[]): Homes => {
  const byZone = new Map<Zone, Home>();
  const byKind = new Map<string, Home>();
  for (const group of groups) {
    const home = { group, weight: weightOfGroup(group) };
    if (group.zone === null) byKind.set(group.kind.id, home);
    else byZone.set(group.zone, home);
  }
  return { byZone, byKind };
};

/** What was asked and not seen stands with what was found of the same thing, where that is at least as grave. */
const homeOf = (line: Line, need: string, { byZone, byKind }: Homes): Group | undefined => {
  const { entry, kind } = line;
  if (isUnasked(entry) || entry.severity === null || NEVER_JOINED.has(need)) return undefined;
  const home = (isOfBody(line) ? findPlace(line, byZone) : undefined) ?? byKind.get(kind.id);
  return home !== undefined && home.weight <= severityRank(entry.severity) ? home.group : undefined;
};

const addTo = <Key>(map: Map<Key, Line[]>, key: Key, line: Line): void => {
  const lines = map.get(key);
  if (lines === undefined) map.set(key, [line]);
  else lines.push(line);
};

/**
 * Lines of a comparison joined by cause: by the thing they speak of, by the rule that decides them, by their place on the car, and
 * what nobody knows by what it would have needed. Every line that belongs to a matter is in exactly one group.
 *
 * @param sheet the sheet both reports were made on
 */
export const joinLines = (
  comparison: Pick<Comparison, "entries" | "crossChecks">,
  sheet: Pick<CompiledSheet, "items">,
): Group[] => {
  const { held: gaps, others: found } = partLines(linesOf(comparison, sheet), ({ entry }) => isGap(entry));
  const groups = foundGroups(found);
  const homes = homesOf(groups);
  const joined = new Map<Group, Line[]>();
  const unknown = new Map<string, Line[]>();
  for (const line of gaps) {
    const { entry, compiled } = line;
    const need = compiled === undefined ? "unseen-looking" : needOf(entry, compiled.item);
    const home = homeOf(line, need, homes);
    if (home === undefined) addTo(unknown, need, line);
    else addTo(joined, home, line);
  }
  return [
    ...groups.map((group): Group => {
      const more = joined.get(group);
      return more === undefined ? group : { ...group, lines: group.lines.concat(more) };
    }),
    ...[...unknown].map(([id, of]): Group => ({ kind: kindOf(id), zone: null, lines: of })),
  ];
};
