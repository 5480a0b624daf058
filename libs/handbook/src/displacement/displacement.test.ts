import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { displacement } from "./index.ts";

/** One cylinder whose volume is that many cubic inches. */
const cylinder = (volume: number) => ({
  bore: exactly(Math.sqrt(4 / Math.PI)),
  stroke: exactly(volume),
  cylinders: 1,
});

describe("displacement", () => {
  it.each([
    [98.9, "not-as-claimed"],
    [99.01, "as-claimed"],
    [100, "as-claimed"],
    [100.99, "as-claimed"],
    [101.1, "overbored"],
    [130, "not-as-claimed"],
  ])("%f against 100: %s", (volume, reason) => {
    expect(displacement({ ...cylinder(volume), claimed: 100 }).reason).toBe(reason);
  });

  it("counts the bore's uncertainty twice", () => {
    const { figures } = displacement({
      bore: estimate(3.75, 0.0375),
      stroke: estimate(3.125, 0.03125),
      cylinders: 8,
    });
    const { value = 0, standardUncertainty = 0 } = figures.displacement ?? {};
    expect(standardUncertainty / value).toBeCloseTo(Math.hypot(0.02, 0.01), 12);
  });

  it("takes the firm's share", () => {
    expect(displacement({ ...cylinder(102), claimed: 100 }, { "displacement.share": 0.03 }).reason).toBe(
      "as-claimed",
    );
  });
});
