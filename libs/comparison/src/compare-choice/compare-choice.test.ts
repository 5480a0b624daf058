import { describe, expect, it } from "vitest";
import type { Call } from "@evenhand/shared/severity";
import { compareChoice } from "./index.ts";
import type { ChoicePair, Pick } from "./index.ts";

const RANKS = ["yes", "intermittent", "no"];
const working = (answer: string, bad: Call): Pick => ({
  answer,
  call: answer === "yes" ? "good" : answer === "not-known" ? "no-yardstick" : bad,
  rank: answer === "not-known" ? undefined : RANKS.indexOf(answer),
});
const horn = (a: string, b: string, bad: Call = "repair") =>
  compareChoice({ a: working(a, bad), b: working(b, bad), between: "intermittent" });
const choose = (a: Partial<Pick>, b: Partial<Pick>, more: Partial<ChoicePair> = {}) =>
  compareChoice({
    a: { answer: "one", call: "good", ...a },
    b: { answer: "two", call: "good", ...b },
    ...more,
  });

describe("compareChoice", () => {
  it.each([
    ["yes", "yes", "agree", "neither", "confirmed"],
    ["no", "no", "agree", "neither", "agreed-fault"],
    ["yes", "no", "differ", "stated-better", "differs"],
    ["no", "yes", "differ", "found-better", "differs"],
    ["yes", "intermittent", "doubtful", "stated-better", "in-doubt"],
    ["no", "intermittent", "agree", "found-better", "agreed-fault"],
    ["intermittent", "no", "agree", "stated-better", "agreed-fault"],
  ])("stated %s, found %s: %s", (a, b, outcome, direction, standing) => {
    expect(horn(a, b)).toMatchObject({ outcome, standing, direction });
  });

  it("marks what both say is bad", () => {
    expect(horn("no", "no").marks).toEqual(["both-bad"]);
    expect(horn("no", "intermittent").marks).toEqual(["both-bad"]);
    expect(horn("yes", "yes").marks).toBeUndefined();
  });

  it("differs when intermittent can hurt somebody", () => {
    expect(horn("yes", "intermittent", "danger")).toMatchObject({
      outcome: "differ",
      reason: "works-at-times",
    });
  });

  it.each([
    ["not-known", "not-known", "not-known-by-either"],
    ["not-known", "yes", "not-known-by-statement"],
    ["yes", "not-known", "not-known-by-inspection"],
    ["no", "not-known", "not-known-by-inspection"],
    ["not-known", "no", "not-known-by-statement"],
  ])("stated %s, found %s: unseen, to be asked for", (a, b, reason) => {
    expect(horn(a, b)).toMatchObject({ outcome: "unseen", reason, direction: "neither" });
  });
});

describe("both bad", () => {
  const small = { call: "small" as const };
  const halt = { call: "halt" as const };
  const worth = { call: "worth" as const };

  it("is disclosed with any degree of it, and the worse is said", () => {
    const [one, two] = [
      { ...small, rank: 1 },
      { call: "danger" as const, rank: 2 },
    ];
    expect(choose(one, two)).toMatchObject({
      outcome: "agree",
      reason: "both-bad-worse",
      marks: ["both-bad"],
    });
    expect(choose(two, one)).toMatchObject({
      outcome: "agree",
      reason: "both-bad",
      direction: "found-better",
    });
  });

  it("discloses nothing grave by a trifle beside it, where several can be true", () => {
    const several = { areApart: true };
    expect(choose(small, worth, several)).toMatchObject({ outcome: "differ", reason: "worse-than-said" });
    expect(choose(worth, small, several)).toMatchObject({ outcome: "differ", direction: "found-better" });
    expect(choose(worth, worth, several)).toMatchObject({ outcome: "agree", direction: "neither" });
    expect(choose(small, { call: "repair" }, several).outcome).toBe("agree");
  });

  it("discloses nothing that halts the money by anything less", () => {
    expect(choose(worth, halt)).toMatchObject({ outcome: "differ", reason: "worse-than-said" });
    expect(choose(halt, halt).outcome).toBe("agree");
  });
});

describe("ordered options", () => {
  it("are doubtful one step apart on one side of bad, or as the item says", () => {
    expect(choose({ rank: 0 }, { rank: 1 }).outcome).toBe("doubtful");
    expect(choose({ rank: 0 }, { rank: 1 }, { neighbors: "consistent" }).outcome).toBe("consistent");
  });

  it("differ two steps apart, and across what is bad", () => {
    expect(choose({ rank: 0 }, { rank: 2 }).outcome).toBe("differ");
    expect(choose({ rank: 0 }, { rank: 1, call: "repair" }).outcome).toBe("differ");
  });

  it("contradict where they are counted or read off, however near", () => {
    const counted = { neighbors: "differ" as const };
    expect(choose({ rank: 0 }, { rank: 1 }, counted).reason).toBe("other-answer");
    expect(choose({ rank: 0 }, { rank: 1, call: "small" }, counted).outcome).toBe("differ");
  });

  it("contradict where looking shows that the stronger is not so, weaker or not", () => {
    const more = { weakerIsNotOtherwise: true };
    const seen = { rank: 1, call: "no-yardstick" as const, refutes: ["one"] };
    expect(choose({ rank: 0 }, seen, more)).toMatchObject({ outcome: "differ", direction: "stated-better" });
    expect(choose({ rank: 0 }, { ...seen, refutes: ["three"] }, more).outcome).toBe("consistent");
    expect(choose({ rank: 0, refutes: ["two"] }, { rank: 1 }, more).outcome).toBe("differ");
  });

  it("do not contradict by being weaker where no more can be seen", () => {
    const more = { weakerIsNotOtherwise: true };
    expect(choose({ rank: 0 }, { rank: 1 }, more)).toMatchObject({
      outcome: "consistent",
      reason: "weaker-not-otherwise",
    });
    expect(choose({ rank: 0 }, { rank: 3, call: "worth" }, more).outcome).toBe("differ");
    expect(choose({ rank: 1 }, { rank: 0 }, more)).toMatchObject({
      outcome: "consistent",
      reason: "stronger-than-claimed",
    });
    expect(choose({}, { answer: "not-known", call: "no-yardstick" }, more).outcome).toBe("consistent");
  });

  it("are no neighbors where one is good and nothing judges the other, unless the item says so", () => {
    const beside = (more: Partial<ChoicePair>) =>
      choose({ rank: 0 }, { rank: 1, call: "no-yardstick" }, more).outcome;
    expect(beside({})).toBe("differ");
    expect(beside({ neighbors: "doubtful" })).toBe("doubtful");
    expect(choose({ rank: 0 }, { rank: 2, call: "no-yardstick" }, { neighbors: "doubtful" }).outcome).toBe(
      "differ",
    );
  });

  it("agree, both bad, where both are", () => {
    expect(choose({ rank: 1, call: "repair" }, { rank: 2, call: "repair" })).toMatchObject({
      outcome: "agree",
      marks: ["both-bad"],
      direction: "stated-better",
    });
    expect(choose({ rank: 1, call: "small" }, { rank: 3, call: "danger" }).outcome).toBe("agree");
  });

  it("are doubtful one step into a trifle", () => {
    expect(choose({ rank: 0 }, { rank: 1, call: "small" }).outcome).toBe("doubtful");
    expect(choose({ rank: 0 }, { rank: 2, call: "small" }).outcome).toBe("differ");
  });
});

describe("the direction", () => {
  it("goes by the options' order", () => {
    expect(choose({ rank: 0 }, { rank: 2 }).direction).toBe("stated-better");
    expect(choose({ rank: 2 }, { rank: 0 }).direction).toBe("found-better");
  });

  it("goes by which is bad where there is no order", () => {
    expect(choose({}, {}).direction).toBe("neither");
    expect(choose({}, { call: "worth" }).direction).toBe("stated-better");
    expect(choose({ call: "worth" }, {}).direction).toBe("found-better");
  });
});
