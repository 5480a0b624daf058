import { describe, expect, it } from "vitest";
import { posteriorWeights } from "./index.ts";

describe("posteriorWeights", () => {
  it("are as the exponentials to each other, and add up to 1", () => {
    const { weights, logTotal } = posteriorWeights([Math.log(1), Math.log(2), Math.log(5)]);
    [0.125, 0.25, 0.625].forEach((weight, at) => expect(weights[at]).toBeCloseTo(weight, 14));
    expect(logTotal).toBeCloseTo(Math.log(8), 14);
  });

  it("hold where exponentials alone would vanish or overflow", () => {
    for (const far of [-2000, 2000]) {
      const { weights, logTotal } = posteriorWeights([far, far + Math.log(3)]);
      expect(weights[0]).toBeCloseTo(0.25, 12);
      expect(weights[1]).toBeCloseTo(0.75, 12);
      expect(logTotal).toBeCloseTo(far + Math.log(4), 9);
    }
  });
});
