import { describe, expect, it } from "vitest";
import { figure, ruleResult } from "./index.ts";

describe("ruleResult", () => {
  it("takes the verdict from the rule's record", () => {
    expect(ruleResult("square", "square")).toEqual({
      rule: "square",
      verdict: "holds",
      reason: "square",
      figures: {},
    });
    expect(ruleResult("square", "wheelbase-differs", { figures: { a: figure(1) } })).toMatchObject({
      verdict: "breaks",
      figures: { a: { value: 1, unit: "1" } },
    });
  });
});

describe("figure", () => {
  it("leaves out an uncertainty of 0", () => {
    expect([figure(1), figure(1, "mm", 0), figure(1, "mm", 0.5)]).toEqual([
      { value: 1, unit: "1" },
      { value: 1, unit: "mm" },
      { value: 1, unit: "mm", standardUncertainty: 0.5 },
    ]);
  });
});
