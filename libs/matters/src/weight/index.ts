import type { CrossCheck } from "@evenhand/shared/cross-check";
import { type Entry, isUnjudged } from "@evenhand/shared/comparison";
import type { Certainty } from "@evenhand/shared/matter";
import type { Finding } from "@evenhand/shared/finding";
import { isBadCall, isDecisive, severityRank } from "@evenhand/shared/severity";

const isOpen = ({ outcome }: Entry): boolean =>
  outcome === "differ" || outcome === "doubtful" || outcome === "unstated";

/** Nobody spoke of it: neither claimed nor looked for. */
export const isUnasked = ({ finding }: Entry): boolean => finding.a === null && finding.b === null;

/**
 * Whether a line belongs to a matter: it differs, is doubtful or was found unmentioned, it is bad though nobody disputes it, or
 * nobody saw it and something hangs on it. A trifle or a repair nobody spoke of is counted in coverage alone.
 *
 * @example isOfMatter({ ...entry, outcome: "unseen", severity: "danger" }) // true
 */
export const isOfMatter = (entry: Entry): boolean => {
  const { outcome, severity, coverageOnly, marks, calls, standing } = entry;
  if (severity === null) return false;
  if (standing === "contradicted-by-figures") return true;
  if (coverageOnly === true) return false;
  if (isOpen(entry) || isBadCall(calls.b) || marks.includes("both-bad")) return true;
  if (outcome === "unseen") return isDecisive(severity) || !isUnasked(entry);
  return outcome === "incomparable" && isDecisive(severity);
};

/** Whether nobody knows: not seen, or seen and nothing to judge it by. */
export const isUnknown = (entry: Entry): boolean =>
  entry.outcome === "unseen" || isUnjudged(entry) || entry.outcome === "incomparable";

/** A paper or a number the inspector was not let see: that is something found, and no gap of the visit. */
const isWithheld = ({ reason, item }: Entry): boolean =>
  reason === "not-seen-not-permitted" && item.startsWith("identity.");

/** A gap: nobody knows, and nobody kept it from the inspector. */
export const isGap = (entry: Entry): boolean => isUnknown(entry) && !isWithheld(entry);

/** A slip of the pen is the likelier reason. */
const isPerhapsASlip = ({ marks }: Entry): boolean =>
  marks.includes("perhaps-unit") || marks.includes("perhaps-other-side");

const DOUBTFUL = 0.25;
/** Behind what was found one step milder: a search nobody ran does not stand before a rotten lift point, but before the price. */
const UNKNOWN = 1.5;
/** What neither claimed nor looked for: every visit leaves some; behind what the price rests on. */
const UNASKED = 2.5;
/** In doubt or unknown, nothing that is more than a trifle becomes one. */
const BEFORE_TRIFLES = 3.75;

const behind = (entry: Entry): number => {
  if (isWithheld(entry)) return DOUBTFUL;
  if (isUnasked(entry)) return UNASKED;
  if (isGap(entry) || isPerhapsASlip(entry)) return UNKNOWN;
  return entry.outcome === "doubtful" ? DOUBTFUL : 0;
};

/**
 * How far down a line stands: its severity from 0 (halt) to 4 (small); what is in doubt a quarter behind, what nobody knows one and
 * a half, so that it stands behind what was found one step milder and before what was found two steps milder; what nobody spoke of
 * another step behind.
 *
 * @example weightOf({ ...entry, outcome: "unseen", severity: "halt" }) // 1.5
 */
export const weightOf = (entry: Entry): number => {
  const weight = severityRank(entry.severity ?? "small") + behind(entry);
  return entry.severity === "small" ? weight : Math.min(weight, BEFORE_TRIFLES);
};

const isMeasured = ({ marks, figures, standing }: Entry): boolean =>
  standing === "contradicted-by-figures" ||
  marks.includes("by-figures") ||
  marks.includes("over-limit") ||
  (figures?.of === "reading" && !marks.includes("by-eye"));

/** How sure a line is by what came out; `undefined` where that hangs on how it was found. */
export const certaintyByOutcome = (entry: Entry): Certainty | undefined => {
  if (isUnknown(entry)) return "unknown";
  if (entry.outcome === "doubtful") return "doubtful";
  return isMeasured(entry) ? "measured" : undefined;
};

/**
 * How sure a line is.
 *
 * @param found the inspector's finding, if there is one
 * @example certaintyOf({ ...entry, marks: ["by-figures"] }, found) // "measured"
 */
export const certaintyOf = (entry: Entry, found: Finding | undefined): Certainty =>
  certaintyByOutcome(entry) ?? (found === undefined || found.basis === "told" ? "told" : "seen");

/** Whether a check belongs beside the lines: broken, or undecided where that matters. */
export const isOpenCheck = ({ verdict, severity }: CrossCheck): boolean =>
  verdict === "breaks" || (verdict === "cannot-tell" && severity !== null);
