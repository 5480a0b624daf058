import type { Direction, Outcome } from "@evenhand/shared/outcome";
import type { Judgment } from "../judgment/index.ts";
import { standingOf } from "../standing/index.ts";

/** An answer out of a short list. */
export type Pick = {
  readonly answer: string;
  readonly bad: boolean;
  /** Place from the most claimed (0); `undefined` where the list has no order. */
  readonly rank?: number | undefined;
};

/** Two answers out of a list: `working`, `presence` and `choice` are compared alike. */
export type ChoicePair = {
  readonly a: Pick;
  readonly b: Pick;
  /** `working` alone: the answer that stands between the ends. */
  readonly between?: string;
  readonly safety: boolean;
};

export const NOT_KNOWN = "not-known";

const directionOf = ({ a, b }: ChoicePair): Direction => {
  if (a.rank !== undefined && b.rank !== undefined && a.rank !== b.rank) {
    return a.rank < b.rank ? "stated-better" : "found-better";
  }
  if (a.bad === b.bad) return "neither";
  return b.bad ? "stated-better" : "found-better";
};

const againstNotKnown = ({ a, b }: ChoicePair): Judgment => {
  const direction = "neither";
  if (a.answer === b.answer) {
    return { outcome: "unseen", reason: "not-known-by-either", direction, standing: "unseen" };
  }
  const stated = a.answer !== NOT_KNOWN;
  // A fault found where the statement claims nothing either way contradicts nothing, and was still not mentioned.
  if (!stated && b.bad) {
    return { outcome: "consistent", reason: "found-bad-not-known", direction, standing: "not-mentioned" };
  }
  const reason = stated ? "not-known-by-inspection" : "not-known-by-statement";
  return {
    outcome: "consistent",
    reason,
    direction,
    standing: standingOf("consistent", { tooCoarse: true }),
  };
};

/**
 * Compares two answers out of a list. Equal: agree. "Not known" against anything: consistent. `working`:
 * intermittent against either end is doubtful, but differs for a safety item. Else differ, the direction by the
 * options' order, or by which is bad.
 *
 * @example
 * compareChoice({ a: { answer: "yes", bad: false }, b: { answer: "no", bad: true }, safety: false }).outcome // "differ"
 */
export const compareChoice = (pair: ChoicePair): Judgment => {
  const { a, b } = pair;
  if (a.answer === NOT_KNOWN || b.answer === NOT_KNOWN) return againstNotKnown(pair);
  if (a.answer === b.answer) {
    const standing = standingOf("agree", { bothBad: a.bad });
    return { outcome: "agree", reason: "same-answer", direction: "neither", standing };
  }
  const halfway = pair.between !== undefined && (a.answer === pair.between || b.answer === pair.between);
  const outcome: Outcome = halfway && !pair.safety ? "doubtful" : "differ";
  return {
    outcome,
    reason: halfway ? "works-at-times" : "other-answer",
    direction: directionOf(pair),
    standing: standingOf(outcome),
  };
};
