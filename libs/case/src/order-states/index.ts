import { OrderState } from "@evenhand/shared/http/orders";
import type { StateTable } from "../state-table/index.ts";

export type OrderMove = "accept" | "decline" | "cancel" | "report";
export type OrderParty = "buyer" | "inspector";

/** An order to inspect a car. A report sealed anew leaves it reported. */
export const ORDER_STATES: StateTable<OrderState, OrderMove, OrderParty> = {
  states: OrderState.options,
  moves: ["accept", "decline", "cancel", "report"],
  actors: ["buyer", "inspector"],
  first: ["ordered"],
  rows: [
    { move: "accept", from: ["ordered"], to: "accepted", actors: ["inspector"] },
    { move: "decline", from: ["ordered", "accepted"], to: "declined", actors: ["inspector"] },
    { move: "cancel", from: ["ordered", "accepted"], to: "cancelled", actors: ["buyer"] },
    { move: "report", from: ["accepted", "reported"], to: "reported", actors: ["inspector"] },
  ],
};

/** States in which an order still stands: a buyer has one of each firm on a car, and it can end. */
export const LIVE_ORDERS: readonly OrderState[] = ["ordered", "accepted"];
