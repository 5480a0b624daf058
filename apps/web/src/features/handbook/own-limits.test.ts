import { firmLimitProblems, limits, type LimitRecord } from "@evenhand/handbook/limits";
import { describe, expect, it } from "vitest";
import { limitGroups, limitsOf, limitWrong, ownLimitCount, typedLimits, wrongLimits } from "./own-limits";

const records: readonly (readonly [string, LimitRecord])[] = Object.entries(limits);

const ruleOf = (id: string) =>
  limitGroups.find((group) => group.limits.some((limit) => limit.id === id))?.rule;
const taperWrong = (text: string) => limitWrong({ "gap.taper": text }, "gap.taper");

describe("the figures a firm may set", () => {
  it("stand each once, and no other", () => {
    const shown = limitGroups.flatMap((group) => group.limits.map(({ id }) => id));
    const settable = records.filter(([, { firmMaySet }]) => firmMaySet).map(([id]) => id);
    expect(shown.toSorted()).toEqual(settable.toSorted());
    expect(ownLimitCount).toBe(settable.length);
  });

  it("stand under the first rule that judges by them", () => {
    expect(ruleOf("paint.thin")).toBe("paint-map");
    expect(ruleOf("ratio.slowest")).toBe("speedometer");
  });
});

describe("what is typed", () => {
  it("is read back as it was stored", () => {
    const stored = Object.fromEntries(
      limitGroups.flatMap((group) => group.limits.map(({ id, between }) => [id, between[1]])),
    );
    expect(limitsOf(typedLimits(stored))).toEqual(stored);
    expect(firmLimitProblems(stored)).toEqual([]);
  });

  it("is the handbook's figure where nothing is", () => {
    expect(limitsOf(typedLimits({}))).toEqual({});
    expect(limitsOf({ ...typedLimits({}), "gap.taper": "  " })).toEqual({});
  });

  it("may be either end of the range and nothing beyond", () => {
    expect(["1", "10"].map(taperWrong)).toEqual([undefined, undefined]);
    expect(["0.99", "10.01", "-3"].map(taperWrong)).toEqual(["out-of-range", "out-of-range", "out-of-range"]);
    expect(taperWrong("three")).toBe("not-a-number");
  });

  it("is named where it is wrong", () => {
    const typed = { ...typedLimits({}), "gap.taper": "99", "paint.thin": "80", "wear.low-miles": "many" };
    expect(wrongLimits(typed)).toEqual(["gap.taper", "wear.low-miles"]);
  });
});
