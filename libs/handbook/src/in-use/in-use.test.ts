import { describe, expect, it } from "vitest";
import { estimate } from "@evenhand/measurement/estimate";
import { exactly } from "../interval/index.ts";
import { inUseFreePlay } from "../in-use-free-play/index.ts";
import { inUseLining } from "../in-use-lining/index.ts";
import { inUseRunout } from "../in-use-runout/index.ts";
import { inUseToe } from "../in-use-toe/index.ts";
import { inUseTread } from "../in-use-tread/index.ts";

const rows = (diameter?: number) => inUseFreePlay(exactly(2), diameter).limits?.map(({ value }) => value);

describe("limits in use", () => {
  it("give the plain call on the figure as read, and the probability beside it", () => {
    expect(inUseTread(estimate(2, 0.4))).toMatchObject({
      reason: "range-covers",
      words: { plain: "passes", call: "marginal" },
      figures: { probability: { value: 0.5 } },
    });
    expect(inUseTread(estimate(1.99, 0.4)).words).toEqual({ plain: "fails", call: "marginal" });
    expect(inUseRunout(estimate(0.125, 0.01)).words?.plain).toBe("passes");
    expect(inUseRunout(estimate(0.126, 0.01)).words?.plain).toBe("fails");
    expect(inUseToe(estimate(-0.16, 0.1), 0.1).words?.plain).toBe("fails");
    expect(inUseToe(estimate(-0.15, 0.1), 0.1).words?.plain).toBe("passes");
    expect(inUseTread(estimate(4, 0.4)).words?.call).toBe("meets");
    expect(inUseTread(estimate(0, 0.4)).words?.call).toBe("fails");
  });

  it("say which limit was used, in its unit", () => {
    expect(inUseLining(exactly(0.1), "riveted").limits?.[0]?.id).toBe("in-use.lining-riveted");
    expect(inUseLining(exactly(0.1), "bonded").limits?.[0]?.id).toBe("in-use.lining-bonded");
    expect(inUseLining(exactly(0.1), "bonded").figures.reading).toEqual({ value: 0.1, unit: "in" });
    expect(inUseTread(exactly(4)).figures.reading).toEqual({ value: 4, unit: "1/32in" });
  });

  it("name both rows between two, and one row otherwise", () => {
    expect([rows(14), rows(16), rows(17), rows(18), rows(22), rows(23), rows()]).toEqual([
      [2],
      [2],
      [2, 2.25],
      [2.25],
      [2.75],
      [2.75],
      [2],
    ]);
    expect(inUseFreePlay(exactly(2)).reason).toBe("meets");
    expect(inUseFreePlay(exactly(2.1)).reason).toBe("wheel-unknown");
    expect(inUseFreePlay(estimate(2, 0.1), 16).reason).toBe("range-covers");
    expect(inUseFreePlay(exactly(2), 16).figures.wheelDiameter).toEqual({ value: 16, unit: "in" });
    expect(inUseFreePlay(exactly(2)).figures).not.toHaveProperty("wheelDiameter");
  });

  it("give the toe's limit in the toe's unit, and none at a maker's value of 0", () => {
    expect(inUseToe(exactly(2), 2, "mm").figures).toMatchObject({
      reading: { unit: "mm" },
      makers: { value: 2, unit: "mm" },
      most: { value: 3, unit: "mm" },
    });
    expect(inUseToe(exactly(0.1), 0).reason).toBe("makers-value-unknown");
    expect(inUseToe(exactly(0.1), 0).figures.reading?.unit).toBe("in");
  });
});
