import type { HandOverState } from "@evenhand/shared/http/hand-overs";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const WHERE: Readonly<Record<HandOverState, string>> = {
  arranged: "The carrier is invited, and the car not collected yet.",
  collected: "The car is collected, and on its way.",
  delivered: "The car is delivered, and both reports are signed.",
  "signed-off": "The car is delivered and taken as it arrived.",
  "claim-open": "A claim is open.",
  "claim-closed": "The claim is closed.",
  "called-off": "It was called off.",
};

/** The move does not go from where the hand-over stands by now. */
export const stateProblem = (state: HandOverState): ProblemError =>
  new ProblemError("hand-over-state", WHERE[state], { members: { state } });

/** Its terms are fixed, since it is over. */
export const termsProblem = (state: HandOverState): ProblemError =>
  new ProblemError(
    "hand-over-state",
    `${WHERE[state]} What was agreed with the carrier stays as it was then.`,
    { members: { state } },
  );
