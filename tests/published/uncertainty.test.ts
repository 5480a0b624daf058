import { describe, expect, it } from "vitest";
import { combineUncertainty, contribution } from "@evenhand/measurement/combine-uncertainty";
import { expandedUncertainty } from "@evenhand/measurement/expanded-uncertainty";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import { arcsine, rectangular, resolution, trapezoid, triangular } from "@evenhand/measurement/type-b";
import { welchSatterthwaite } from "@evenhand/measurement/welch-satterthwaite";
import gum from "../../fixtures/published/gum.json" with { type: "json" };

describe("type B evaluations, JCGM 100:2008, 4.3.7 and 4.3.9", () => {
  it.each(gum.typeB.cases)("a = $a, $dist: u = $u", ({ a, dist, u }) => {
    expect(dist === "rect" ? rectangular(a) : triangular(a)).toBeCloseTo(u, 14);
  });
});

/** JCGM 100:2008, F.2.2.1 and 4.3.9; JCGM 101:2008, 6.4.6; from memory. */
describe("type B evaluations of other shapes", () => {
  it("a step is worth 0.29 of itself", () => {
    expect(Number(resolution(1).toFixed(2))).toBe(0.29);
    expect(resolution(0.5) ** 2).toBeCloseTo(0.25 / 12, 15);
  });

  it("a trapezoid goes from triangle to rectangle", () => {
    expect(trapezoid(3, 0) ** 2).toBeCloseTo(9 / 6, 14);
    expect(trapezoid(3, 1) ** 2).toBeCloseTo(9 / 3, 14);
    expect(trapezoid(3, 0.5) ** 2).toBeCloseTo((9 * 1.25) / 6, 14);
  });

  it("a sine's swing is worth a over the root of two", () => {
    expect(arcsine(3) ** 2).toBeCloseTo(4.5, 14);
  });
});

/** 50 mL flask: tolerance, filling and temperature; result at http://www.ut.ee/katsekoda/GUM_examples/. */
describe("the 50 mL flask", () => {
  it("has the published combined standard uncertainty", () => {
    const { tolerance_halfwidth_ml, filling_halfwidth_ml } = gum.flask50ml.inputs;
    const components = [tolerance_halfwidth_ml, filling_halfwidth_ml, 50 * 0.00021 * 4];
    const u = combineUncertainty(
      components.map((halfWidth) => ({ standardUncertainty: rectangular(halfWidth) })),
    );
    expect(u).toBeCloseTo(gum.flask50ml.expected_u_ml, 14);
  });
});

/** JCGM 100:2008, H.1: calibration of an end gauge of nominally 50 mm; all lengths in nanometers. */
describe("the end gauge of H.1", () => {
  const { inputs, expected, contributions_nm, dof } = gum.H1_endGauge;
  const [length = 0, uLength = 0] = inputs.ls_nm;
  const components = [
    { standardUncertainty: uLength, degreesOfFreedom: dof[0] },
    { standardUncertainty: inputs.d_nm[1] ?? 0, degreesOfFreedom: dof[1] },
    {
      standardUncertainty: inputs.dTheta_C[1] ?? 0,
      sensitivity: -length * (inputs.alphaS_perC[0] ?? 0),
      degreesOfFreedom: dof[3],
    },
    {
      standardUncertainty: inputs.dAlpha_perC[1] ?? 0,
      sensitivity: -length * (inputs.theta_C[0] ?? 0),
      degreesOfFreedom: dof[2],
    },
  ];

  it("has the published contributions", () => {
    const published = [contributions_nm[0], contributions_nm[1], contributions_nm[3], contributions_nm[2]];
    expect(components.map((component) => Number(contribution(component).toFixed(1)))).toEqual([
      published[0],
      published[1],
      16.7, // published 16.6, from the rounded 0.029 °C; 16.675 as given
      published[3],
    ]);
  });

  it("has the published combined uncertainty", () => {
    expect(combineUncertainty(components)).toBeCloseTo(expected.uc_nm, 1);
    expect(Math.round(combineUncertainty(components))).toBe(expected.uc_published);
  });

  it("has the published effective degrees of freedom", () => {
    // H.1.6 truncates; unrounded inputs give 16.7.
    expect(Math.floor(welchSatterthwaite(components))).toBe(expected.nuEff_published);
  });

  it("has the published factor and expanded uncertainty at 99 %", () => {
    const factor = coverageFactor(expected.nuEff_published, 0.99);
    expect(factor).toBeCloseTo(expected.k99, 2);
    const u = combineUncertainty(components);
    const U = expandedUncertainty(
      { standardUncertainty: u, degreesOfFreedom: expected.nuEff_published },
      0.99,
    );
    expect(Math.abs(U - expected.U99_nm)).toBeLessThan(0.2);
    expect(Math.round(U)).toBe(expected.U99_published);
  });
});

describe("Welch–Satterthwaite, CRAN metRology man/w.s.Rd", () => {
  it("has the combined uncertainty and effective degrees of freedom", () => {
    const { inputs, uc, nuEff } = gum.welchSatterthwaite;
    const components = inputs.ui.map((standardUncertainty, i) => ({
      standardUncertainty,
      sensitivity: inputs.ci[i],
      degreesOfFreedom: Number(inputs.df[i] === "Inf" ? Infinity : inputs.df[i]),
    }));
    expect(combineUncertainty(components)).toBeCloseTo(uc, 14);
    expect(welchSatterthwaite(components)).toBeCloseTo(nuEff, 12);
  });
});

/** JCGM 100:2008, table G.2, from memory. */
describe("Student factors of table G.2", () => {
  it.each([
    [1, 13.97, 12.71, 63.66],
    [2, 4.53, 4.3, 9.92],
    [5, 2.65, 2.57, 4.03],
    [10, 2.28, 2.23, 3.17],
    [16, 2.17, 2.12, 2.92],
    [30, 2.09, 2.04, 2.75],
    [50, 2.05, 2.01, 2.68],
  ])("%d degrees of freedom", (degreesOfFreedom, at9545, at95, at99) => {
    expect(coverageFactor(degreesOfFreedom, 0.9545)).toBeCloseTo(at9545, 2);
    expect(coverageFactor(degreesOfFreedom, 0.95)).toBeCloseTo(at95, 2);
    expect(coverageFactor(degreesOfFreedom, 0.99)).toBeCloseTo(at99, 2);
  });

  it("multiply a standard uncertainty to 95 % unless told otherwise", () => {
    const U = expandedUncertainty({ standardUncertainty: 10, degreesOfFreedom: 16 });
    expect(U).toBeCloseTo(21.2, 1);
    expect(expandedUncertainty({ standardUncertainty: 10, degreesOfFreedom: 16 }, 0.99)).toBeCloseTo(29.2, 1);
  });

  it("ends in the normal factors", () => {
    expect(coverageFactor(Infinity, 0.95)).toBeCloseTo(1.96, 3);
    expect(coverageFactor(Infinity, 0.99)).toBeCloseTo(2.576, 3);
  });
});
