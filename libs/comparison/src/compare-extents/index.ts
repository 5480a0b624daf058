import type { Fault } from "@evenhand/shared/answer";
import type { SideFigures } from "@evenhand/shared/comparison";
import type { FaultKind } from "@evenhand/shared/sheet";
import { classifyInterval } from "@evenhand/measurement/equivalence";
import type { IntervalOutcome } from "@evenhand/measurement/equivalence";
import { rectangular } from "@evenhand/measurement/type-b";
import { deltaOf } from "../delta/index.ts";
import { extentOf } from "../fault-matches/index.ts";
import type { FaultFrame } from "../fault-matches/index.ts";
import { intervalFigures } from "../interval-figures/index.ts";
import { BOTH_BAD } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import type { Reason } from "../reason/index.ts";
import { standingOf } from "../standing/index.ts";

const REASONS: Readonly<Record<IntervalOutcome, Reason>> = {
  agree: "same-fault",
  consistent: "extent-not-settled",
  doubtful: "extent-beyond-chance",
  differ: "extent-beyond-delta",
};

/** A fault both report: disclosed, and it still costs. */
export const agreedFault = (outcome: "agree" | "consistent", reason: Reason): Judgment => ({
  outcome,
  reason,
  direction: "neither",
  standing: standingOf(outcome, { bothBad: true }),
  figures: undefined,
  limits: undefined,
  marks: BOTH_BAD,
  coverageOnly: undefined,
});

/** Of a kind that the sheet does not know. */
const UNMEASURED = agreedFault("agree", "same-fault");
const WITHOUT_EXTENTS = agreedFault("consistent", "extents-not-given");
const ONE_EXTENT = agreedFault("consistent", "extent-not-given");

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

const compareTwo = (a: number, b: number, kind: FaultKind, sharedEye: boolean): Judgment => {
  const uA = accuracyOf(kind, a);
  const uB = accuracyOf(kind, b);
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
  // Disclosed at least as large as found: nobody was misled.
  if (a >= b) {
    const apart = outcome === "doubtful" || outcome === "differ";
    return { ...agreedFault("agree", apart ? "disclosed-at-least" : REASONS.agree), figures };
  }
  // Both say it is there: only how large it is stays in doubt, and it costs as what was found.
  if (outcome !== "differ") return { ...agreedFault("agree", REASONS[outcome]), figures };
  return {
    outcome,
    reason: REASONS[outcome],
    direction: "stated-better",
    standing: standingOf(outcome),
    figures,
    limits: undefined,
    marks: undefined,
    coverageOnly: undefined,
  };
};

/**
 * Compares a fault both sides found by its extents, as readings by eye; larger is worse. Without both extents it is
 * consistent: the same fault, and nobody can say that no more was found than was disclosed.
 *
 * @param sharedEye one person looked for both sides, so that the error of the eye cancels
 * @example compareExtents(rust20, rust300, frame, false).outcome // "differ"
 */
export const compareExtents = (a: Fault, b: Fault, frame: FaultFrame, sharedEye: boolean): Judgment => {
  const extentA = extentOf(a, frame);
  const extentB = extentOf(b, frame);
  const kind = frame.kinds.get(a.kind);
  if (kind === undefined) return UNMEASURED;
  if (extentA === undefined && extentB === undefined) return WITHOUT_EXTENTS;
  if (extentA === undefined || extentB === undefined) return ONE_EXTENT;
  return compareTwo(extentA, extentB, kind, sharedEye);
};
