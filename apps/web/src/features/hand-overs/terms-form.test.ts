import { expect, test } from "vitest";
import { noTerms, termsOf, typedTerms } from "./terms-form";

const kept = {
  claimDeadline: {
    words: "In writing, within seven days",
    source: "Its conditions, paragraph 9",
    until: "2026-12-08T17:30:00.000Z",
  },
  riskPasses: "On loading",
};

test("what is kept comes back from its fields as it was, to the minute", () => {
  const typed = typedTerms(kept);
  expect(typed).toMatchObject({ deadline: "In writing, within seven days", risk: "On loading" });
  expect(Date.parse(termsOf(typed).claimDeadline?.until ?? "")).toBe(Date.parse(kept.claimDeadline.until));
});

test("what is not entered is nothing, and an hour without a deadline's words is none", () => {
  expect(termsOf(noTerms)).toEqual({ claimDeadline: null, riskPasses: null });
  expect(termsOf({ ...noTerms, claimUntil: "2026-12-08T10:30", risk: "  " })).toEqual({
    claimDeadline: null,
    riskPasses: null,
  });
  expect(typedTerms({ claimDeadline: null, riskPasses: null })).toEqual(noTerms);
});
