import { isBadCall, isDecisive, SEVERITIES, severityRank, worseSeverity } from "@evenhand/shared/severity";
import type { Call } from "@evenhand/shared/severity";
import type { Direction } from "@evenhand/shared/outcome";
import { BOTH_BAD, inOneShape } from "../judgment/index.ts";
import type { Judgment } from "../judgment/index.ts";
import { standingOf } from "../standing/index.ts";

/** An answer out of a short list. */
export type Pick = {
  readonly answer: string;
  readonly call: Call;
  /** Place from the most claimed (0); `undefined` where the list has no order. */
  readonly rank?: number | undefined;
  /** Answers that are not so where this one is seen, however much stronger. */
  readonly refutes?: readonly string[] | undefined;
};

/** Two answers out of a list: `working`, `presence` and `choice` are compared alike. */
export type ChoicePair = {
  readonly a: Pick;
  readonly b: Pick;
  /** `working` alone: the answer that stands between the ends. */
  readonly between?: string | undefined;
  /** One answer for several of them: at times means that some do not. */
  readonly ofSeveral?: boolean | undefined;
  /** What two neighbors on one side of bad are. */
  readonly neighbors?: "doubtful" | "consistent" | "differ" | undefined;
  /** The two are facts of their own, both of which can be true, and no degrees of one. */
  readonly areApart?: boolean | undefined;
  /** The weaker of two good answers does not contradict the stronger: more cannot be shown by looking. */
  readonly weakerIsNotOtherwise?: boolean | undefined;
};

export const NOT_KNOWN = "not-known";

/** How bad an answer is by itself; nothing where it is not. */
const gravityOf = (call: Call): number => (isBadCall(call) ? SEVERITIES.length - severityRank(call) : 0);

const directionOf = ({ a, b }: ChoicePair): Direction => {
  if (a.rank !== undefined && b.rank !== undefined && a.rank !== b.rank) {
    return a.rank < b.rank ? "stated-better" : "found-better";
  }
  const [gravityA, gravityB] = [gravityOf(a.call), gravityOf(b.call)];
  if (gravityA === gravityB) return "neither";
  return gravityA < gravityB ? "stated-better" : "found-better";
};

const said = (
  pair: ChoicePair,
  outcome: Judgment["outcome"],
  reason: Judgment["reason"],
  bothBad = false,
): Judgment => ({
  outcome,
  reason,
  direction: outcome === "agree" && !bothBad ? "neither" : directionOf(pair),
  standing: standingOf(outcome, { bothBad }),
  figures: undefined,
  limits: undefined,
  marks: bothBad ? BOTH_BAD : undefined,
  coverageOnly: undefined,
});

const notKnown = (reason: Judgment["reason"]): Judgment =>
  inOneShape({ outcome: "unseen", reason, direction: "neither", standing: "unseen" });
const NOT_KNOWN_BY = {
  either: notKnown("not-known-by-either"),
  statement: notKnown("not-known-by-statement"),
  inspection: notKnown("not-known-by-inspection"),
};

const againstNotKnown = (pair: ChoicePair): Judgment => {
  // He could not tell: more cannot be shown by looking, so that nobody need be asked again.
  if (pair.a.answer !== pair.b.answer && pair.weakerIsNotOtherwise === true) {
    return said(pair, "consistent", "not-known-by-inspection");
  }
  if (pair.a.answer === pair.b.answer) return NOT_KNOWN_BY.either;
  return pair.a.answer === NOT_KNOWN ? NOT_KNOWN_BY.statement : NOT_KNOWN_BY.inspection;
};

/** Between the ends: in doubt, unless the thing can hurt somebody, or it stands for several of which some do not work. */
const halfway = (pair: ChoicePair): Judgment => {
  if (pair.ofSeveral === true) return said(pair, "differ", "some-do-not-work");
  const danger = [pair.a.call, pair.b.call].includes("danger");
  return said(pair, danger ? "differ" : "doubtful", "works-at-times");
};

const isBothBad = ({ a, b }: ChoicePair): boolean => isBadCall(a.call) && isBadCall(b.call);

/**
 * Who speaks of a trifle, or of one fault, has not disclosed another that the price or a life hangs on: low oil is no milky oil, and an
 * odometer's brand no salvage. Degrees of one thing are disclosed with any of them, but for what halts the money.
 */
const isAnotherThing = ({ a, b, areApart }: ChoicePair): boolean => {
  if (a.call === b.call || !isBadCall(a.call) || !isBadCall(b.call)) return false;
  const graver = worseSeverity(a.call, b.call);
  return areApart === true ? isDecisive(graver) : graver === "halt";
};

/** Both say it is bad: disclosed, and it costs and ranks as what was found. */
const bothBad = (pair: ChoicePair): Judgment => {
  if (pair.a.answer === pair.b.answer) return said(pair, "agree", "same-answer", true);
  const isWorse = directionOf(pair) === "stated-better";
  if (isAnotherThing(pair)) return said(pair, "differ", isWorse ? "worse-than-said" : "other-answer");
  return said(pair, "agree", isWorse ? "both-bad-worse" : "both-bad", true);
};

const refutes = (seen: Pick, { answer }: Pick): boolean => seen.refutes?.includes(answer) === true;

const between = (pair: ChoicePair): Judgment => {
  const { a, b } = pair;
  if (a.rank === undefined || b.rank === undefined) return said(pair, "differ", "other-answer");
  const oneStep = pair.neighbors !== "differ" && Math.abs(a.rank - b.rank) === 1;
  const calls = [a.call, b.call];
  if (isBadCall(a.call) !== isBadCall(b.call)) {
    // One step into a trifle: a tick, a weep, a spot of play. Two careful people part there.
    const trifle = calls.every((call) => !isBadCall(call) || call === "small");
    return trifle && oneStep ? said(pair, "doubtful", "neighbors") : said(pair, "differ", "other-answer");
  }
  if (refutes(a, b) || refutes(b, a)) return said(pair, "differ", "other-answer");
  if (pair.weakerIsNotOtherwise === true) {
    const isMore = directionOf(pair) === "found-better";
    return said(pair, "consistent", isMore ? "stronger-than-claimed" : "weaker-not-otherwise");
  }
  // Good against what nothing judges is no step on one side, unless the item says what its neighbors are.
  const sameSide = pair.neighbors !== undefined || (a.call === "good") === (b.call === "good");
  return oneStep && sameSide
    ? said(pair, pair.neighbors ?? "doubtful", "neighbors")
    : said(pair, "differ", "other-answer");
};

/**
 * Compares two answers out of a list, both called by themselves. Equal: agree, and both bad where they are. "Not known" on either
 * side: unseen, to be asked for. Both bad: agree, both bad; differ where they are two things and only one of them is grave. One between the
 * ends of `working`: doubtful, differ where it can hurt. Neighbors on the same side of bad: doubtful, or as the item says; across
 * it (unless into a trifle), or two apart: differ. A weaker good answer does not contradict a stronger one where the item says that no more can be seen.
 *
 * @example
 * compareChoice({ a: { answer: "yes", call: "good" }, b: { answer: "no", call: "danger" } }).outcome // "differ"
 */
export const compareChoice = (pair: ChoicePair): Judgment => {
  const { a, b } = pair;
  if (a.answer === NOT_KNOWN || b.answer === NOT_KNOWN) return againstNotKnown(pair);
  if (isBothBad(pair)) return bothBad(pair);
  if (a.answer === b.answer) return said(pair, "agree", "same-answer");
  if (pair.between !== undefined && (a.answer === pair.between || b.answer === pair.between)) {
    return halfway(pair);
  }
  return between(pair);
};
