import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { tachometer } from "./index.ts";

const at = (indicated: number, measured: number) =>
  tachometer({ indicated: exactly(indicated), measured: exactly(measured) });

describe("tachometer", () => {
  it.each([
    [2200, 2000, "within"],
    [2201, 2000, "reads-high"],
    [1800, 2000, "within"],
    [1799, 2000, "reads-low"],
    [1000, 1000, "within"],
    [1000, 999, "too-slow"],
    [0, 2000, "too-slow"],
  ])("%i rpm shown at a measured %i: %s", (indicated, measured, reason) => {
    expect(at(indicated, measured).reason).toBe(reason);
  });

  it("gives the error with what both readings leave open", () => {
    const { figures, reason } = tachometer({
      indicated: estimate(2200, 22),
      measured: estimate(2000, 20),
    });
    expect(figures.error?.value).toBeCloseTo(10, 9);
    expect(figures.error?.standardUncertainty).toBeCloseTo(110 * Math.hypot(0.01, 0.01), 9);
    expect(reason).toBe("range-covers");
  });

  it("goes by the firm's own figure", () => {
    const strict = { "tachometer.share": 0.03 };
    const shown = { indicated: exactly(2100), measured: exactly(2000) };
    expect(tachometer(shown).reason).toBe("within");
    expect(tachometer(shown, strict).reason).toBe("reads-high");
  });
});
