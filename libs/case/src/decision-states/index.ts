import type { DecisionAnswer, DecisionRequest, OfferEnd, OfferReply } from "@evenhand/shared/http/summaries";
import type { StateTable } from "../state-table/index.ts";

export type DecisionState =
  | "undecided"
  | "approved"
  | "declined"
  | "countered"
  | "countered-back"
  | "counter-accepted"
  | "counter-refused"
  | "counter-withdrawn"
  | "counter-lapsed";
export type DecisionMove =
  DecisionRequest["decision"] | DecisionAnswer["answer"] | OfferReply["reply"] | "lapse";

/**
 * What a buyer does about a summary, once. A counter-offer is the dealer's to answer, who may counter back, once; that is the
 * buyer's to answer. The buyer may withdraw an offer before it is answered, and the clock ends one whose time is over.
 */
export const DECISION_STATES: StateTable<DecisionState, DecisionMove, "buyer" | "dealer" | "clock"> = {
  states: [
    "undecided",
    "approved",
    "declined",
    "countered",
    "countered-back",
    "counter-accepted",
    "counter-refused",
    "counter-withdrawn",
    "counter-lapsed",
  ],
  moves: ["approve", "counter", "decline", "accept", "refuse", "withdraw", "lapse"],
  actors: ["buyer", "dealer", "clock"],
  first: ["undecided"],
  rows: [
    { move: "approve", from: ["undecided"], to: "approved", actors: ["buyer"] },
    { move: "decline", from: ["undecided"], to: "declined", actors: ["buyer"] },
    { move: "counter", from: ["undecided"], to: "countered", actors: ["buyer"] },
    { move: "accept", from: ["countered"], to: "counter-accepted", actors: ["dealer"] },
    { move: "refuse", from: ["countered"], to: "counter-refused", actors: ["dealer"] },
    { move: "counter", from: ["countered"], to: "countered-back", actors: ["dealer"] },
    { move: "withdraw", from: ["countered"], to: "counter-withdrawn", actors: ["buyer"] },
    { move: "accept", from: ["countered-back"], to: "counter-accepted", actors: ["buyer"] },
    { move: "refuse", from: ["countered-back"], to: "counter-refused", actors: ["buyer"] },
    { move: "lapse", from: ["countered", "countered-back"], to: "counter-lapsed", actors: ["clock"] },
  ],
};

/** What is stored of a decision that says where it stands. */
export type StoredDecision = {
  readonly decision: DecisionRequest["decision"];
  readonly answer: DecisionAnswer["answer"] | null;
  /** What the buyer said to the dealer's counter. */
  readonly reply?: "accept" | "refuse" | null;
  /** How it ended without an answer. */
  readonly ended?: OfferEnd | null;
};

const decided = { approve: "approved", decline: "declined", counter: "countered" } as const;
const answered = {
  accept: "counter-accepted",
  refuse: "counter-refused",
  counter: "countered-back",
} as const;
const ends = { withdrawn: "counter-withdrawn", lapsed: "counter-lapsed" } as const;

/**
 * Where a summary stands.
 *
 * @param stored what was decided on it, if anything was
 * @example decisionStateOf(null) // "undecided"
 * @example decisionStateOf({ decision: "counter", answer: "counter", reply: "accept" }) // "counter-accepted"
 */
export function decisionStateOf(stored: StoredDecision | null): DecisionState {
  if (stored === null) return "undecided";
  const { decision, answer, reply = null, ended = null } = stored;
  if (ended !== null) return ends[ended];
  if (reply !== null) return answered[reply];
  return answer === null ? decided[decision] : answered[answer];
}

/**
 * Whether an offer's time is over: at the very instant it is.
 *
 * @param until `null` where it stands until it is answered or withdrawn
 * @example isOver("2027-05-04T22:00:00Z", new Date("2027-05-04T22:00:00Z")) // true
 */
export const isOver = (until: string | null, now: Date): boolean =>
  until !== null && new Date(until).getTime() <= now.getTime();
