import { describe, expect, it } from "vitest";
import { figure } from "../rule-result/index.ts";
import { squareRecord } from "../square/record.ts";

describe("a record's answer", () => {
  it("takes the verdict from the reason alone", () => {
    expect(squareRecord.answer("square")).toEqual({
      rule: "square",
      verdict: "holds",
      reason: "square",
      severity: null,
      figures: {},
    });
    expect(squareRecord.answer("wheelbase-differs", { figures: { a: figure(1) } })).toMatchObject({
      verdict: "breaks",
      severity: "worth",
      figures: { a: { value: 1, unit: "1" } },
    });
  });
});
