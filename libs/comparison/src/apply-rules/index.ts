import type { Entry } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";

const keyOf = (item: string, position: string): string => `${item} ${position}`;

/** What the rules say of one place. */
type Ruled = {
  /** A broken rule read it, and says it is bad. */
  bad: Severity | null;
  /** A hint, or a rule whose claim both people read alike: bad only where nothing else is said of the place. */
  suspect: Severity | null;
  fallen: Severity | null;
  passed: boolean;
  /** A broken rule read it. */
  broken: boolean;
};

const LEAST: Severity = "small";

/** Places of which both people read the same: what is written there is so, whatever else does not fit it. */
const readAlike = (entries: readonly Entry[]): ReadonlySet<string> =>
  new Set(
    entries
      .filter(
        ({ outcome, figures, finding }) =>
          outcome === "agree" && finding.b !== null && (figures?.of === "code" || figures?.of === "reading"),
      )
      .map(({ item, position }) => keyOf(item, position)),
  );

type Places = Map<string, Ruled>;

const ruledAt = (places: Places, { item, position }: EntryReference): Ruled => {
  const key = keyOf(item, position);
  const known = places.get(key) ?? { bad: null, suspect: null, fallen: null, passed: false, broken: false };
  places.set(key, known);
  return known;
};

const collectBreak = (check: CrossCheck, alike: ReadonlySet<string>, places: Places): void => {
  const severity = check.severity ?? LEAST;
  for (const place of check.reads) ruledAt(places, place).broken = true;
  for (const place of check.bad) {
    const ruled = ruledAt(places, place);
    if (check.strength === "contradicts") ruled.bad = worseSeverity(ruled.bad, severity);
    else ruled.suspect = worseSeverity(ruled.suspect, severity);
  }
  for (const claim of check.decides.filter(({ side }) => side === "a")) {
    if (!alike.has(keyOf(claim.item, claim.position))) {
      const ruled = ruledAt(places, claim);
      ruled.fallen = worseSeverity(ruled.fallen, severity);
      continue;
    }
    // Both read that number: it is what else was read that does not fit.
    for (const place of check.reads.filter(({ side }) => side === "b")) {
      const ruled = ruledAt(places, place);
      ruled.suspect = worseSeverity(ruled.suspect, severity);
    }
  }
};

const collect = (entries: readonly Entry[], checks: readonly CrossCheck[]): Places => {
  const places: Places = new Map();
  const alike = readAlike(entries);
  for (const check of checks) {
    if (check.verdict === "breaks") collectBreak(check, alike, places);
    else if (check.verdict === "holds" && check.strength === "contradicts") {
      for (const place of check.reads) if (place.side === "b") ruledAt(places, place).passed = true;
    }
  }
  return places;
};

const without = (entry: Entry, ...marks: Entry["marks"]): Entry["marks"] =>
  entry.marks.filter((mark) => !marks.includes(mark));

/** The claim falls to figures, whatever the inspector answered there. */
const fallen = (entry: Entry, severity: Severity): Entry => {
  const { coverageOnly: _folded, ...rest } = entry;
  return {
    ...rest,
    outcome: "differ",
    reason: "falls-to-figures",
    direction: "stated-better",
    standing: "contradicted-by-figures",
    severity: worseSeverity(entry.severity, severity),
    marks: [...without(entry, "no-yardstick", "both-bad"), "by-figures"],
  };
};

const SAME: ReadonlySet<string> = new Set(["agree", "consistent"]);

/** What a broken rule read is bad, though no yardstick of the item said so. */
const bad = (entry: Entry, severity: Severity): Entry => {
  const worst = worseSeverity(entry.severity, severity);
  const calls = { ...entry.calls, b: isBadCall(entry.calls.b) ? entry.calls.b : severity };
  if (entry.coverageOnly === true || entry.outcome === "unstated") {
    const { coverageOnly: _folded, ...rest } = entry;
    return {
      ...rest,
      calls,
      outcome: "unstated",
      reason: "found-bad-by-figures",
      standing: "not-mentioned",
      severity: entry.outcome === "unstated" && !entry.marks.includes("no-yardstick") ? worst : severity,
      marks: [...without(entry, "no-yardstick", "by-figures"), "by-figures"],
    };
  }
  if (!SAME.has(entry.outcome) || entry.finding.a === null) return { ...entry, severity: worst };
  return {
    ...entry,
    calls,
    outcome: "agree",
    standing: "agreed-fault",
    severity: worst,
    marks: [...without(entry, "both-bad", "by-figures"), "both-bad", "by-figures"],
  };
};

/** A rule is a yardstick too: what it read and passes is good. */
const passed = (entry: Entry): Entry =>
  entry.outcome === "unstated" && entry.marks.includes("no-yardstick")
    ? {
        ...entry,
        calls: { ...entry.calls, b: "good" },
        outcome: "consistent",
        reason: "seen-sound-not-stated",
        severity: null,
        coverageOnly: true,
        marks: without(entry, "no-yardstick"),
      }
    : entry;

/**
 * Lays what the rules of the handbook say onto the lines: a claim that a rule breaks differs, by figures, whether or not the
 * inspector answered that item; what a broken rule read is bad; what a rule read and holds is good where nothing else judges it.
 * Lines of single faults stay as they are.
 *
 * @example applyRules(entries, checks).filter(({ marks }) => marks.includes("by-figures")).length // 11
 */
export const applyRules = (entries: readonly Entry[], checks: readonly CrossCheck[]): Entry[] => {
  const places = collect(entries, checks);
  return entries.map((entry) => {
    const ruled = places.get(keyOf(entry.item, entry.position));
    if (ruled === undefined || entry.atom.of === "fault") return entry;
    if (ruled.fallen !== null) return fallen(entry, ruled.fallen);
    const alone = entry.coverageOnly === true || entry.outcome === "unstated";
    const severity = worseSeverity(ruled.bad, alone ? ruled.suspect : null);
    if (severity !== null && entry.atom.of === "answer" && entry.finding.b !== null)
      return bad(entry, severity);
    if (severity !== null) return { ...entry, severity: worseSeverity(entry.severity, severity) };
    return ruled.passed && !ruled.broken ? passed(entry) : entry;
  });
};
