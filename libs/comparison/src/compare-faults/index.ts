import type { AnswerOf, Fault } from "@evenhand/shared/answer";
import type { Atom, SideFigures } from "@evenhand/shared/comparison";
import type { Outcome } from "@evenhand/shared/outcome";
import type { FaultKind } from "@evenhand/shared/sheet";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import type { IntervalOutcome } from "@evenhand/measurement/equivalence";
import { rectangular } from "@evenhand/measurement/type-b";
import { deltaOf } from "../delta/index.ts";
import { extentOf, matchFaults } from "../fault-matches/index.ts";
import type { FaultFrame, FaultMatch } from "../fault-matches/index.ts";
import { intervalFigures } from "../interval-figures/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";

type Faults = AnswerOf<"faults">;
/** One atom of an answer and what is said of it. `coverageOnly`: seen, sound and not stated. */
export type AtomJudgment = Judgment & { readonly atom: Atom; readonly coverageOnly?: boolean };

const judgment = (
  outcome: Outcome,
  reason: Reason,
  direction: Judgment["direction"] = "neither",
): Judgment => ({
  outcome,
  reason,
  direction,
  standing: standingOf(outcome),
});

/** A sound place the statement did not speak of: nothing to agree on, counted in coverage alone. */
export const SEEN_SOUND: Judgment & { readonly coverageOnly: true } = {
  outcome: "consistent",
  reason: "seen-sound-not-stated",
  direction: "neither",
  standing: "not-mentioned",
  coverageOnly: true,
};

const REASONS: Readonly<Record<IntervalOutcome, Reason>> = {
  agree: "same-fault",
  consistent: "extent-not-settled",
  doubtful: "extent-beyond-chance",
  differ: "extent-beyond-delta",
};

const agreedFault = (outcome: "agree" | "consistent", reason: Reason): Judgment => ({
  outcome,
  reason,
  direction: "neither",
  standing: standingOf(outcome, { bothBad: true }),
});

/** An extent is judged by eye whatever the finding's instrument: a paint gauge says nothing of a length of rust. */
const byEye = (extent: number, standardUncertainty: number): SideFigures => ({
  mean: extent,
  count: 1,
  standardUncertainty,
  degreesOfFreedom: null,
  scatterReplaced: false,
  byEye: true,
});

const accuracyOf = (kind: FaultKind, extent: number): number =>
  rectangular(kind.byEye.absolute + kind.byEye.share * extent);

const compareExtents = (a: number, b: number, kind: FaultKind, sharedEye: boolean): Judgment => {
  const [uA, uB] = [accuracyOf(kind, a), accuracyOf(kind, b)];
  const figures = intervalFigures({
    unit: kind.unit,
    a: byEye(a, uA),
    b: byEye(b, uB),
    difference: a - b,
    standardUncertainty: sharedEye ? 0 : Math.hypot(uA, uB),
    degreesOfFreedom: Number.POSITIVE_INFINITY,
    delta: deltaOf(kind.delta, a, b),
    worse: { is: "higher" },
  });
  const outcome = classifyInterval(figures.difference, figures.expandedUncertainty, figures.delta);
  const apart = outcome === "doubtful" || outcome === "differ";
  return {
    outcome,
    reason: REASONS[outcome],
    direction: !apart ? "neither" : b > a ? "stated-better" : "found-better",
    standing: standingOf(outcome, { bothBad: true }),
    figures,
  };
};

const compareMatched = (a: Fault, b: Fault, frame: FaultFrame, sharedEye: boolean): Judgment => {
  const [extentA, extentB] = [extentOf(a, frame), extentOf(b, frame)];
  const kind = frame.kinds.get(a.kind);
  if (kind === undefined || (extentA === undefined && extentB === undefined)) {
    return agreedFault("agree", "same-fault");
  }
  if (extentA === undefined || extentB === undefined) return agreedFault("consistent", "extent-not-given");
  return compareExtents(extentA, extentB, kind, sharedEye);
};

const denies = ({ denied }: Faults, kind: string): boolean => denied === "all" || denied.includes(kind);

const leftOver = (match: FaultMatch, fault: Fault, a: Faults): Judgment => {
  if (match.a !== undefined) return judgment("doubtful", "disclosed-not-found", "found-better");
  return denies(a, fault.kind)
    ? judgment("differ", "denied-found", "stated-better")
    : judgment("unstated", "found-bad-not-stated");
};

export const faultAtom = (match: FaultMatch, fault: Fault): Atom => ({
  of: "fault",
  kind: fault.kind,
  spot: fault.spot,
  ...match,
});

const compareFound = (a: Faults, b: Faults, frame: FaultFrame, sharedEye: boolean): AtomJudgment[] =>
  matchFaults(a.found, b.found, frame).flatMap((match) => {
    const faultA = match.a === undefined ? undefined : a.found[match.a];
    const faultB = match.b === undefined ? undefined : b.found[match.b];
    // The spot shown is where the inspection found it, and where it was stated if it was not found.
    const shown = faultB ?? faultA;
    if (shown === undefined) return [];
    const both = faultA !== undefined && faultB !== undefined;
    const said = both ? compareMatched(faultA, faultB, frame, sharedEye) : leftOver(match, shown, a);
    return [{ ...said, atom: faultAtom(match, shown) }];
  });

/** The kinds an answer denies in the order of the item's kinds; `all` for none at all. */
export const deniedKinds = ({ denied }: Faults, frame: FaultFrame): string[] => {
  if (denied === "all") return ["all"];
  const rank = (kind: string) => frame.kindOrder.get(kind) ?? frame.kindOrder.size;
  return Array.from(new Set(denied)).sort((a, b) => rank(a) - rank(b) || (a < b ? -1 : 1));
};

const CONTRADICTED_BY = { a: "denied-found", b: "disclosed-not-found" } as const;

/** A denial that a fault of the other side contradicts has that fault's entry for its own. */
const isContradicted = (kind: string, by: "a" | "b", found: readonly AtomJudgment[]): boolean =>
  found.some(
    ({ reason, atom }) =>
      reason === CONTRADICTED_BY[by] && atom.of === "fault" && (kind === "all" || atom.kind === kind),
  );

const compareDenial = (kind: string, by: "a" | "b" | "both", other: Faults): AtomJudgment => {
  const atom: Atom = { of: "denial", kind, by };
  if (by === "both" || other.denied === "all") return { ...judgment("agree", "denied-by-both"), atom };
  return by === "a"
    ? { ...judgment("consistent", "denied-not-contradicted"), atom }
    : { ...SEEN_SOUND, atom };
};

const compareDenials = (
  a: Faults,
  b: Faults,
  frame: FaultFrame,
  found: readonly AtomJudgment[],
): AtomJudgment[] => {
  const deniedA = deniedKinds(a, frame).filter((kind) => !isContradicted(kind, "a", found));
  const deniedB = deniedKinds(b, frame).filter((kind) => !isContradicted(kind, "b", found));
  const ofA = deniedA.map((kind) => compareDenial(kind, deniedB.includes(kind) ? "both" : "a", b));
  const ofB = deniedB.filter((kind) => !deniedA.includes(kind)).map((kind) => compareDenial(kind, "b", a));
  return [...ofA, ...ofB];
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
 * @example compareFaults({ kind: "faults", found: [], denied: "all" }, oneDent, frame, false)[0].outcome // "differ"
 */
export const compareFaults = (
  a: Faults,
  b: Faults,
  frame: FaultFrame,
  sharedEye: boolean,
): AtomJudgment[] => {
  const found = compareFound(a, b, frame, sharedEye);
  const entries = [...found, ...compareDenials(a, b, frame, found)];
  return entries.length > 0
    ? entries
    : [{ ...judgment("unseen", "nothing-claimed"), atom: { of: "answer" } }];
};
