import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Atom } from "@evenhand/shared/comparison";
import { compareDenials } from "../compare-denials/index.ts";
import { compareExtents } from "../compare-extents/index.ts";
import { matchFaults } from "../fault-matches/index.ts";
import type { FaultFrame, FaultMatch } from "../fault-matches/index.ts";
import { WHOLE } from "../judgment/index.ts";
import type { AtomJudgment, Judgment } from "../judgment/index.ts";

type Faults = AnswerOf<"faults">;

const DISCLOSED: Judgment = {
  outcome: "doubtful",
  reason: "disclosed-not-found",
  direction: "found-better",
  standing: "in-doubt",
};
const DENIED: Judgment = {
  outcome: "differ",
  reason: "denied-found",
  direction: "stated-better",
  standing: "differs",
};
const NOT_STATED: Judgment = {
  outcome: "unstated",
  reason: "found-bad-not-stated",
  direction: "neither",
  standing: "not-mentioned",
};
const NOTHING_CLAIMED: AtomJudgment = {
  atom: WHOLE,
  said: { outcome: "unseen", reason: "nothing-claimed", direction: "neither", standing: "unseen" },
};

/** By far the most frequent case: both say there are no faults at all. */
const NONE_AT_ALL: readonly AtomJudgment[] = [
  {
    atom: Object.freeze({ of: "denial", kind: "all", by: "both" }),
    said: { outcome: "agree", reason: "denied-by-both", direction: "neither", standing: "confirmed" },
  },
];

const denies = ({ denied }: Faults, kind: string): boolean => denied === "all" || denied.includes(kind);

const leftOver = (match: FaultMatch, fault: Fault, a: Faults): Judgment => {
  if (match.a !== undefined) return DISCLOSED;
  return denies(a, fault.kind) ? DENIED : NOT_STATED;
};

/**
 * The atom of a fault, by its index on the sides that found it.
 *
 * @example faultAtom({ b: 0 }, { kind: "dent", spot: "upper-front" })
 * // { of: "fault", kind: "dent", spot: "upper-front", b: 0 }
 */
export const faultAtom = (match: FaultMatch, { kind, spot }: Fault): Atom =>
  spot === undefined ? { of: "fault", kind, ...match } : { of: "fault", kind, spot, ...match };

const compareFound = (a: Faults, b: Faults, frame: FaultFrame, sharedEye: boolean): AtomJudgment[] => {
  const entries: AtomJudgment[] = [];
  for (const match of matchFaults(a.found, b.found, frame)) {
    const faultA = a.found[match.a ?? -1];
    const faultB = b.found[match.b ?? -1];
    // The spot shown is where the inspection found it, and where it was stated if it was not found.
    const shown = faultB ?? faultA;
    if (shown === undefined) continue;
    const both = faultA !== undefined && faultB !== undefined;
    const said = both ? compareExtents(faultA, faultB, frame, sharedEye) : leftOver(match, shown, a);
    entries.push({ atom: faultAtom(match, shown), said });
  }
  return entries;
};

/**
 * Compares two answers of faults, atom by atom. Faults are matched by kind and spot; matched extents are compared
 * as readings by eye. Left over on B's side: differ where A denied the kind, else unstated. Left over on A's side:
 * doubtful, disclosed and not found. Kinds denied by both agree; by A alone are not contradicted; by B alone were
 * seen sound and not stated.
 *
 * @param sharedEye one person looked for both sides, so that the error of the eye cancels
 * @returns one judgment for every fault of either side and for every denial no fault contradicts; a single one of the
 *   whole answer where neither says anything
 * @example
 * compareFaults({ kind: "faults", found: [], denied: "all" }, oneDent, frame, false)[0].said.outcome // "differ"
 */
export const compareFaults = (
  a: Faults,
  b: Faults,
  frame: FaultFrame,
  sharedEye: boolean,
): readonly AtomJudgment[] => {
  const noneFound = a.found.length === 0 && b.found.length === 0;
  if (noneFound && a.denied === "all" && b.denied === "all") return NONE_AT_ALL;
  const entries = noneFound ? [] : compareFound(a, b, frame, sharedEye);
  for (const denial of compareDenials(a, b, frame, entries)) entries.push(denial);
  return entries.length > 0 ? entries : [NOTHING_CLAIMED];
};
