import { HandOverMove, HandOverState } from "@evenhand/shared/http/hand-overs";
import type { StateTable } from "../state-table/index.ts";

/**
 * A bought car on its way: the carrier's link signs what left and what arrived, with whoever hands over and takes it. Once it is on the
 * truck it cannot be called off. What became of it after delivery is between buyer and carrier.
 */
export const HAND_OVER_STATES: StateTable<HandOverState, HandOverMove, "buyer" | "dealer" | "carrier"> = {
  states: HandOverState.options,
  moves: HandOverMove.options,
  actors: ["buyer", "dealer", "carrier"],
  first: ["arranged"],
  rows: [
    { move: "collect", from: ["arranged"], to: "collected", actors: ["carrier"] },
    { move: "deliver", from: ["collected"], to: "delivered", actors: ["carrier"] },
    { move: "open-claim", from: ["delivered"], to: "claim-open", actors: ["buyer"] },
    { move: "close-claim", from: ["claim-open"], to: "claim-closed", actors: ["buyer"] },
    { move: "call-off", from: ["arranged"], to: "called-off", actors: ["buyer"] },
  ],
};
