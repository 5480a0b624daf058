import { describe, expect, it } from "vitest";
import { readZetaScore, zetaScore } from "./index.ts";

describe("zetaScore", () => {
  it("has the results its examples state", () => {
    expect(zetaScore(0.006, 0.00763627)).toBeCloseTo(0.7857239, 6);
    expect(readZetaScore(-2.4)).toBe("questionable");
  });

  it("is 0 or infinite without uncertainty", () => {
    expect(zetaScore(0, 0)).toBe(0);
    expect(zetaScore(-3, 0)).toBe(-Infinity);
    expect(zetaScore(3, 0)).toBe(Infinity);
  });

  it("refuses a negative uncertainty", () => {
    const refusal = new RangeError("The standard uncertainty must be a number from 0: -1");
    expect(() => zetaScore(1, -1)).toThrow(refusal);
  });

  it.each([
    [0, "satisfactory"],
    [2, "satisfactory"],
    [-2, "satisfactory"],
    [2.0001, "questionable"],
    [2.9999, "questionable"],
    [3, "unsatisfactory"],
    [-3, "unsatisfactory"],
    [9, "unsatisfactory"],
  ])("reads %d as %s", (score, reading) => {
    expect(readZetaScore(score)).toBe(reading);
  });
});
