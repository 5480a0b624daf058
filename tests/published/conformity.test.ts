import { describe, expect, it } from "vitest";
import { probabilityOfConformity } from "@evenhand/measurement/conformity";
import { estimate } from "@evenhand/measurement/estimate";
import gum from "../../fixtures/published/gum.json" with { type: "json" };

/** JCGM 106:2012, 7.3 and 7.4; from memory and recomputed, as the fixture says. */
describe("probability of conformity, JCGM 106", () => {
  it.each(gum.jcgm106.cases)("$name", ({ y, u, T_L, T_U, p_c, published }) => {
    const probability = probabilityOfConformity(estimate(y, u), { lower: T_L, upper: T_U });
    expect(probability).toBeCloseTo(p_c, 5);
    expect(Number(probability.toFixed(2))).toBe(published);
  });

  it.each([
    [2, 0.02275],
    [1.645, 0.05],
  ])("a guard band of %d u leaves %d of false acceptance at the limit", (band, risk) => {
    expect(1 - probabilityOfConformity(estimate(10 + band, 1), { lower: 10 })).toBeCloseTo(risk, 4);
  });

  /** Shares of the normal within 1, 2 and 3 standard deviations: 68.27, 95.45 and 99.73 % (JCGM 100, table G.1, from memory). */
  it.each([
    [1, 0.6827],
    [2, 0.9545],
    [3, 0.9973],
  ])("limits %d u to either side hold %d", (apart, share) => {
    const limits = { lower: 10 - apart, upper: 10 + apart };
    expect(probabilityOfConformity(estimate(10, 1), limits)).toBeCloseTo(share, 4);
  });
});
