import { expect, test } from "vitest";
import { answerFinding, begunAnswer, mayBeGiven } from "./answer-form";

const asked = { item: "brakes.pedal", position: "" };
const answer = { kind: "working", value: "yes" } as const;

test("nothing is given before there is an answer, or while part of it cannot be read", () => {
  expect(mayBeGiven(begunAnswer)).toBe(false);
  expect(mayBeGiven({ ...begunAnswer, answer })).toBe(true);
  expect(mayBeGiven({ ...begunAnswer, answer, unread: { texts: { value: "twelve" } } })).toBe(false);
});

test("the finding stands on the place asked about, with its grounds", () => {
  const form = { ...begunAnswer, answer, firmness: "hedged", basis: "told" } as const;
  expect(answerFinding(asked, form)).toEqual({ ...asked, answer, firmness: "hedged", basis: "told" });
});

test("a note is taken without the blanks round it, and left out where there is none", () => {
  expect(answerFinding(asked, { ...begunAnswer, note: " By the last owner. " }).note).toBe(
    "By the last owner.",
  );
  expect(answerFinding(asked, { ...begunAnswer, note: "  " })).not.toHaveProperty("note");
});
