import type { DecisionAnswer, DecisionRequest } from "@evenhand/shared/http/summaries";
import type { StateTable } from "../state-table/index.ts";

export type DecisionState =
  "undecided" | "approved" | "declined" | "countered" | "counter-accepted" | "counter-refused";
export type DecisionMove = DecisionRequest["decision"] | DecisionAnswer["answer"];

/** What a buyer does about a summary, once; a counter-offer is answered by the dealer, once. */
export const DECISION_STATES: StateTable<DecisionState, DecisionMove, "buyer" | "dealer"> = {
  states: ["undecided", "approved", "declined", "countered", "counter-accepted", "counter-refused"],
  moves: ["approve", "counter", "decline", "accept", "refuse"],
  actors: ["buyer", "dealer"],
  first: ["undecided"],
  rows: [
    { move: "approve", from: ["undecided"], to: "approved", actors: ["buyer"] },
    { move: "decline", from: ["undecided"], to: "declined", actors: ["buyer"] },
    { move: "counter", from: ["undecided"], to: "countered", actors: ["buyer"] },
    { move: "accept", from: ["countered"], to: "counter-accepted", actors: ["dealer"] },
    { move: "refuse", from: ["countered"], to: "counter-refused", actors: ["dealer"] },
  ],
};

const decided = { approve: "approved", decline: "declined", counter: "countered" } as const;
const answered = { accept: "counter-accepted", refuse: "counter-refused" } as const;

/**
 * Where a summary stands.
 *
 * @param decision what was decided on it, if anything was
 * @example decisionStateOf(null) // "undecided"
 * @example decisionStateOf({ decision: "counter", answer: "accept" }) // "counter-accepted"
 */
export function decisionStateOf(
  decision: {
    readonly decision: DecisionRequest["decision"];
    readonly answer: DecisionAnswer["answer"] | null;
  } | null,
): DecisionState {
  if (decision === null) return "undecided";
  return decision.answer === null ? decided[decision.decision] : answered[decision.answer];
}
