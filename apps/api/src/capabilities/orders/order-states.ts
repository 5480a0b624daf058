import type { OrderState } from "@evenhand/shared/http/orders";

export type OrderMove = "accept" | "decline" | "cancel" | "report";
export type OrderParty = "buyer" | "inspector";

/** Who may move an order from where to where. What is not in it is refused. */
export const orderMoves: readonly {
  readonly move: OrderMove;
  readonly by: OrderParty;
  readonly from: OrderState;
  readonly to: OrderState;
}[] = [
  { move: "accept", by: "inspector", from: "ordered", to: "accepted" },
  { move: "decline", by: "inspector", from: "ordered", to: "declined" },
  { move: "decline", by: "inspector", from: "accepted", to: "declined" },
  { move: "cancel", by: "buyer", from: "ordered", to: "cancelled" },
  { move: "cancel", by: "buyer", from: "accepted", to: "cancelled" },
  { move: "report", by: "inspector", from: "accepted", to: "reported" },
  { move: "report", by: "inspector", from: "reported", to: "reported" },
];

/** The state an order would be in, or `null` where the move is not open. */
export const nextOrderState = (state: OrderState, move: OrderMove, by: OrderParty): OrderState | null =>
  orderMoves.find((each) => each.from === state && each.move === move && each.by === by)?.to ?? null;
