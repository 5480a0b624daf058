import { type Entry, isUnjudged } from "@evenhand/shared/comparison";
import { isBadCall, worseSeverity } from "@evenhand/shared/severity";
import type { Severity } from "@evenhand/shared/severity";

/** What the rules say of one place. */
export type Ruled = {
  /** A broken rule read it, and says it is bad. */
  bad: Severity | null;
  /** A hint, or a rule whose claim both people read alike: bad only where nothing else is said of the place. */
  suspect: Severity | null;
  fallen: Severity | null;
  passed: boolean;
  /** A broken rule read it. */
  broken: boolean;
  /** What was read there makes a claim fall: bad only where nothing else judges it. */
  evidence: Severity | null;
  /** A claim that the inspector's readings bear out. */
  borneOut: boolean;
};

const without = (entry: Entry, ...marks: Entry["marks"]): Entry["marks"] =>
  entry.marks.filter((mark) => !marks.includes(mark));

/** The claim falls to figures, whatever the inspector answered there. */
const fallen = (entry: Entry, severity: Severity): Entry => ({
  ...entry,
  coverageOnly: undefined,
  outcome: "differ",
  reason: "falls-to-figures",
  direction: "stated-better",
  standing: "contradicted-by-figures",
  severity: worseSeverity(entry.severity, severity),
  marks: [...without(entry, "no-yardstick", "both-bad"), "by-figures"],
});

/** One character apart, or the same digits in another unit: a slip of the pen or of the eye, before it is anything graver. */
const MISREAD: ReadonlySet<string> = new Set([
  "one-look-alike",
  "one-dropped",
  "two-exchanged",
  "perhaps-the-unit",
]);

const isMisread = ({ outcome, reason }: Entry): boolean => outcome === "doubtful" && MISREAD.has(reason);

const SAME: ReadonlySet<string> = new Set(["agree", "consistent"]);

/** What a broken rule read is bad, though no yardstick of the item said so. */
const bad = (entry: Entry, severity: Severity): Entry => {
  const worst = worseSeverity(entry.severity, severity);
  const calls = { ...entry.calls, b: isBadCall(entry.calls.b) ? entry.calls.b : severity };
  if (entry.coverageOnly === true || entry.outcome === "unstated") {
    return {
      ...entry,
      coverageOnly: undefined,
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
  isUnjudged(entry)
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

/** A claim nobody looked at by itself, and the inspector's readings speak for it. */
const borneOut = (entry: Entry): Entry =>
  entry.outcome === "unseen" && entry.finding.a !== null && entry.calls.a !== null
    ? {
        ...entry,
        outcome: "consistent",
        reason: "borne-out-by-figures",
        standing: "not-contradicted",
        severity: null,
        marks: [...without(entry, "by-figures"), "by-figures"],
      }
    : entry;

/** A line with what the rules say of its place laid onto it. */
export const ruledEntry = (entry: Entry, ruled: Ruled): Entry => {
  if (ruled.fallen !== null) {
    // A rule that says which reading is right says how grave the slip is, and accuses nobody.
    return isMisread(entry) ? { ...entry, severity: ruled.fallen } : fallen(entry, ruled.fallen);
  }
  const alone = entry.coverageOnly === true || entry.outcome === "unstated";
  const unjudged = alone && entry.marks.includes("no-yardstick");
  const severity = worseSeverity(
    worseSeverity(ruled.bad, alone ? ruled.suspect : null),
    unjudged ? ruled.evidence : null,
  );
  if (severity !== null && entry.atom.of === "answer" && entry.finding.b !== null)
    return bad(entry, severity);
  if (severity !== null) return { ...entry, severity: worseSeverity(entry.severity, severity) };
  if (ruled.borneOut && !ruled.broken && !isBadCall(entry.calls.a)) return borneOut(entry);
  return ruled.passed && !ruled.broken ? passed(entry) : entry;
};
