import { expect, test } from "vitest";
import { faultsAfter, faultsAnswer, type FaultsSaid, type FaultsStep } from "./faults-edit.ts";

const nothing: FaultsSaid = { found: [], denied: [], texts: {} };
const after = (...steps: readonly FaultsStep[]) => steps.reduce(faultsAfter, nothing);
const add = (kind: string): FaultsStep => ({ type: "add", kind });
const deny = (kind: string, denied = true): FaultsStep => ({ type: "deny", kind, denied });

test("none at all is an answer, and nothing said is none", () => {
  expect(faultsAnswer(nothing)).toBeNull();
  expect(faultsAnswer(after({ type: "none", none: true }))).toEqual({
    kind: "faults",
    found: [],
    denied: "all",
  });
  expect(faultsAnswer(after({ type: "none", none: true }, { type: "none", none: false }))).toBeNull();
});

test("a fault found ends that there are none, and that its kind is not there", () => {
  expect(after({ type: "none", none: true }, add("dent"))).toMatchObject({
    found: [{ kind: "dent" }],
    denied: [],
  });
  expect(after(deny("dent"), deny("rust"), add("dent")).denied).toEqual(["rust"]);
});

test("a kind said not to be there can be taken back, and stands once", () => {
  expect(after(deny("rust"), deny("rust")).denied).toEqual(["rust"]);
  expect(faultsAnswer(after(deny("rust"), deny("rust", false)))).toBeNull();
});

test("what was typed of an extent stays with its fault, and goes with it", () => {
  const fault = { kind: "rust" };
  const typed = after(add("dent"), add("rust"), { type: "change", at: 1, fault, text: "abc" });
  expect(typed.texts).toEqual({ "extent.1": "abc" });
  expect(faultsAfter(typed, { type: "remove", at: 0 })).toEqual({
    found: [fault],
    denied: [],
    texts: { "extent.0": "abc" },
  });
  expect(faultsAfter(typed, { type: "remove", at: 1 }).texts).toEqual({});
});
