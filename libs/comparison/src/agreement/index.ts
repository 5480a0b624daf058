import type { Agreement, Entry, GradeFigures } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { cohenKappa } from "@evenhand/measurement/cohen-kappa";
import { gwetAgreement } from "@evenhand/measurement/gwet-agreement";
import { krippendorffAlpha } from "@evenhand/measurement/krippendorff-alpha";
import { observedAgreement } from "@evenhand/measurement/observed-agreement";
import { gradeStretch, houseGradeOf, houseGrades } from "@evenhand/sheet/grade-scale";
import { statisticOf } from "../statistic/index.ts";

/** The house grades of one item, counted from the worst, by each side. */
type Pair = readonly [a: number, b: number];

const gradeOf = (stretch: GradeFigures["a"]): number => houseGrades.indexOf(houseGradeOf(stretch));

type Graded = Pick<Report, "findings" | "scales">;

/** What was graded blind: of a place that was looked at twice, at the first look. */
const blindStretch = (
  { blind, first }: Finding,
  stretch: GradeFigures["b"],
  { scales }: Graded,
): GradeFigures["b"] | undefined => {
  if (first === undefined) return blind === true ? stretch : undefined;
  if (first.blind !== true || first.answer.kind !== "grade") return undefined;
  const [low, high] = gradeStretch(first.answer, scales) ?? stretch;
  return [low, high];
};

const blindPairs = (entries: readonly Entry[], b: Graded): Pair[] => {
  const pairs: Pair[] = [];
  for (const { figures, finding } of entries) {
    const found = finding.b === null ? undefined : b.findings[finding.b];
    if (figures?.of !== "grade" || found === undefined) continue;
    const stretch = blindStretch(found, figures.b, b);
    if (stretch !== undefined) pairs.push([gradeOf(figures.a), gradeOf(stretch)]);
  }
  return pairs;
};

const countsOf = (pairs: readonly Pair[]): number[][] => {
  const counts = houseGrades.map(() => houseGrades.map(() => 0));
  for (const [a, b] of pairs) {
    const row = counts[a];
    if (row !== undefined) row[b] = (row[b] ?? 0) + 1;
  }
  return counts;
};

/**
 * How well the two sides agree on graded items the second side answered before it was shown any statement on them,
 * each grade taken as the house grade its middle lies in, and of a place looked at twice the first one: observed agreement, Cohen's kappa with linear and quadratic
 * weights, Gwet's AC2 with quadratic weights, Krippendorff's alpha for ordered grades; each with its interval, and
 * "too few" under ten items.
 *
 * @example agreementOf(entries, inspection).kappaLinear // { state: "too-few", n: 4, needed: 10 }
 */
export const agreementOf = (entries: readonly Entry[], b: Graded): Agreement => {
  const pairs = blindPairs(entries, b);
  const counts = countsOf(pairs);
  return {
    n: pairs.length,
    observed: statisticOf(observedAgreement(counts)),
    kappaLinear: statisticOf(cohenKappa(counts, { weights: "linear" })),
    kappaQuadratic: statisticOf(cohenKappa(counts, { weights: "quadratic" })),
    gwetAC2: statisticOf(gwetAgreement(counts, { weights: "quadratic" })),
    krippendorffAlpha: statisticOf(krippendorffAlpha(pairs, "ordinal")),
  };
};
