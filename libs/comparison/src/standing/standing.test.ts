import { describe, expect, it } from "vitest";
import { standingOf } from "./index.ts";

describe("standingOf", () => {
  it.each([
    ["agree", {}, "confirmed"],
    ["agree", { bothBad: true }, "agreed-fault"],
    ["agree", { tooCoarse: true }, "confirmed"],
    ["agree", { limits: "one-fails" }, "in-doubt"],
    ["agree", { limits: "same-failure" }, "agreed-fault"],
    ["agree", { limits: "opposite" }, "differs"],
    ["consistent", {}, "not-contradicted"],
    ["consistent", { tooCoarse: true }, "too-coarse"],
    ["consistent", { bothBad: true, tooCoarse: true }, "agreed-fault"],
    ["consistent", { limits: "one-fails" }, "in-doubt"],
    ["doubtful", { bothBad: true, limits: "same-failure" }, "in-doubt"],
    ["doubtful", { limits: "opposite" }, "differs"],
    ["differ", { bothBad: true }, "differs"],
    ["differ", { limits: "one-fails" }, "differs"],
    ["unseen", {}, "unseen"],
    ["unstated", {}, "not-mentioned"],
    ["incomparable", {}, "not-comparable"],
  ] as const)("%s %o: %s", (outcome, facts, standing) => {
    expect(standingOf(outcome, facts)).toBe(standing);
  });
});
