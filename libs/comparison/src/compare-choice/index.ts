import type { Direction, Outcome } from "@evenhand/shared/outcome";
import type { Item } from "@evenhand/shared/sheet";
import type { Judgment } from "../judgment/index.ts";
import { standingOf } from "../standing/index.ts";

/** Two answers out of a short list: `working`, `presence` and `choice` are compared alike. */
export type ChoicePair = {
  readonly a: string;
  readonly b: string;
  /** Rank from the most claimed (0) down; `undefined` where the answer claims nothing or the list has no order. */
  readonly rank: (answer: string) => number | undefined;
  readonly isBad: (answer: string) => boolean;
  /** `working` alone: what stands between yes and no. */
  readonly between?: string;
  readonly safety: boolean;
};

export const NOT_KNOWN = "not-known";

const directionOf = ({ a, b, rank, isBad }: ChoicePair): Direction => {
  const [rankA, rankB] = [rank(a), rank(b)];
  if (rankA !== undefined && rankB !== undefined && rankA !== rankB) {
    return rankA < rankB ? "stated-better" : "found-better";
  }
  if (isBad(a) === isBad(b)) return "neither";
  return isBad(b) ? "stated-better" : "found-better";
};

const againstNotKnown = ({ a, b, isBad }: ChoicePair): Judgment => {
  if (a === b)
    return { outcome: "unseen", reason: "not-known-by-either", direction: "neither", standing: "unseen" };
  // A fault found where the statement claims nothing either way is no contradiction, and still was not mentioned.
  if (a === NOT_KNOWN && isBad(b)) {
    return {
      outcome: "consistent",
      reason: "found-bad-not-known",
      direction: "neither",
      standing: "not-mentioned",
    };
  }
  const reason = a === NOT_KNOWN ? "not-known-by-statement" : "not-known-by-inspection";
  return {
    outcome: "consistent",
    reason,
    direction: "neither",
    standing: standingOf("consistent", { tooCoarse: true }),
  };
};

/**
 * Compares two answers out of a list. Equal: agree. "Not known" against anything: consistent. `working`:
 * intermittent against either end is doubtful, but differs for a safety item. Else differ, the direction by the
 * options' order, or by which is bad.
 *
 * @example compareChoice({ a: "yes", b: "no", …working }).outcome // "differ"
 */
export const compareChoice = (pair: ChoicePair): Judgment => {
  const { a, b, isBad } = pair;
  if (a === NOT_KNOWN || b === NOT_KNOWN) return againstNotKnown(pair);
  if (a === b) {
    const standing = standingOf("agree", { bothBad: isBad(a) });
    return { outcome: "agree", reason: "same-answer", direction: "neither", standing };
  }
  const halfway = pair.between !== undefined && (a === pair.between || b === pair.between);
  const outcome: Outcome = halfway && !pair.safety ? "doubtful" : "differ";
  const reason = halfway ? "works-at-times" : "other-answer";
  return { outcome, reason, direction: directionOf(pair), standing: standingOf(outcome) };
};

type Ordering = Pick<ChoicePair, "rank" | "isBad" | "between">;

const WORKING_ORDER = ["yes", "intermittent", "no"];

const findRank = (order: readonly string[], answer: string): number | undefined => {
  const rank = order.indexOf(answer);
  return rank < 0 ? undefined : rank;
};

const noRank = (): undefined => undefined;

/** How the answers of an item's list are ordered and which are bad; made once an item. */
export const orderingOf = (item: Pick<Item, "answer" | "choice" | "presence">): Ordering => {
  if (item.answer === "working") {
    return {
      rank: (answer) => findRank(WORKING_ORDER, answer),
      isBad: (answer) => answer === "no" || answer === "intermittent",
      between: "intermittent",
    };
  }
  if (item.answer === "presence") {
    const goodIs = item.presence?.goodIs ?? "neither";
    return {
      rank: noRank,
      isBad: (answer) => goodIs !== "neither" && answer !== NOT_KNOWN && answer !== goodIs,
    };
  }
  const options = item.choice?.options ?? [];
  const order = options.map((option) => option.id).filter((id) => id !== NOT_KNOWN);
  const bad = new Set(options.filter((option) => option.bad).map((option) => option.id));
  const ordered = item.choice?.ordered === true;
  return { rank: ordered ? (answer) => findRank(order, answer) : noRank, isBad: (answer) => bad.has(answer) };
};
