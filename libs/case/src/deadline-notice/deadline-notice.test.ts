import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type OwedAnswer, remindedFrom, remindersOf } from "./index.ts";

const HOUR = 3_600_000;
const owed = (more: Partial<OwedAnswer> = {}): OwedAnswer => ({
  organization: "dealer",
  subject: "line",
  step: "answer-items",
  silence: "finding-stands",
  about: "car",
  begun: 0,
  deadline: 100 * HOUR,
  ...more,
});
const told = (some: readonly OwedAnswer[], hour: number): string[][] =>
  remindersOf(some, hour * HOUR).map((each) => each.map(({ subject }) => subject));

describe("somebody is reminded", () => {
  it.each([
    ["a day before a deadline that is days ahead", 100, 76],
    ["a day before, where there were two days", 48, 24],
    ["half way, where there was a day: never in the minute that opened it", 24, 12],
    ["half way, where there was an hour", 1, 0.5],
  ])("%s", (_, deadline, from) => {
    const one = [owed({ deadline: deadline * HOUR })];
    expect(remindedFrom({ begun: 0, deadline: deadline * HOUR })).toBe(from * HOUR);
    expect([told(one, from - 0.01), told(one, from), told(one, deadline - 0.01)]).toEqual([
      [],
      [["line"]],
      [["line"]],
    ]);
  });

  it("not once the deadline is there, which is when silence has its result", () => {
    expect(told([owed()], 100)).toEqual([]);
  });

  it("of nothing that is shorter than an hour, such as an hour that is held", () => {
    expect(told([owed({ deadline: HOUR / 6 })], 0.1)).toEqual([]);
  });

  it("at some time of everything that is longer, and never before it began", () => {
    const lengths = fc.integer({ min: HOUR, max: 1_000 * HOUR });
    fc.assert(
      fc.property(fc.integer({ min: 0 }), lengths, (begun, length) => {
        const from = remindedFrom({ begun, deadline: begun + length });
        expect(from).toBeGreaterThan(begun);
        expect(from).toBeLessThan(begun + length);
      }),
      { numRuns: 1_000 },
    );
  });
});

describe("one reminder", () => {
  it("holds all that is near of one step on one page, the earliest first", () => {
    const lines = [owed({ subject: "b", deadline: 101 * HOUR }), owed({ subject: "a" })];
    expect(told(lines, 90)).toEqual([["a", "b"]]);
    expect(told(lines, 76)).toEqual([["a"]]);
  });

  it.each([
    ["people", { organization: "buyer" }],
    ["step", { step: "do-remedy" }],
    ["page", { about: "another car" }],
    ["result of silence", { silence: "left-open" }],
  ] as const)("is of one %s", (_, more) => {
    expect(told([owed(), owed({ subject: "other", ...more })], 90)).toEqual([["line"], ["other"]]);
  });
});
