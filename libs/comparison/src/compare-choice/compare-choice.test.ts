import { describe, expect, it } from "vitest";
import { option } from "../../testing/small-items.ts";
import { compareChoice, orderingOf } from "./index.ts";

const working = orderingOf({ answer: "working" });
const horn = (a: string, b: string, safety = false) => compareChoice({ a, b, safety, ...working });
const originality = orderingOf({
  answer: "choice",
  choice: {
    ordered: true,
    options: [option("original"), option("right-type"), option("other", true), option("not-known")],
  },
});
const engine = (a: string, b: string) => compareChoice({ a, b, safety: false, ...originality });
const presence = (goodIs: "present" | "absent" | "neither") => {
  const ordering = orderingOf({ answer: "presence", presence: { goodIs } });
  return (a: string, b: string) => compareChoice({ a, b, safety: false, ...ordering });
};

describe("working", () => {
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
});

describe("not known", () => {
  it.each([
    ["not-known", "not-known", "unseen", "not-known-by-either", "unseen"],
    ["not-known", "yes", "consistent", "not-known-by-statement", "too-coarse"],
    ["yes", "not-known", "consistent", "not-known-by-inspection", "too-coarse"],
    ["not-known", "no", "consistent", "found-bad-not-known", "not-mentioned"],
  ])("stated %s, found %s: %s", (a, b, outcome, reason, standing) => {
    expect(horn(a, b)).toMatchObject({ outcome, reason, standing, direction: "neither" });
  });
});

describe("presence", () => {
  it("goes by which is good", () => {
    expect(presence("present")("present", "absent")).toMatchObject({
      outcome: "differ",
      direction: "stated-better",
    });
    expect(presence("absent")("present", "absent")).toMatchObject({
      outcome: "differ",
      direction: "found-better",
    });
    expect(presence("neither")("present", "absent")).toMatchObject({
      outcome: "differ",
      direction: "neither",
    });
  });

  it("makes an agreed fault of what is missing on both sides", () => {
    expect(presence("present")("absent", "absent").standing).toBe("agreed-fault");
    expect(presence("neither")("absent", "absent").standing).toBe("confirmed");
  });
});

describe("choice", () => {
  it("goes by the options' order", () => {
    expect(engine("original", "right-type")).toMatchObject({
      outcome: "differ",
      reason: "other-answer",
      direction: "stated-better",
    });
    expect(engine("other", "right-type").direction).toBe("found-better");
  });

  it("goes by which option is bad where there is no order", () => {
    const unordered = orderingOf({
      answer: "choice",
      choice: {
        ordered: false,
        options: [option("flat"), option("round"), option("patched", true), option("not-known")],
      },
    });
    const inner = (a: string, b: string) => compareChoice({ a, b, safety: false, ...unordered });
    expect(inner("flat", "round")).toMatchObject({ outcome: "differ", direction: "neither" });
    expect(inner("flat", "patched").direction).toBe("stated-better");
    expect(inner("patched", "flat").direction).toBe("found-better");
    expect(inner("patched", "patched").standing).toBe("agreed-fault");
  });

  it("ranks nothing it does not list", () => {
    expect(originality.rank("not-known")).toBeUndefined();
    expect(originality.rank("elsewhere")).toBeUndefined();
    expect(engine("elsewhere", "original")).toMatchObject({ outcome: "differ", direction: "neither" });
  });
});
