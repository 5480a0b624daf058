import type { Entry } from "@evenhand/shared/comparison";
import { expect, test } from "vitest";
import { whyNotReleasable } from "./index.ts";

type Asked = Parameters<typeof whyNotReleasable>[0];
const entry = (more: Partial<Asked>): Asked => ({
  outcome: "differ",
  direction: "stated-better",
  standing: "differs",
  ...more,
});

test.each(["differ", "unstated", "doubtful"] as const)(
  "what is %s may be laid before the dealer",
  (outcome) => {
    expect(whyNotReleasable(entry({ outcome }))).toBeNull();
  },
);

test.each(["agree", "consistent", "unseen", "incomparable"] as const satisfies readonly Entry["outcome"][])(
  "nobody disputes what is %s",
  (outcome) => {
    expect(whyNotReleasable(entry({ outcome, standing: "confirmed" }))).toBe("nothing-to-dispute");
  },
);

test("what was found better is never laid before the dealer, whatever else is said of it", () => {
  for (const outcome of ["differ", "doubtful", "unstated"] as const)
    expect(whyNotReleasable(entry({ outcome, direction: "found-better" }))).toBe("found-better");
});

test("what breaks a rule of the handbook may be, though the two agree; what only says that nobody looked may not", () => {
  const broken = entry({ outcome: "agree", standing: "contradicted-by-figures" });
  expect(whyNotReleasable(broken)).toBeNull();
  expect(whyNotReleasable({ ...broken, coverageOnly: true })).toBe("nothing-to-dispute");
});
