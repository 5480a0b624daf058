import { SettlementActor, SettlementMove, SettlementState } from "@evenhand/shared/settlement";
import type { StateRow, StateTable } from "../state-table/index.ts";

type Row = StateRow<SettlementState, SettlementMove, SettlementActor>;

const offers = ["price-offered", "remedy-offered", "look-offered"] as const;
const withInspector = ["asked", "revising", "looking-again"] as const;
/** In which the buyer and the dealer still differ about the line. */
const disputed = ["released", "contested", "refused", ...withInspector] as const;

const row = (
  actor: SettlementActor,
  move: SettlementMove,
  from: readonly SettlementState[],
  to: SettlementState,
): Row => ({ move, from, to, actors: [actor] });

const dealer: readonly Row[] = [
  row("dealer", "accept", disputed, "accepted"),
  row("dealer", "contest", ["released", "refused"], "contested"),
  row("dealer", "offer-price", ["released", "contested", "refused"], "price-offered"),
  row("dealer", "offer-remedy", ["released", "contested", "refused"], "remedy-offered"),
  row("dealer", "offer-look", ["released", "contested", "refused"], "look-offered"),
  row("dealer", "prove", ["promised"], "proved"),
];

const buyer: readonly Row[] = [
  row("buyer", "take", ["price-offered"], "settled"),
  row("buyer", "take", ["remedy-offered"], "promised"),
  row("buyer", "take", ["look-offered"], "looking-again"),
  row("buyer", "refuse", offers, "refused"),
  row("buyer", "refuse", ["proved"], "promised"),
  row("buyer", "ask", ["contested", "refused"], "asked"),
  row("buyer", "confirm", ["proved"], "settled"),
  row("buyer", "withdraw", [...disputed, ...offers], "statement-stands"),
  row("buyer", "leave", [...disputed, ...offers, "promised", "proved"], "left-open"),
];

const inspector: readonly Row[] = [
  row("inspector", "stand", ["asked"], "finding-stands"),
  row("inspector", "revise", ["asked"], "revising"),
  row("inspector", "look-again", ["asked"], "looking-again"),
  row("seal", "uphold", ["revising", "looking-again"], "finding-stands"),
  row("seal", "clear", ["revising", "looking-again"], "statement-stands"),
  row("seal", "leave", ["revising"], "left-open"),
];

/** Silence has a stated result: whoever owed the answer does not gain by it. */
const clock: readonly Row[] = [
  row("clock", "lapse", ["released", "promised"], "finding-stands"),
  row("clock", "lapse", ["contested", "refused", ...offers, ...withInspector], "left-open"),
  row("clock", "lapse", ["proved"], "settled"),
];

/** Settling one line laid before the dealer. */
export const SETTLEMENT_STATES: StateTable<SettlementState, SettlementMove, SettlementActor> = {
  states: SettlementState.options,
  moves: SettlementMove.options,
  actors: SettlementActor.options,
  first: ["released"],
  rows: [...dealer, ...buyer, ...inspector, ...clock],
};
