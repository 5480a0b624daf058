import { SettlementRequest } from "@evenhand/shared/http/releases";
import { expect, test } from "vitest";
import {
  emptyForm,
  evidenceOf,
  isHalfRead,
  isTurnOf,
  isWaitedFor,
  lacks,
  offerOf,
  pressesOf,
  requestOf,
} from "./settle-form.ts";

const lines = [{ id: "0197fb10-0000-7000-8000-000000000001", revision: 3 }];
const read = { of: "left front rotor", value: "24.6", unit: "mm", instrument: "caliper" };

test("whose turn it is, and what they can do", () => {
  expect(isTurnOf({ state: "released", as: "dealer" })).toBe(true);
  expect(isTurnOf({ state: "released", as: "buyer" })).toBe(false);
  expect(pressesOf("asked", "inspector")).toEqual(["stand", "revise", "look-again"]);
  // A report that is being revised is moved on by sealing it.
  expect(isTurnOf({ state: "revising", as: "inspector" })).toBe(false);
});

test("what is filled in is sent as the service takes it, and half a reading is not sent", () => {
  const form = { ...emptyForm, words: " Measured by my shop. ", document: "Receipt", ...read };
  expect(SettlementRequest.parse(requestOf(lines, { move: "contest" }, form))).toMatchObject({
    words: "Measured by my shop.",
    evidence: [{ kind: "document" }, { kind: "reading", value: 24.6 }],
  });
  const half = { ...emptyForm, words: "So.", ...read, unit: "" };
  expect([isHalfRead(half), evidenceOf(half), lacks("contest", half)]).toEqual([true, [], true]);
  expect(lacks("accept", emptyForm)).toBe(true);
  expect(lacks("take", emptyForm)).toBe(false);
});

test("photographs go with an answer once the service took them; it waits for those it is still looking at", () => {
  const [id, sha256] = [lines[0]?.id ?? "", "a".repeat(64)];
  const ready = { id, sha256, state: "ready" as const };
  const all = [ready, { ...ready, state: "refused" as const }, { ...ready, state: "checked" as const }];
  const form = { ...emptyForm, words: "It is sound." };
  expect(SettlementRequest.parse(requestOf(lines, { move: "contest" }, form, all)).evidence).toEqual([
    { kind: "photograph", id, sha256 },
  ]);
  expect([isWaitedFor(all), isWaitedFor(all.slice(0, 2)), isWaitedFor([])]).toEqual([true, false, false]);
});

test("an offer of money needs an amount; another needs none", () => {
  expect(offerOf({ ...emptyForm, amount: "a little" }, "USD")).toBeNull();
  expect(offerOf({ ...emptyForm, amount: "90,000" }, "JPY")).toEqual({
    move: "offer-price",
    price: { minor: 90_000, currency: "JPY" },
  });
  for (const form of [
    { ...emptyForm, amount: "1,250.50" },
    { ...emptyForm, offer: "repair" as const, words: "New rotors." },
    { ...emptyForm, offer: "look" as const },
  ]) {
    const offer = offerOf(form, "USD");
    expect(SettlementRequest.safeParse(offer && requestOf(lines, offer, form)).success).toBe(true);
  }
});
