import { describe, expect, it } from "vitest";
import type { Answer } from "@evenhand/shared/answer";
import { finding } from "../../testing/small-reports.ts";
import { compareFitted } from "./index.ts";

const none: Answer = { kind: "not-fitted" };
const works: Answer = { kind: "working", value: "yes" };
const dead: Answer = { kind: "working", value: "no" };
const notKnown: Answer = { kind: "working", value: "not-known" };
const unseen: Answer = { kind: "not-seen", reason: "covered" };

const said = (a: Answer | null, b: Answer | null) => {
  const [one, other] = [a, b].map((answer) =>
    answer === null ? undefined : finding("electrics.horn", answer),
  );
  return compareFitted(one, other);
};

describe("a car that has no such thing", () => {
  it.each<[string, Answer | null, Answer | null, object]>([
    [
      "as both say",
      none,
      none,
      { outcome: "agree", reason: "not-fitted-by-both", standing: "confirmed", marks: ["not-fitted"] },
    ],
    [
      "as found, where it was said to work",
      works,
      none,
      { outcome: "differ", reason: "not-fitted-found", direction: "stated-better", standing: "differs" },
    ],
    [
      "as found, where it was said to be broken",
      dead,
      none,
      { outcome: "differ", reason: "not-fitted-found", direction: "stated-better" },
    ],
    [
      "as found, where the statement is silent",
      null,
      none,
      { outcome: "consistent", reason: "seen-not-fitted", coverageOnly: true, marks: ["not-fitted"] },
    ],
    [
      "as found, where the statement did not look",
      unseen,
      none,
      { outcome: "consistent", reason: "seen-not-fitted" },
    ],
    [
      "as found, where the statement does not know",
      notKnown,
      none,
      { outcome: "consistent", reason: "seen-not-fitted" },
    ],
    [
      "as stated, and it is there",
      none,
      works,
      { outcome: "differ", reason: "fitted-found", direction: "neither", standing: "differs" },
    ],
    [
      "as stated, and nobody looked",
      none,
      null,
      { outcome: "unseen", reason: "stated-not-inspected", direction: "neither", standing: "unseen" },
    ],
    ["as stated, and it was not seen", none, unseen, { outcome: "unseen", reason: "stated-not-inspected" }],
    [
      "as stated, and the inspector does not know",
      none,
      notKnown,
      { outcome: "unseen", reason: "stated-not-inspected" },
    ],
  ])("%s", (_name, a, b, expected) => {
    expect(said(a, b)).toMatchObject(expected);
  });

  it("is nothing to speak of where neither says so", () => {
    for (const [a, b] of [
      [works, dead],
      [works, null],
      [null, works],
      [null, null],
      [unseen, works],
    ] as const)
      expect(said(a, b)).toBeUndefined();
  });
});
