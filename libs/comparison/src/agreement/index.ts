import type { Agreement, Entry, GradeFigures, Statistic } from "@evenhand/shared/comparison";
import type { Finding } from "@evenhand/shared/finding";
import type { Report } from "@evenhand/shared/report";
import { LEAST_ITEMS } from "@evenhand/measurement/agreement";
import { clusterJackknife } from "@evenhand/measurement/cluster-jackknife";
import { clusterShare } from "@evenhand/measurement/cluster-ratio";
import { cohenKappa } from "@evenhand/measurement/cohen-kappa";
import { gwetAgreement, gwetCoefficient } from "@evenhand/measurement/gwet-agreement";
import { krippendorffAlpha } from "@evenhand/measurement/krippendorff-alpha";
import { gradeStretch, houseGradeOf, houseGrades } from "@evenhand/sheet/grade-scale";
import { statisticOf, tooFew } from "../statistic/index.ts";

/** The house grades of one place, counted from the worst, by each side. */
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

/** By item: the same person's eye for one thing grades all its places. */
const blindPairs = (entries: readonly Entry[], b: Graded): Map<string, Pair[]> => {
  const byItem = new Map<string, Pair[]>();
  for (const { item, figures, finding } of entries) {
    const found = finding.b === null ? undefined : b.findings[finding.b];
    if (figures?.of !== "grade" || found === undefined) continue;
    const stretch = blindStretch(found, figures.b, b);
    if (stretch === undefined) continue;
    const pairs = byItem.get(item) ?? [];
    pairs.push([gradeOf(figures.a), gradeOf(stretch)]);
    byItem.set(item, pairs);
  }
  return byItem;
};

type Counts = number[][];

const count = (counts: Counts, pairs: readonly Pair[], by: 1 | -1): void => {
  for (const [a, b] of pairs) {
    const row = counts[a];
    if (row !== undefined) row[b] = (row[b] ?? 0) + by;
  }
};

const countsOf = (pairs: readonly Pair[]): Counts => {
  const counts = houseGrades.map(() => houseGrades.map(() => 0));
  count(counts, pairs, 1);
  return counts;
};

const observedOf = (items: readonly (readonly Pair[])[]): Statistic => {
  if (items.length < LEAST_ITEMS) return tooFew(items.length, LEAST_ITEMS);
  const { estimate, standardError, low, high } = clusterShare(
    items.map((pairs) => ({ total: pairs.filter(([a, b]) => a === b).length, count: pairs.length })),
  );
  return { state: "known", n: items.length, estimate, standardError, low, high };
};

const WEIGHTS = { weights: "quadratic" } as const;

const coefficientFrom = (counts: Counts): number => gwetCoefficient(counts, WEIGHTS.weights);

/** The coefficient of the whole table but one item's places: counts are whole numbers, so that taking off and putting back is exact. */
const coefficientWithout = (pairs: readonly Pair[], counts: Counts): number => {
  count(counts, pairs, -1);
  const coefficient = coefficientFrom(counts);
  count(counts, pairs, 1);
  return coefficient;
};

/** AC2 with items as clusters; never narrower than if every place stood for itself, so that full agreement has an interval too. */
const coefficientOf = (items: readonly (readonly Pair[])[], counts: Counts): Statistic => {
  if (items.length < LEAST_ITEMS) return tooFew(items.length, LEAST_ITEMS);
  const single = statisticOf(gwetAgreement(counts, WEIGHTS));
  if (single.state === "too-few") return single;
  const { standardError, low, high } = clusterJackknife(
    coefficientFrom(counts),
    items.map((pairs) => coefficientWithout(pairs, counts)),
  );
  return {
    ...single,
    n: items.length,
    standardError,
    low: Math.max(-1, Math.min(low, single.low)),
    high: Math.min(1, Math.max(high, single.high)),
  };
};

/**
 * How well the two sides agree on graded items the second side answered before it was shown any statement on them, each grade taken as the
 * house grade its middle lies in, and of a place looked at twice the first one. The observed share and Gwet's AC2 with quadratic weights are
 * what is shown: their intervals take the item as the cluster (`clusterShare`, `clusterJackknife`), since all places of one item are graded
 * by one eye, and say "too few" under ten items. Cohen's kappa with linear and quadratic weights and Krippendorff's alpha for ordered grades
 * stand beside them on demand; their intervals take every place by itself, and are too narrow for it.
 *
 * @returns `n`: how many items
 * @example agreementOf(entries, inspection).gwetAC2 // { state: "too-few", n: 4, needed: 10 }
 */
export const agreementOf = (entries: readonly Entry[], b: Graded): Agreement => {
  const items = Array.from(blindPairs(entries, b).values());
  const pairs = items.flat();
  const counts = countsOf(pairs);
  return {
    n: items.length,
    observed: observedOf(items),
    kappaLinear: statisticOf(cohenKappa(counts, { weights: "linear" })),
    kappaQuadratic: statisticOf(cohenKappa(counts, WEIGHTS)),
    gwetAC2: coefficientOf(items, counts),
    krippendorffAlpha: statisticOf(krippendorffAlpha(pairs, "ordinal")),
  };
};
