import { describe, expect, it } from "vitest";
import { findCheckDigit, findWeightedSum, hasRightCheckDigit } from "./index.ts";

describe("check digit", () => {
  it("needs 17 characters a VIN can hold", () => {
    for (const text of ["", "0EVTL82633A00714", "0EVTL82633A0071466", "0EVTL8I633A007146"]) {
      expect([findWeightedSum(text), findCheckDigit(text), hasRightCheckDigit(text)]).toEqual([
        undefined,
        undefined,
        false,
      ]);
    }
  });

  it("writes 10 as X", () => {
    expect(findCheckDigit("1M8GDM9A0KP042788")).toBe("X");
    expect(hasRightCheckDigit("1M8GDM9AXKP042788")).toBe(true);
  });
});
