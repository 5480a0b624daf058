import type { Entry } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";
import type { CompiledSheet } from "@evenhand/sheet/compile-sheet";
import { ruledEntry } from "./ruled-entry.ts";
import type { Ruled } from "./ruled-entry.ts";

const keyOf = (item: string, position: string): string => `${item} ${position}`;

const LEAST: Severity = "small";

/** Places of which both people read the same, use aside: what is written there is so, whatever else does not fit it. */
const readAlike = (entries: readonly Entry[]): ReadonlySet<string> =>
  new Set(
    entries
      .filter(
        ({ outcome, reason, figures, finding }) =>
          (outcome === "agree" || reason === "within-use") &&
          finding.b !== null &&
          (figures?.of === "code" || figures?.of === "reading"),
      )
      .map(({ item, position }) => keyOf(item, position)),
  );

const NOTHING_RULED: Ruled = {
  bad: null,
  suspect: null,
  fallen: null,
  passed: false,
  broken: false,
  evidence: null,
  borneOut: false,
};

type Places = Map<string, Ruled>;

const ruledAt = (places: Places, { item, position }: EntryReference): Ruled => {
  const key = keyOf(item, position);
  const known = places.get(key) ?? { ...NOTHING_RULED };
  places.set(key, known);
  return known;
};

/** The lines of whole answers, by place. */
type Lines = ReadonlyMap<string, Entry>;

/**
 * What of a broken relation is bad. Both people read some of it alike: then it is the rest that does not fit. Some of it is bad by
 * its own yardstick and some good: then the former explains it.
 */
const culprits = (
  { bad }: CrossCheck,
  alike: ReadonlySet<string>,
  lines: Lines,
): readonly EntryReference[] => {
  const lineOf = ({ item, position }: EntryReference) => lines.get(keyOf(item, position));
  const strange = bad.filter(({ item, position }) => !alike.has(keyOf(item, position)));
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

const collectBreak = (check: CrossCheck, alike: ReadonlySet<string>, lines: Lines, places: Places): void => {
  const severity = check.severity ?? LEAST;
  for (const place of check.reads) ruledAt(places, place).broken = true;
  for (const place of culprits(check, alike, lines)) {
    const ruled = ruledAt(places, place);
    if (check.strength === "contradicts") ruled.bad = worseSeverity(ruled.bad, severity);
    else ruled.suspect = worseSeverity(ruled.suspect, severity);
  }
  for (const claim of check.decides.filter(({ side }) => side === "a")) {
    if (!alike.has(keyOf(claim.item, claim.position))) {
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

const itemsOf = (...references: readonly (readonly EntryReference[])[]): string[] =>
  references.flat().map(({ item }) => item);

const collect = (
  entries: readonly Entry[],
  checks: readonly CrossCheck[],
  { items }: Pick<CompiledSheet, "items">,
): { readonly spokenOf: readonly number[]; readonly places: Places } => {
  const isFigure = (item: string): boolean => items.get(item)?.item.answer === "reading";
  const places: Places = new Map();
  // Only what a check speaks of is looked up.
  const itemsSpokenOf = new Set(checks.flatMap(({ reads, decides, bad }) => itemsOf(reads, decides, bad)));
  // Only breaks ask how the lines of what they accuse stand.
  const accused = new Set(
    checks.flatMap(({ verdict, decides, bad }) => (verdict === "breaks" ? itemsOf(decides, bad) : [])),
  );
  const spokenOf: number[] = [];
  const own: Entry[] = [];
  for (let index = 0; index < entries.length; index += 1) {
    const entry = entries[index];
    if (entry === undefined || !itemsSpokenOf.has(entry.item)) continue;
    spokenOf.push(index);
    if (accused.has(entry.item)) own.push(entry);
  }
  const alike = readAlike(own);
  const lines: Lines = new Map(
    own
      .filter(({ atom }) => atom.of === "answer")
      .map((entry) => [keyOf(entry.item, entry.position), entry] as const),
  );
  for (const check of checks) {
    if (check.verdict === "breaks") collectBreak(check, alike, lines, places);
    else if (check.verdict === "holds") collectHold(check, isFigure, places);
  }
  return { spokenOf, places };
};

/**
 * Lays what the rules of the handbook say onto the lines: a claim that a rule breaks differs, by figures, whether or not the
 * inspector answered that item, unless it is a number that was probably misread; what a broken rule read is bad; what a rule read and holds is good where nothing else judges it, and a
 * figure it tested that nobody looked at is not contradicted. Lines of single faults stay as they are.
 *
 * @example applyRules(entries, checks, sheet).filter(({ marks }) => marks.includes("by-figures")).length // 11
 */
export const applyRules = (
  entries: readonly Entry[],
  checks: readonly CrossCheck[],
  sheet: Pick<CompiledSheet, "items">,
): Entry[] => {
  const { spokenOf, places } = collect(entries, checks, sheet);
  const laid = entries.slice();
  for (const index of spokenOf) {
    const entry = entries[index];
    if (entry === undefined || entry.atom.of === "fault") continue;
    const ruled = places.get(keyOf(entry.item, entry.position));
    if (ruled !== undefined) laid[index] = ruledEntry(entry, ruled);
  }
  return laid;
};
