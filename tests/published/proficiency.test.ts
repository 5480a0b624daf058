import { describe, expect, it } from "vitest";
import { eNumber, readENumber } from "@evenhand/measurement/e-number";
import { combineUncertainty } from "@evenhand/measurement/combine-uncertainty";
import { readZetaScore, zetaScore } from "@evenhand/measurement/zeta-score";
import gear from "../../fixtures/published/proficiency.json" with { type: "json" };

/** NIST Dataplot reference manual, commands ZETA SCORE and EN SCORE, data GEAR.DAT; the listing truncates. */
describe("zeta score and E_n on GEAR.DAT", () => {
  it.each(gear.rows)("batch $batch, $x", ({ x, u_batch, zeta, En, z }) => {
    const sigma = gear.sigma_pt;
    const difference = x - gear.assigned_value;
    const u = combineUncertainty([{ standardUncertainty: u_batch }, { standardUncertainty: sigma }]);
    expect(Math.abs(zetaScore(difference, u) - zeta)).toBeLessThan(0.001);
    expect(Math.abs(eNumber(difference, 2 * u_batch, 2 * sigma) - En)).toBeLessThan(0.001);
    expect(Math.abs(zetaScore(difference, sigma) - z)).toBeLessThan(0.001);
  });

  it("reads scores by the published limits", () => {
    const { warning, action } = gear.interpretation.z_zprime_zeta;
    expect([warning, warning + 0.01, action].map(readZetaScore)).toEqual([
      "satisfactory",
      "questionable",
      "unsatisfactory",
    ]);
    expect([gear.interpretation.En.critical, 1.016].map(readENumber)).toEqual([
      "satisfactory",
      "unsatisfactory",
    ]);
  });
});
