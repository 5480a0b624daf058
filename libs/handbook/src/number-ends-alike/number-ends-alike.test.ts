import { describe, expect, it } from "vitest";
import { numberEndsAlike } from "./index.ts";

const number = "TM467R20871";
const of = (stamp: string, saidToMatch = true, readTwice = true, chassisNumber = number) =>
  numberEndsAlike({ unit: "engine", stamp, chassisNumber, saidToMatch, readTwice });

describe("numberEndsAlike", () => {
  it.each([
    ["R67 20871", "alike"],
    ["0871", "alike"],
    ["20-871", "alike"],
    ["871", "too-short"],
    ["XK", "too-short"],
    ["R6731196", "said-to-match"],
    ["R672O871", "probably-misread"],
    ["R6720B71", "probably-misread"],
    ["R6720817", "probably-misread"],
  ])("%s: %s", (stamp, reason) => {
    expect(of(stamp).reason).toBe(reason);
  });

  it("breaks only where the numbers are said to match and the stamp was read twice", () => {
    expect(of("R6731196")).toMatchObject({ verdict: "breaks", severity: "halt" });
    expect(of("R6731196", true, false)).toMatchObject({
      verdict: "cannot-tell",
      reason: "read-again",
      severity: "halt",
    });
    expect(of("R6731196", false)).toMatchObject({
      verdict: "cannot-tell",
      reason: "not-alike",
      severity: "worth",
    });
  });

  it("sets no more than the last six characters against each other", () => {
    expect(of("999104512", true, true, "888104512").reason).toBe("alike");
  });
});
