import { HandOverMove, HandOverState } from "@evenhand/shared/http/hand-overs";
import type { StateTable } from "../state-table/index.ts";

/**
 * A bought car on its way: the carrier's link signs what left and what arrived, with whoever hands over and takes it. Once it is on the
 * truck it cannot be called off; where it does not arrive, that is a claim. What became of it after delivery is between buyer and
 * carrier: it is taken as it arrived, or a claim is opened, which damage that shows later still allows.
 */
export const HAND_OVER_STATES: StateTable<HandOverState, HandOverMove, "buyer" | "dealer" | "carrier"> = {
  states: HandOverState.options,
  moves: HandOverMove.options,
  actors: ["buyer", "dealer", "carrier"],
  first: ["arranged"],
  rows: [
    { move: "collect", from: ["arranged"], to: "collected", actors: ["carrier"] },
    { move: "deliver", from: ["collected"], to: "delivered", actors: ["carrier"] },
    { move: "sign-off", from: ["delivered"], to: "signed-off", actors: ["buyer"] },
    {
      move: "open-claim",
      from: ["collected", "delivered", "signed-off"],
      to: "claim-open",
      actors: ["buyer"],
    },
    { move: "close-claim", from: ["claim-open"], to: "claim-closed", actors: ["buyer"] },
    { move: "call-off", from: ["arranged"], to: "called-off", actors: ["buyer"] },
  ],
};
