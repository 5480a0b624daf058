import type { Entry } from "@evenhand/shared/comparison";
import type { CrossCheck, EntryReference } from "@evenhand/shared/cross-check";
import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";

const keyOf = (item: string, position: string): string => `${item} ${position}`;

/** What the rules say of one place. */
type Ruled = { bad: Severity | null; fallen: Severity | null; passed: boolean };

const LEAST: Severity = "small";

const collect = (checks: readonly CrossCheck[]): ReadonlyMap<string, Ruled> => {
  const places = new Map<string, Ruled>();
  const at = ({ item, position }: EntryReference): Ruled => {
    const key = keyOf(item, position);
    const known = places.get(key) ?? { bad: null, fallen: null, passed: false };
    places.set(key, known);
    return known;
  };
  for (const { verdict, severity, bad, decides, reads, strength } of checks) {
    if (verdict === "breaks") {
      for (const place of bad) at(place).bad = worseSeverity(at(place).bad, severity ?? LEAST);
      for (const claim of decides) {
        if (claim.side === "a") at(claim).fallen = worseSeverity(at(claim).fallen, severity ?? LEAST);
      }
    } else if (verdict === "holds" && strength === "contradicts") {
      for (const place of reads) if (place.side === "b") at(place).passed = true;
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
  const places = collect(checks);
  return entries.map((entry) => {
    const ruled = places.get(keyOf(entry.item, entry.position));
    if (ruled === undefined || entry.atom.of === "fault") return entry;
    if (ruled.fallen !== null) return fallen(entry, ruled.fallen);
    if (ruled.bad !== null && entry.atom.of === "answer" && entry.finding.b !== null)
      return bad(entry, ruled.bad);
    if (ruled.bad !== null) return { ...entry, severity: worseSeverity(entry.severity, ruled.bad) };
    return ruled.passed ? passed(entry) : entry;
  });
};
