import { expect, test } from "vitest";
import { walkTable, whoEnds } from "../../testing/walk.ts";
import { HAND_OVER_STATES } from "./index.ts";

walkTable(HAND_OVER_STATES, [
  ["arranged", "collect", "carrier", "collected"],
  ["arranged", "call-off", "buyer", "called-off"],
  ["collected", "deliver", "carrier", "delivered"],
  ["delivered", "sign-off", "buyer", "signed-off"],
  ["collected", "open-claim", "buyer", "claim-open"],
  ["delivered", "open-claim", "buyer", "claim-open"],
  ["signed-off", "open-claim", "buyer", "claim-open"],
  ["claim-open", "close-claim", "buyer", "claim-closed"],
]);

test("the buyer alone ends every open state", () => {
  for (const state of HAND_OVER_STATES.states)
    expect([state, whoEnds(HAND_OVER_STATES, state)]).toEqual([state, expect.arrayContaining(["buyer"])]);
});
