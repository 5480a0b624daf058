import { describe, expect, it } from "vitest";
import { cohenKappa } from "@evenhand/measurement/cohen-kappa";
import { dawidSkene } from "@evenhand/measurement/dawid-skene";
import { gwetAgreement, gwetAgreementOfMany } from "@evenhand/measurement/gwet-agreement";
import { krippendorffAlpha } from "@evenhand/measurement/krippendorff-alpha";
import type { Level } from "@evenhand/measurement/krippendorff-alpha";
import { normalQuantile } from "@evenhand/measurement/normal-distribution";
import { observedAgreement } from "@evenhand/measurement/observed-agreement";
import { coverageFactor } from "@evenhand/measurement/student-factor";
import anaesthetists from "../../fixtures/published/dawid-skene.json" with { type: "json" };
import published from "../../fixtures/published/kappa.json" with { type: "json" };
import reliability from "../../fixtures/published/krippendorff.json" with { type: "json" };

type Estimated<T> = Extract<T, { readonly kind: "estimated" }>;

const isEstimated = <T extends { readonly kind: string }>(answer: T): answer is Estimated<T> =>
  answer.kind === "estimated";

const estimated = <T extends { readonly kind: string }>(answer: T): Estimated<T> => {
  if (!isEstimated(answer)) throw new Error(`Not estimated: ${answer.kind}`);
  return answer;
};

const named = (name: string) => {
  const found = published.cases.find((one) => one.name === name);
  if (found === undefined) throw new Error(`No such case: ${name}`);
  return found;
};

/**
 * The limits as published, coefficient ± factor · standard error: the interval that is given out is another one, which
 * holds the true coefficient as often as it says (chance-interval.test.ts), so here these check the standard error.
 */
const plainLimits = (
  { coefficient, standardError }: { readonly coefficient: number; readonly standardError: number },
  factor: number,
): number[] => [-1, 1].map((side) => Math.min(1, coefficient + side * factor * standardError));

const rounded = (values: readonly number[]): number[] => values.map((value) => Number(value.toFixed(3)));

describe("kappa of the SAS 3 × 3 table", () => {
  const { table = [], unweighted, linear, quadratic } = named("SAS 3x3");

  it.each([
    ["unweighted", unweighted],
    ["linear", linear],
  ] as const)("%s", (weights, expected) => {
    const kappa = estimated(cohenKappa(table, { weights }));
    expect(kappa.coefficient).toBeCloseTo(expected?.kappa ?? Number.NaN, 4);
    expect(kappa.standardError).toBeCloseTo(expected?.ase ?? Number.NaN, 4);
    const [low, high] = plainLimits(kappa, normalQuantile(0.975));
    expect(low).toBeCloseTo(expected?.low ?? Number.NaN, 4);
    expect(high).toBeCloseTo(expected?.upp ?? Number.NaN, 4);
    expect(kappa.nullStandardError).toBeCloseTo(expected?.ase0 ?? Number.NaN, 4);
    expect(kappa.z).toBeCloseTo(expected?.z ?? Number.NaN, 4);
  });

  it("quadratic", () => {
    const kappa = estimated(cohenKappa(table, { weights: "quadratic" }));
    expect(kappa.coefficient).toBeCloseTo(quadratic?.kappa ?? Number.NaN, 9);
    expect(kappa.standardError).toBeCloseTo(quadratic?.ase ?? Number.NaN, 9);
  });
});

/** Cohen (1968), the example of diagnoses by two clinicians; CRAN psych, man/kappa.Rd. */
describe("Cohen 1968", () => {
  const { tableProportions = [], n = 0, disagreementWeights = [], full } = named("Cohen 1968");
  const counts = tableProportions.map((row) => row.map((share) => share * n));

  it("kappa", () => {
    const kappa = estimated(cohenKappa(counts));
    expect(kappa.coefficient).toBeCloseTo(0.492, 3);
    expect(kappa.coefficient).toBeCloseTo(full?.kappa ?? Number.NaN, 12);
    expect(kappa.standardError).toBeCloseTo(full?.ase ?? Number.NaN, 12);
  });

  it("weighted kappa, weights of disagreement", () => {
    const kappa = estimated(cohenKappa(counts, { weights: { disagreement: disagreementWeights } }));
    expect(kappa.coefficient).toBeCloseTo(0.348, 3);
    expect(kappa.coefficient).toBeCloseTo(full?.kw ?? Number.NaN, 12);
    expect(kappa.standardError).toBeCloseTo(full?.ase_w ?? Number.NaN, 12);
  });

  it("weighted kappa, weights not symmetric", () => {
    const disagreement = [
      [0, 1, 4],
      [1, 0, 6],
      [2, 2, 0],
    ];
    const kappa = estimated(cohenKappa(counts, { weights: { disagreement } }));
    expect(kappa.coefficient).toBeCloseTo(0.353, 3);
  });
});

describe("Fleiss, Cohen and Everitt 1969", () => {
  const { table = [], agreementWeights = [], ...expected } = named("Fleiss Cohen Everitt 1969");

  it("kappa and both standard errors", () => {
    const kappa = estimated(cohenKappa(table));
    expect(kappa.coefficient).toBeCloseTo(expected.kappa ?? Number.NaN, 9);
    expect(kappa.standardError).toBeCloseTo(expected.ase ?? Number.NaN, 9);
    expect(kappa.nullStandardError).toBeCloseTo(expected.ase0 ?? Number.NaN, 9);
  });

  it("weighted kappa and both standard errors", () => {
    const kappa = estimated(cohenKappa(table, { weights: { agreement: agreementWeights } }));
    expect(kappa.coefficient).toBeCloseTo(expected.kw ?? Number.NaN, 9);
    expect(kappa.standardError).toBeCloseTo(expected.ase_w ?? Number.NaN, 9);
    expect(kappa.nullStandardError).toBeCloseTo(expected.ase0_w ?? Number.NaN, 9);
  });
});

/** Gwet's own package irrCAC: README and vignettes. */
describe("Gwet's tables", () => {
  const { table = [], unweighted, quadratic, linear } = named("irrCAC cont3x3abstractors");

  it("abstractors, unweighted: percent agreement, kappa, AC1", () => {
    expect(estimated(observedAgreement(table)).coefficient).toBeCloseTo(unweighted?.pa ?? Number.NaN, 12);
    const kappa = estimated(cohenKappa(table));
    expect(kappa.coefficient).toBeCloseTo(unweighted?.kappa ?? Number.NaN, 7);
    expect(kappa.standardError).toBeCloseTo(unweighted?.se ?? Number.NaN, 8);
    const ac1 = estimated(gwetAgreement(table));
    expect(ac1.coefficient).toBeCloseTo(unweighted?.ac1 ?? Number.NaN, 7);
    expect(ac1.standardError).toBeCloseTo(unweighted?.ac1_se ?? Number.NaN, 8);
    expect(rounded(plainLimits(ac1, coverageFactor(99)))).toEqual([0.764, 0.935]);
  });

  it("abstractors, quadratic: percent agreement, kappa, AC2", () => {
    const observed = estimated(observedAgreement(table, { weights: "quadratic" }));
    expect(observed.coefficient).toBeCloseTo(quadratic?.pa ?? Number.NaN, 12);
    const kappa = estimated(cohenKappa(table, { weights: "quadratic" }));
    expect(kappa.coefficient).toBeCloseTo(quadratic?.kappa ?? Number.NaN, 7);
    expect(kappa.standardError).toBeCloseTo(quadratic?.se ?? Number.NaN, 8);
    const ac2 = estimated(gwetAgreement(table, { weights: "quadratic" }));
    expect(ac2.coefficient).toBeCloseTo(quadratic?.ac2 ?? Number.NaN, 7);
    expect(ac2.standardError).toBeCloseTo(quadratic?.ac2_se ?? Number.NaN, 8);
  });

  it("abstractors, linear kappa", () => {
    const kappa = estimated(cohenKappa(table, { weights: "linear" }));
    expect(kappa.coefficient).toBeCloseTo(linear?.kappa ?? Number.NaN, 9);
    expect(kappa.standardError).toBeCloseTo(linear?.ase ?? Number.NaN, 9);
  });

  it("abstractors, Krippendorff's alpha from the same pairs", () => {
    const units = table.flatMap((row, i) =>
      row.flatMap((count, j) => Array.from({ length: count }, () => [i, j])),
    );
    const nominal = estimated(krippendorffAlpha(units, "nominal"));
    expect(nominal.coefficient).toBeCloseTo(unweighted?.krippendorff ?? Number.NaN, 7);
    // krippen2.table divides by n, not by n − 1.
    const standardError = (unweighted?.krippendorff_se ?? Number.NaN) * Math.sqrt(100 / 99);
    expect(nominal.standardError).toBeCloseTo(standardError, 8);
    const interval = estimated(krippendorffAlpha(units, "interval"));
    expect(interval.coefficient).toBeCloseTo(quadratic?.krippendorff ?? Number.NaN, 7);
  });

  it("six psychiatrists, fifteen patients: AC1 and alpha", () => {
    const { rows, ac1, ac1_se, ac1_ci, krippendorff } = published.fleiss.irrCACdistrib6;
    const agreement = estimated(gwetAgreementOfMany(rows));
    expect(agreement.coefficient).toBeCloseTo(ac1, 7);
    expect(agreement.standardError).toBeCloseTo(ac1_se, 8);
    expect(rounded(plainLimits(agreement, coverageFactor(14)))).toEqual(ac1_ci);
    const units = rows.map((row) => row.flatMap((count, k) => Array.from({ length: count }, () => k)));
    expect(estimated(krippendorffAlpha(units, "nominal")).coefficient).toBeCloseTo(krippendorff, 7);
  });

  it("four raters with gaps: alpha's standard error", () => {
    const observers = reliability.example1.rows_are_observers;
    const units = (observers[0] ?? []).map((_, i) => observers.map((row) => row[i] ?? null));
    const alpha = estimated(krippendorffAlpha(units, "nominal"));
    expect(alpha.standardError).toBeCloseTo(published.raw4raters.alpha_se, 5);
  });

  it("four raters with gaps: AC1", () => {
    const { ac1, ac1_se, ac1_ci, pe } = published.raw4raters;
    const observers = reliability.example1.rows_are_observers;
    const items = (observers[0] ?? []).map((_, i) =>
      [1, 2, 3, 4, 5].map((category) => observers.filter((row) => row[i] === category).length),
    );
    const agreement = estimated(gwetAgreementOfMany(items));
    expect(agreement.coefficient).toBeCloseTo(ac1, 5);
    expect(agreement.standardError).toBeCloseTo(ac1_se, 5);
    expect(agreement.expected).toBeCloseTo(pe, 7);
    expect(rounded(plainLimits(agreement, coverageFactor(11)))).toEqual(ac1_ci);
  });
});

/** Krippendorff (2011), Computing Krippendorff's Alpha-Reliability, example of 4 observers and 12 units. */
describe("Krippendorff's alpha", () => {
  const { rows_are_observers: observers, expected3dp, computed } = reliability.example1;
  const units = (observers[0] ?? []).map((_, i) => observers.map((row) => row[i] ?? null));

  it.each(["nominal", "ordinal", "interval", "ratio"] as const satisfies Level[])("%s", (level) => {
    const alpha = estimated(krippendorffAlpha(units, level));
    expect(Number(alpha.coefficient.toFixed(3))).toBe(expected3dp[level]);
    expect(alpha.coefficient).toBeCloseTo(computed[level], 13);
    expect(alpha.items).toBe(11);
  });
});

/** Dawid and Skene (1979), table 1: five anaesthetists, forty-five patients, the first of them three times. */
describe("Dawid and Skene's anaesthetists", () => {
  const ratings = anaesthetists.patients.flatMap((patient, item) => [
    ...patient.obs1.map((category) => ({ item, rater: 0, category: category - 1 })),
    ...[patient.obs2, patient.obs3, patient.obs4, patient.obs5].map((category, i) => ({
      item,
      rater: i + 1,
      category: category - 1,
    })),
  ]);
  const result = dawidSkene(ratings, anaesthetists.categories.length);

  it("has the class marginals, published as .40 .42 .11 .07", () => {
    expect(result.prevalence.map((share) => Number(share.toFixed(2)))).toEqual([0.4, 0.42, 0.11, 0.07]);
    for (const [k, share] of anaesthetists.em.classMarginals.entries()) {
      expect(result.prevalence[k]).toBeCloseTo(share, 6);
    }
  });

  it("assigns every patient", () => {
    const classes = result.posterior.map((row) => row.indexOf(Math.max(...row)) + 1);
    expect(classes).toEqual(anaesthetists.em.mapClass);
  });
});
