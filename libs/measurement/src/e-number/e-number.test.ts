import { describe, expect, it } from "vitest";
import { eNumber, readENumber } from "./index.ts";

describe("eNumber", () => {
  it("has the results its examples state", () => {
    expect(eNumber(3, 3, 4)).toBe(0.6);
    expect(readENumber(-1)).toBe("satisfactory");
  });

  it("is 0 or infinite without uncertainty", () => {
    expect(eNumber(0, 0, 0)).toBe(0);
    expect(eNumber(-1, 0, 0)).toBe(-Infinity);
  });

  it("refuses a negative uncertainty on either side", () => {
    expect(() => eNumber(1, -1, 1)).toThrow(
      new RangeError("Expanded uncertainties must be numbers from 0: -1, 1"),
    );
    expect(() => eNumber(1, 1, -1)).toThrow(
      new RangeError("Expanded uncertainties must be numbers from 0: 1, -1"),
    );
    expect(eNumber(1, 0, 1)).toBe(1);
    expect(eNumber(1, 1, 0)).toBe(1);
  });

  it("reads beyond 1, either way, as unsatisfactory", () => {
    expect([1, 1.0001, -1.0001, 0].map(readENumber)).toEqual([
      "satisfactory",
      "unsatisfactory",
      "unsatisfactory",
      "satisfactory",
    ]);
  });
});
