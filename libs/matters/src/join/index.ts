import { type Comparison, type Entry, isUnjudged } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { severityRank } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { kindAt, kindOf, kindOfRule } from "../kinds/index.ts";
import type { Kind } from "../kinds/index.ts";
import { mustBeOpened } from "../need/index.ts";
import { isGap, isOfMatter, isUnasked, weightOf } from "../weight/index.ts";
import { findPlace, isOfBody, joinBody } from "./body.ts";
import { addTo, groupOf } from "./line.ts";
import type { Group, Line } from "./line.ts";
import { kindOfPlace, ofSheet } from "./of-sheet.ts";
import type { OfItem } from "./of-sheet.ts";
import type { Zone } from "../zone/index.ts";

const placeKey = (item: string, position: string): string => `${item}@${position}`;

/** What is known of a place first stays. */
const addPlaces = (kinds: Map<string, Kind>, places: readonly EntryReference[], kind: Kind): void => {
  for (const { item, position } of places) {
    const key = placeKey(item, position);
    if (!kinds.has(key)) kinds.set(key, kind);
  }
};

/** Claims and readings that a broken rule decides belong to what the rule is about, whatever item they stand at. */
const ruledKinds = (checks: readonly CrossCheck[]): ReadonlyMap<string, Kind> => {
  const kinds = new Map<string, Kind>();
  for (let index = 0; index < checks.length; index += 1) {
    const check = checks[index];
    const kind = check?.verdict === "breaks" ? kindOfRule(check.rule) : undefined;
    if (check === undefined || kind === undefined || kind.family === "body") continue;
    addPlaces(kinds, check.decides, kind);
    addPlaces(kinds, check.bad, kind);
  }
  return kinds;
};

const kindOfEntry = (
  { item, position, marks }: Entry,
  of: OfItem | undefined,
  ruled: ReadonlyMap<string, Kind>,
): Kind => {
  const own = of === undefined ? kindAt(item, position) : kindOfPlace(of, item, position);
  if (own.family === "body" || !marks.includes("by-figures")) return own;
  return ruled.get(placeKey(item, position)) ?? own;
};

/** Every line of some matter: what nobody knows, and what was found. */
type Parted = { readonly gaps: readonly Line[]; readonly found: readonly Line[] };

const linesOf = (
  { entries, crossChecks }: Pick<Comparison, "entries" | "crossChecks">,
  { items }: Pick<CompiledSheet, "items">,
): Parted => {
  const [ruled, bySheet] = [ruledKinds(crossChecks), ofSheet(items)];
  const gaps: Line[] = [];
  const found: Line[] = [];
  let of: OfItem | undefined;
  let item = "";
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry === undefined || !isOfMatter(entry)) continue;
    // Lines of one item stand together.
    if (entry.item !== item) {
      item = entry.item;
      of = bySheet[items.get(item)?.order ?? -1];
    }
    const gap = isGap(entry);
    const kind = kindOfEntry(entry, of, ruled);
    (gap ? gaps : found).push({ index, entry, of, gap, weight: weightOf(entry), kind });
  }
  return { gaps, found };
};

const foundGroups = (lines: readonly Line[]): Group[] => {
  const ofBody: Line[] = [];
  const byKind = new Map<Kind, Line[]>();
  for (const line of lines) {
    if (isOfBody(line)) ofBody.push(line);
    else addTo(byKind, line.kind, line);
  }
  const groups = joinBody(ofBody);
  for (const [kind, of] of byKind) groups.push(groupOf(kind, null, of));
  return groups;
};

const NEVER_JOINED: ReadonlySet<string> = new Set(["unseen-road", "unseen-running"]);

/** Groups that something unseen can stand with, by their place, and those without one by their kind. */
type Homes = { readonly byZone: ReadonlyMap<Zone, Group>; readonly byKind: ReadonlyMap<Kind, Group> };

const homesOf = (groups: readonly Group[]): Homes => {
  const byZone = new Map<Zone, Group>();
  const byKind = new Map<Kind, Group>();
  for (const group of groups) {
    if (group.zone === null) byKind.set(group.kind, group);
    else byZone.set(group.zone, group);
  }
  return { byZone, byKind };
};

/** What was asked and not seen stands with what was found of the same thing, where that is at least as grave. */
const homeOf = (line: Line, need: string, { byZone, byKind }: Homes): Group | undefined => {
  const { entry, kind } = line;
  if (isUnasked(entry) || entry.severity === null || NEVER_JOINED.has(need)) return undefined;
  const home = (isOfBody(line) ? findPlace(line, byZone) : undefined) ?? byKind.get(kind);
  return home !== undefined && home.weight <= severityRank(entry.severity) ? home : undefined;
};

const needAt = ({ entry, of }: Line): string => {
  if (of === undefined) return "unseen-looking";
  if (isUnjudged(entry)) return "no-yardstick";
  return of.fixedNeed ?? (mustBeOpened(entry) ? "unseen-opened" : of.looseNeed);
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
  const { gaps, found } = linesOf(comparison, sheet);
  const groups = foundGroups(found);
  const homes = homesOf(groups);
  const joined = new Map<Group, Line[]>();
  const unknown = new Map<string, Line[]>();
  for (const line of gaps) {
    const need = needAt(line);
    const home = homeOf(line, need, homes);
    if (home === undefined) addTo(unknown, need, line);
    else addTo(joined, home, line);
  }
  const all = groups.map((group): Group => {
    const more = joined.get(group);
    return more === undefined ? group : groupOf(group.kind, group.zone, group.lines.concat(more));
  });
  for (const [id, of] of unknown) all.push(groupOf(kindOf(id), null, of));
  return all;
};
