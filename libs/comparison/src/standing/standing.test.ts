import { describe, expect, it } from "vitest";
import { standingOf } from "./index.ts";

describe("standingOf", () => {
  it.each([
    ["agree", {}, "confirmed"],
    ["agree", { bothBad: true }, "agreed-fault"],
    ["agree", { tooCoarse: true }, "confirmed"],
    ["consistent", {}, "not-contradicted"],
    ["consistent", { tooCoarse: true }, "too-coarse"],
    ["consistent", { bothBad: true, tooCoarse: true }, "agreed-fault"],
    ["differ", { bothBad: true }, "differs"],
    ["unseen", {}, "unseen"],
    ["unstated", {}, "not-mentioned"],
    ["incomparable", {}, "not-comparable"],
  ] as const)("%s %o: %s", (outcome, facts, standing) => {
    expect(standingOf(outcome, facts)).toBe(standing);
  });
});
