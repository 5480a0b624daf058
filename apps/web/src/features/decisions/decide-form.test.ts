import { describe, expect, test } from "vitest";
import {
  decideAfter,
  decisionOf,
  draftOf,
  emptyDecision,
  formOf,
  mayDecide,
  type DecideForm,
} from "./decide-form.ts";

const matters = [
  { id: "title", severity: "halt" },
  { id: "brakes", severity: "danger" },
] as const;
const hash = "e".repeat(64);
const asked = { matters, hash, currency: "USD" };
const answers = {
  title: { answer: "first", words: "the lien is paid off at closing" },
  brakes: { answer: "dealer", words: "" },
} as const;
const form = (change: Partial<DecideForm>): DecideForm => decideAfter(emptyDecision, change);

describe("an approval", () => {
  const whole = form({ kind: "approve", answers });

  test("goes with every matter answered", () => {
    expect(mayDecide(whole, asked)).toBe(true);
    expect(decisionOf("approve", whole, asked)).toEqual({
      decision: "approve",
      hash,
      acknowledgements: [
        { matter: "title", answer: "first", words: "the lien is paid off at closing" },
        { matter: "brakes", answer: "dealer" },
      ],
    });
  });

  test.each<[string, Partial<DecideForm>]>([
    ["nothing answered", { answers: {} }],
    ["one matter not answered", { answers: { title: answers.title } }],
    [
      "what stops the money without words",
      { answers: { ...answers, title: { answer: "first", words: "" } } },
    ],
  ])("does not go: %s", (_, change) => {
    expect(mayDecide(decideAfter(whole, change), asked)).toBe(false);
  });

  test("carries nothing that was typed before for a counter, and is no longer on the page", () => {
    const counter = decideAfter(whole, { price: "41000", conditions: "with new hoses" });
    expect(decisionOf("approve", counter, asked)).toEqual(decisionOf("approve", whole, asked));
  });
});

describe("a counter", () => {
  test.each<[string, Partial<DecideForm>, boolean]>([
    ["nothing asked", {}, false],
    ["blanks alone", { price: " ", conditions: "  " }, false],
    ["a price that is none", { price: "a lot" }, false],
    ["a price", { price: "41,000", until: "2027-05-11" }, true],
    ["a condition", { conditions: "with new hoses", until: "2027-05-11" }, true],
    ["no day it stands through", { price: "41,000" }, false],
  ])("with %s", (_, change, goes) => {
    expect(mayDecide(form({ kind: "counter", ...change }), asked)).toBe(goes);
  });

  test("sends the price in whole cents and the condition without blanks around it", () => {
    expect(decisionOf("counter", form({ price: "41,000", conditions: " with new hoses " }), asked)).toEqual({
      decision: "counter",
      hash,
      acknowledgements: [],
      price: { minor: 4_100_000, currency: "USD" },
      conditions: "with new hoses",
    });
  });
});

test("a price is sent in the currency of the car, with the digits it has", () => {
  const counter = form({ kind: "counter", price: "4,100,000", until: "2027-05-11" });
  expect(decisionOf("counter", counter, { ...asked, currency: "JPY" }).price).toEqual({
    minor: 4_100_000,
    currency: "JPY",
  });
  expect(mayDecide(counter, { ...asked, currency: undefined })).toBe(false);
});

test("one who declines answers for nothing; nothing chosen sends nothing", () => {
  expect(mayDecide(form({ kind: "decline" }), asked)).toBe(true);
  expect(decisionOf("decline", form({ answers }), asked).acknowledgements).toEqual([]);
  expect(mayDecide(form({ answers, price: "1" }), asked)).toBe(false);
});

test("what is kept comes back as it was left, nothing answered with it", () => {
  const left = form({
    kind: "approve",
    answers: { ...answers, tires: { answer: null, words: "begun" } },
    price: "4",
  });
  expect(formOf(draftOf(left))).toEqual(left);
  expect(formOf(draftOf(emptyDecision))).toEqual(emptyDecision);
  expect(formOf(null)).toEqual(emptyDecision);
});
