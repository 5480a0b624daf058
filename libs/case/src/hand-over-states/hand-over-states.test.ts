import { walkTable } from "../../testing/walk.ts";
import { HAND_OVER_STATES } from "./index.ts";

walkTable(HAND_OVER_STATES, [
  ["arranged", "collect", "carrier", "collected"],
  ["arranged", "call-off", "buyer", "called-off"],
  ["collected", "deliver", "carrier", "delivered"],
  ["delivered", "open-claim", "buyer", "claim-open"],
  ["claim-open", "close-claim", "buyer", "claim-closed"],
]);
