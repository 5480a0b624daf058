import { assert, constantFrom, nat, property, record, uniqueArray } from "fast-check";
import { describe, expect, test } from "vitest";
import type { Acknowledgement } from "@evenhand/shared/summary";
import { unanswered } from "./index.ts";

const lien = { id: "lien", severity: "halt" } as const;
const title = { id: "title", severity: "halt" } as const;
const brakes = { id: "brakes", severity: "danger" } as const;
const says = (matter: string, answer: Acknowledgement["answer"], words?: string): Acknowledgement =>
  words === undefined ? { matter, answer } : { matter, answer, words };

describe("unanswered", () => {
  test.each([
    ["nothing of it", [], "not-answered"],
    ["what stops the money without words", [says("lien", "dealer")], "no-words"],
    [
      "another matter only",
      [says("lien", "dealer", "paid off at closing"), says("tires", "first")],
      "not-open",
    ],
  ] as const)("names %s", (_, given, because) => {
    expect(unanswered([lien], given).map((one) => one.because)).toEqual([because]);
  });

  test("asks for words where something dangerous is taken as it is, and nowhere else", () => {
    expect(unanswered([brakes], [says("brakes", "first")])).toEqual([]);
    expect(unanswered([brakes], [says("brakes", "as-it-is")])).toEqual([
      { matter: "brakes", because: "no-words" },
    ]);
    expect(unanswered([brakes], [says("brakes", "as-it-is", "it goes on a trailer")])).toEqual([]);
  });

  test("takes no words twice for what stops the money", () => {
    const given = [
      says("lien", "first", "It is  cleared first."),
      says("title", "first", "it is cleared first."),
    ];
    expect(unanswered([lien, title], given)).toEqual([{ matter: "title", because: "same-words" }]);
  });

  test("lets the later of two answers count", () => {
    expect(unanswered([brakes], [says("brakes", "as-it-is"), says("brakes", "dealer")])).toEqual([]);
  });
});

const ids = ["a", "b", "c", "d", "e", "f"];
const anyOpen = uniqueArray(record({ id: constantFrom(...ids), severity: constantFrom("halt", "danger") }), {
  selector: ({ id }) => id,
});
const whole = (open: readonly { id: string }[]): Acknowledgement[] =>
  open.map(({ id }) => says(id, "look-again", `a second look at ${id}`));

describe("whatever is open", () => {
  test("a whole set of answers passes in any order, and with any one of them gone that one alone is named", () => {
    assert(
      property(anyOpen, nat(), (open, at) => {
        const given = whole(open);
        expect(unanswered(open, given)).toEqual([]);
        expect(unanswered(open, given.toReversed())).toEqual([]);
        const gone = open[at % Math.max(1, open.length)];
        const rest = given.filter(({ matter }) => matter !== gone?.id);
        expect(unanswered(open, rest)).toEqual(
          gone === undefined ? [] : [{ matter: gone.id, because: "not-answered" }],
        );
      }),
      { numRuns: 1000 },
    );
  });
});
