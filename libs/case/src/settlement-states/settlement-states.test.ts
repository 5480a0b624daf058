import { hasEnded } from "../state-table/index.ts";
import { expect, test } from "vitest";
import { walkTable } from "../../testing/walk.ts";
import { SETTLEMENT_STATES } from "./index.ts";

walkTable(SETTLEMENT_STATES, [
  ["released", "accept", "dealer", "accepted"],
  ["released", "contest", "dealer", "contested"],
  ["released", "offer-price", "dealer", "price-offered"],
  ["released", "offer-remedy", "dealer", "remedy-offered"],
  ["released", "offer-look", "dealer", "look-offered"],
  ["released", "withdraw", "buyer", "statement-stands"],
  ["released", "leave", "buyer", "left-open"],
  ["released", "lapse", "clock", "finding-stands"],
  ["contested", "accept", "dealer", "accepted"],
  ["contested", "offer-price", "dealer", "price-offered"],
  ["contested", "offer-remedy", "dealer", "remedy-offered"],
  ["contested", "offer-look", "dealer", "look-offered"],
  ["contested", "ask", "buyer", "asked"],
  ["contested", "withdraw", "buyer", "statement-stands"],
  ["contested", "leave", "buyer", "left-open"],
  ["contested", "lapse", "clock", "left-open"],
  ["price-offered", "take", "buyer", "settled"],
  ["price-offered", "refuse", "buyer", "refused"],
  ["price-offered", "withdraw", "buyer", "statement-stands"],
  ["price-offered", "leave", "buyer", "left-open"],
  ["price-offered", "lapse", "clock", "left-open"],
  ["remedy-offered", "take", "buyer", "promised"],
  ["remedy-offered", "refuse", "buyer", "refused"],
  ["remedy-offered", "withdraw", "buyer", "statement-stands"],
  ["remedy-offered", "leave", "buyer", "left-open"],
  ["remedy-offered", "lapse", "clock", "left-open"],
  ["look-offered", "take", "buyer", "looking-again"],
  ["look-offered", "refuse", "buyer", "refused"],
  ["look-offered", "withdraw", "buyer", "statement-stands"],
  ["look-offered", "leave", "buyer", "left-open"],
  ["look-offered", "lapse", "clock", "left-open"],
  ["refused", "accept", "dealer", "accepted"],
  ["refused", "contest", "dealer", "contested"],
  ["refused", "offer-price", "dealer", "price-offered"],
  ["refused", "offer-remedy", "dealer", "remedy-offered"],
  ["refused", "offer-look", "dealer", "look-offered"],
  ["refused", "ask", "buyer", "asked"],
  ["refused", "withdraw", "buyer", "statement-stands"],
  ["refused", "leave", "buyer", "left-open"],
  ["refused", "lapse", "clock", "left-open"],
  ["asked", "accept", "dealer", "accepted"],
  ["asked", "withdraw", "buyer", "statement-stands"],
  ["asked", "leave", "buyer", "left-open"],
  ["asked", "stand", "inspector", "finding-stands"],
  ["asked", "revise", "inspector", "revising"],
  ["asked", "look-again", "inspector", "looking-again"],
  ["asked", "lapse", "clock", "left-open"],
  ["revising", "accept", "dealer", "accepted"],
  ["revising", "withdraw", "buyer", "statement-stands"],
  ["revising", "leave", "buyer", "left-open"],
  ["revising", "uphold", "seal", "finding-stands"],
  ["revising", "clear", "seal", "statement-stands"],
  ["revising", "leave", "seal", "left-open"],
  ["revising", "lapse", "clock", "left-open"],
  ["looking-again", "accept", "dealer", "accepted"],
  ["looking-again", "withdraw", "buyer", "statement-stands"],
  ["looking-again", "leave", "buyer", "left-open"],
  ["looking-again", "uphold", "seal", "finding-stands"],
  ["looking-again", "clear", "seal", "statement-stands"],
  ["looking-again", "lapse", "clock", "left-open"],
  ["promised", "prove", "dealer", "proved"],
  ["promised", "leave", "buyer", "left-open"],
  ["promised", "lapse", "clock", "finding-stands"],
  ["proved", "confirm", "buyer", "settled"],
  ["proved", "refuse", "buyer", "promised"],
  ["proved", "leave", "buyer", "left-open"],
  ["proved", "lapse", "clock", "settled"],
]);

const ended = (state: (typeof SETTLEMENT_STATES.states)[number]) => hasEnded(SETTLEMENT_STATES, state);

test("the clock alone ends every open state, in one lapse", () => {
  for (const state of SETTLEMENT_STATES.states.filter((each) => !ended(each))) {
    const lapse = SETTLEMENT_STATES.rows.find(({ move, from }) => move === "lapse" && from.includes(state));
    expect([state, lapse !== undefined && ended(lapse.to)]).toEqual([state, true]);
  }
});
