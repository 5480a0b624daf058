import type { Finding } from "@evenhand/shared/finding";
import { expect, test } from "vitest";
import { type Proposal, reviewOf } from "./review.ts";
import {
  acceptable,
  countsOf,
  type Deeds,
  proposalsOf,
  saysSame,
  settledLine,
  standingOf,
} from "./standing.ts";

const horn: Finding = {
  item: "electrics.horn",
  position: "",
  answer: { kind: "working", value: "yes" },
  firmness: "asserted",
  basis: "seen",
};
const dent: Finding = {
  item: "body.dents",
  position: "left-front-door",
  answer: { kind: "faults", found: [{ kind: "dent" }], denied: [] },
  firmness: "hedged",
  basis: "seen",
};
const text = "The horn works. A dent in the left front door, I think.";
const spoken = reviewOf({
  of: "spoken",
  reading: {
    form: "webvtt",
    text,
    passages: [
      { start: 0, end: 15, second: 1 },
      { start: 16, end: text.length, second: 4 },
    ],
    remarks: [
      {
        finding: horn,
        second: 1,
        start: 0,
        end: 15,
        words: "",
        confidence: 0.95,
        inferred: false,
        heard: [],
        problem: null,
      },
      {
        finding: dent,
        second: 4,
        start: 18,
        end: 45,
        words: "",
        confidence: 0.6,
        inferred: true,
        heard: ["tent"],
        problem: null,
      },
    ],
    unmentioned: ["brakes.hoses"],
  },
});
const sheet = reviewOf({
  of: "sheet",
  reading: {
    form: "csv",
    exported: false,
    rows: [
      {
        grid: "",
        row: 2,
        text: "Horn | ok",
        end: "finding",
        findings: [
          { finding: horn, confidence: 0.97, sure: false, line: "horn", settled: false, problem: null },
        ],
        refused: [],
        note: null,
      },
      {
        grid: "",
        row: 3,
        text: "Whirligig | ok",
        end: "refused",
        findings: [],
        refused: [{ reason: "nothing the sheet asks is called so", item: null, line: "whirligig" }],
        note: null,
      },
      {
        grid: "",
        row: 4,
        text: "Notes",
        end: "note",
        findings: [],
        refused: [{ reason: "it is marked as not applying", item: null, line: "notes" }],
        note: "heading",
      },
    ],
    scales: [],
    aside: [],
  },
});

const noDeeds: Deeds = new Map();
const nothing = () => null;
const standing = (one: Proposal) => standingOf(one, noDeeds, nothing);
const tire = (position: string): Finding => ({ ...horn, item: "wheels.tread-depth", position });
const first = (review: typeof spoken): Proposal => {
  const [one] = proposalsOf(review);
  if (one === undefined) throw new Error("nothing was read");
  return one;
};

test("each remark stands beside the stretch it begins in, with what is doubtful of it", () => {
  expect(spoken.blocks.map(({ text: said, proposals }) => [said, proposals.length])).toEqual([
    ["The horn works.", 1],
    ["A dent in the left front door, I think.", 1],
  ]);
  expect(proposalsOf(spoken)[1]?.doubts).toEqual([
    { is: "inferred" },
    { is: "heard", words: "tent" },
    { is: "unsure" },
  ]);
});

test("a refused row is something to settle by hand, a row that is a note is not", () => {
  expect(proposalsOf(sheet).map(({ finding, line }) => [finding?.item ?? null, line])).toEqual([
    ["electrics.horn", "horn"],
    [null, "whirligig"],
  ]);
});

test("a proposal is accepted where the draft says the same, in whatever order it is stored", () => {
  const stored: Finding = JSON.parse(
    '{"firmness":"asserted","basis":"seen","answer":{"value":"yes","kind":"working"},"position":"","item":"electrics.horn"}',
  );
  expect(saysSame(stored, horn)).toBe(true);
  expect(standingOf(first(spoken), noDeeds, () => stored)).toBe("accepted");
  const hedged: Finding = { ...horn, firmness: "hedged" };
  expect(standingOf(first(spoken), noDeeds, () => hedged)).toBe("other");
});

test("rejected, open, empty and refused by the report are told apart", () => {
  const one = first(spoken);
  const deeds: Deeds = new Map([[one.key, { is: "rejected", finding: horn, before: null }]]);
  expect(standingOf(one, deeds, nothing)).toBe("rejected");
  expect(standingOf(one, noDeeds, nothing)).toBe("open");
  expect(standingOf({ ...one, finding: null }, noDeeds, nothing)).toBe("empty");
  const wrong = { ...one, doubts: [{ is: "problem", why: "no such place" }] as const };
  expect(standingOf(wrong, noDeeds, nothing)).toBe("wrong");
  const changed: Deeds = new Map([[one.key, { is: "accepted", finding: { ...horn }, before: null }]]);
  expect(standingOf(wrong, changed, nothing)).toBe("open");
});

test("one press accepts only what is open, as sure as asked and without a doubt", () => {
  expect(acceptable(proposalsOf(spoken), 0.9, standing).map(({ finding }) => finding)).toEqual([horn]);
  expect(acceptable(proposalsOf(spoken), 0.5, standing)).toHaveLength(1);
  expect(acceptable(proposalsOf(sheet), 0.5, standing)).toEqual([]);
  expect(acceptable(proposalsOf(spoken), 0.5, () => "other")).toEqual([]);
});

test("lines are counted once each", () => {
  expect(countsOf(["accepted", "rejected", "open", "other", "empty"])).toEqual({
    all: 5,
    accepted: 1,
    rejected: 1,
    left: 3,
  });
});

test("a line is settled to all places of its item that were not rejected", () => {
  const [left, right, spare] = ["left-front", "right-front", "spare"].map((position): Proposal => ({
    ...first(sheet),
    key: position,
    finding: tire(position),
    line: "tires",
  }));
  const all = [left, right, spare].flatMap((one) => one ?? []);
  const deeds: Deeds = new Map([["spare", { is: "rejected", finding: null, before: null }]]);
  expect(settledLine("tires", "wheels.tread-depth", all, deeds)).toEqual({
    line: "tires",
    item: "wheels.tread-depth",
    positions: ["left-front", "right-front"],
  });
});
