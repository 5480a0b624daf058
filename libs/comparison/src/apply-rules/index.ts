import type { Entry } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { ruledEntry } from "./ruled-entry.ts";
import type { Ruled } from "./ruled-entry.ts";

type Place = Pick<EntryReference, "item" | "position">;

/** What is known by place: by item, and then in a list, for few of an item's places are ever spoken of. No text is made of a place. */
type ByPlace<Known> = Map<string, { readonly position: string; readonly known: Known }[]>;

const at = <Known>(places: ByPlace<Known>, { item, position }: Place): Known | undefined => {
  const ofItem = places.get(item);
  if (ofItem === undefined) return undefined;
  for (let index = 0; index < ofItem.length; index += 1) {
    const one = ofItem[index];
    if (one?.position === position) return one.known;
  }
  return undefined;
};

const put = <Known>(places: ByPlace<Known>, { item, position }: Place, known: Known): void => {
  const ofItem = places.get(item);
  if (ofItem === undefined) places.set(item, [{ position, known }]);
  else ofItem.push({ position, known });
};

const LEAST: Severity = "small";

/** Places of which both people read the same, use aside: what is written there is so, whatever else does not fit it. */
const isReadAlike = ({ outcome, reason, figures, finding }: Entry): boolean =>
  (outcome === "agree" || reason === "within-use") &&
  finding.b !== null &&
  (figures?.of === "code" || figures?.of === "reading");

const NOTHING_RULED: Ruled = {
  bad: null,
  suspect: null,
  fallen: null,
  passed: false,
  broken: false,
  evidence: null,
  borneOut: false,
};

type Places = ByPlace<Ruled>;

const ruledAt = (places: Places, place: EntryReference): Ruled => {
  const known = at(places, place);
  if (known !== undefined) return known;
  const nothing = { ...NOTHING_RULED };
  put(places, place, nothing);
  return nothing;
};

/** The lines of what is accused, by place: those of whole answers, and whether both read it alike. */
type Accused = { readonly lines: ByPlace<Entry>; readonly alike: ByPlace<true> };

/**
 * What of a broken relation is bad. Both people read some of it alike: then it is the rest that does not fit. Some of it is bad by
 * its own yardstick and some good: then the former explains it.
 */
const culprits = ({ bad }: CrossCheck, { lines, alike }: Accused): readonly EntryReference[] => {
  const lineOf = (place: Place) => at(lines, place);
  const strange = bad.filter((place) => at(alike, place) === undefined);
  const left = strange.length > 0 ? strange : bad;
  return left.some((place) => isBadCall(lineOf(place)?.calls.b))
    ? left.filter((place) => lineOf(place)?.calls.b !== "good")
    : left;
};

/** Readings of one item alone that make a claim fall: the turns of the wheel, and not everything a road test reads. */
const evidenceOf = ({ reads }: CrossCheck): readonly EntryReference[] => {
  const found = reads.filter(({ side }) => side === "b");
  return new Set(found.map(({ item }) => item)).size === 1 ? found : [];
};

const collectBreak = (check: CrossCheck, accused: Accused, places: Places): void => {
  const severity = check.severity ?? LEAST;
  for (const place of check.reads) ruledAt(places, place).broken = true;
  for (const place of culprits(check, accused)) {
    const ruled = ruledAt(places, place);
    if (check.strength === "contradicts") ruled.bad = worseSeverity(ruled.bad, severity);
    else ruled.suspect = worseSeverity(ruled.suspect, severity);
  }
  for (const claim of check.decides.filter(({ side }) => side === "a")) {
    if (at(accused.alike, claim) === undefined) {
      const ruled = ruledAt(places, claim);
      ruled.fallen = worseSeverity(ruled.fallen, severity);
      for (const place of evidenceOf(check)) {
        const read = ruledAt(places, place);
        read.evidence = worseSeverity(read.evidence, severity);
      }
      continue;
    }
    // Both read that number: it is what else was read that does not fit.
    for (const place of check.reads.filter(({ side }) => side === "b")) {
      const ruled = ruledAt(places, place);
      ruled.suspect = worseSeverity(ruled.suspect, severity);
    }
  }
};

/** A rule that holds is a yardstick of what it read, and speaks for the claim it tested. */
const collectHold = (
  { reads, decides, strength }: CrossCheck,
  isFigure: (item: string) => boolean,
  places: Places,
): void => {
  if (strength === "reminder") return;
  const found = reads.filter(({ side }) => side === "b");
  for (const place of found) ruledAt(places, place).passed = true;
  if (found.length === 0) return;
  // Dates that fit never show that a part is this car's: only a figure is borne out by figures.
  const figures = decides.filter(({ side, item }) => side === "a" && isFigure(item));
  for (const claim of figures) ruledAt(places, claim).borneOut = true;
};

const addItems = (items: Set<string>, references: readonly EntryReference[]): void => {
  for (const { item } of references) items.add(item);
};

/** The items that checks speak of, and those of which a break says that something is wrong. */
const itemsOf = (checks: readonly CrossCheck[]) => {
  const [spokenOf, accused] = [new Set<string>(), new Set<string>()];
  for (const { reads, decides, bad, verdict } of checks) {
    addItems(spokenOf, reads);
    addItems(spokenOf, decides);
    addItems(spokenOf, bad);
    if (verdict !== "breaks") continue;
    addItems(accused, decides);
    addItems(accused, bad);
  }
  return { spokenOf, accused };
};

const accuse = ({ lines, alike }: Accused, entry: Entry): void => {
  if (isReadAlike(entry)) put(alike, entry, true);
  if (entry.atom.of === "answer") put(lines, entry, entry);
};

/** Where the lines of an item begin, which stand together; -1 where it has none. */
export type FirstLine = (item: string) => number;

const firstLineIn = (entries: readonly Entry[]): FirstLine => {
  const firsts = new Map<string, number>();
  for (const [index, { item }] of entries.entries()) if (!firsts.has(item)) firsts.set(item, index);
  return (item) => firsts.get(item) ?? -1;
};

/** Where the lines of what checks speak of stand, and those that breaks ask for. Only what a check speaks of is looked up. */
const linesOf = (entries: readonly Entry[], checks: readonly CrossCheck[], firstLine: FirstLine) => {
  const items = itemsOf(checks);
  const spokenOf: number[] = [];
  const accused: Accused = { lines: new Map(), alike: new Map() };
  for (const item of items.spokenOf) {
    const isAccused = items.accused.has(item);
    for (let index = firstLine(item); ; index += 1) {
      const entry = entries[index];
      if (entry === undefined || entry.item !== item) break;
      spokenOf.push(index);
      if (isAccused) accuse(accused, entry);
    }
  }
  return { spokenOf, accused };
};

const collect = (
  checks: readonly CrossCheck[],
  accused: Accused,
  { items }: Pick<CompiledSheet, "items">,
): Places => {
  const isFigure = (item: string): boolean => items.get(item)?.item.answer === "reading";
  const places: Places = new Map();
  for (const check of checks) {
    if (check.verdict === "breaks") collectBreak(check, accused, places);
    else if (check.verdict === "holds") collectHold(check, isFigure, places);
  }
  return places;
};

/**
 * Lays what the rules of the handbook say onto the lines: a claim that a rule breaks differs, by figures, whether or not the
 * inspector answered that item, unless it is a number that was probably misread; what a broken rule read is bad; what a rule read and holds is good where nothing else judges it, and a
 * figure it tested that nobody looked at is not contradicted. Lines of single faults stay as they are.
 *
 * @param entries of which those of one item stand together
 * @param firstLine where the lines of an item begin, where that is known
 * @example applyRules(entries, checks, sheet).filter(({ marks }) => marks.includes("by-figures")).length // 11
 */
export const applyRules = (
  entries: readonly Entry[],
  checks: readonly CrossCheck[],
  sheet: Pick<CompiledSheet, "items">,
  firstLine: FirstLine = firstLineIn(entries),
): Entry[] => {
  const { spokenOf, accused } = linesOf(entries, checks, firstLine);
  const places = collect(checks, accused, sheet);
  const laid = entries.slice();
  for (const index of spokenOf) {
    const entry = entries[index];
    if (entry === undefined || entry.atom.of === "fault") continue;
    const ruled = at(places, entry);
    if (ruled !== undefined) laid[index] = ruledEntry(entry, ruled);
  }
  return laid;
};
