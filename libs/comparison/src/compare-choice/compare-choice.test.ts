import { describe, expect, it } from "vitest";
import { compareChoice } from "./index.ts";
import type { Pick } from "./index.ts";

const WORKING: Record<string, Pick> = {
  yes: { answer: "yes", bad: false, rank: 0 },
  intermittent: { answer: "intermittent", bad: true, rank: 1 },
  no: { answer: "no", bad: true, rank: 2 },
  "not-known": { answer: "not-known", bad: false },
};
const working = (answer: string): Pick => WORKING[answer] ?? { answer, bad: false };
const horn = (a: string, b: string, safety = false) =>
  compareChoice({ a: working(a), b: working(b), between: "intermittent", safety });
const choose = (a: Partial<Pick>, b: Partial<Pick>) =>
  compareChoice({
    a: { answer: "one", bad: false, ...a },
    b: { answer: "two", bad: false, ...b },
    safety: true,
  });

describe("compareChoice", () => {
  it.each([
    ["yes", "yes", "agree", "neither", "confirmed"],
    ["no", "no", "agree", "neither", "agreed-fault"],
    ["yes", "no", "differ", "stated-better", "differs"],
    ["no", "yes", "differ", "found-better", "differs"],
    ["yes", "intermittent", "doubtful", "stated-better", "in-doubt"],
    ["no", "intermittent", "doubtful", "found-better", "in-doubt"],
    ["intermittent", "no", "doubtful", "stated-better", "in-doubt"],
  ])("stated %s, found %s: %s", (a, b, outcome, direction, standing) => {
    expect(horn(a, b)).toMatchObject({ outcome, direction, standing });
  });

  it("differs when intermittent on a safety item", () => {
    expect(horn("yes", "intermittent", true)).toMatchObject({ outcome: "differ", reason: "works-at-times" });
  });

  it.each([
    ["not-known", "not-known", "unseen", "not-known-by-either", "unseen"],
    ["not-known", "yes", "consistent", "not-known-by-statement", "too-coarse"],
    ["yes", "not-known", "consistent", "not-known-by-inspection", "too-coarse"],
    ["no", "not-known", "consistent", "not-known-by-inspection", "too-coarse"],
    ["not-known", "no", "consistent", "found-bad-not-known", "not-mentioned"],
  ])("stated %s, found %s: %s", (a, b, outcome, reason, standing) => {
    expect(horn(a, b)).toMatchObject({ outcome, reason, standing, direction: "neither" });
  });
});

describe("the reason", () => {
  it("tells an equal answer from another", () => {
    expect(horn("yes", "yes").reason).toBe("same-answer");
    expect(choose({}, {}).reason).toBe("other-answer");
  });
});

describe("the direction", () => {
  it("goes by the options' order", () => {
    expect(choose({ rank: 0 }, { rank: 1 })).toMatchObject({
      outcome: "differ",
      reason: "other-answer",
      direction: "stated-better",
    });
    expect(choose({ rank: 2, bad: true }, { rank: 1, bad: true }).direction).toBe("found-better");
  });

  it("goes by which is bad where there is no order", () => {
    expect(choose({}, {}).direction).toBe("neither");
    expect(choose({}, { bad: true }).direction).toBe("stated-better");
    expect(choose({ bad: true }, {}).direction).toBe("found-better");
    expect(choose({ rank: 1 }, { rank: 1, bad: true }).direction).toBe("stated-better");
    expect(choose({ rank: 1 }, { bad: true }).direction).toBe("stated-better");
    expect(choose({}, { rank: 1, bad: true }).direction).toBe("stated-better");
  });
});
