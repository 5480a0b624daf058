import { listed } from "@evenhand/message/listed";
import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { difference } from "@evenhand/measurement/difference";
import type { Estimate } from "@evenhand/measurement/estimate";
import { derived, judge, spanOf } from "../interval/index.ts";
import { judgeRatio, ratiosWithin } from "../ratio-zone/index.ts";
import { figure } from "../rule-result/index.ts";
import { ratioCombinedRecord } from "./record.ts";
import { valueOf } from "../result-words/index.ts";

/** A way the ratio was found; a tag or a quotient of teeth is quoted rounded, which is its uncertainty. */
export type RatioWay = { readonly way: "tag" | "teeth" | "turns" | "road"; readonly ratio: Estimate };

export type RatioCombinedInput = {
  readonly ways: readonly RatioWay[];
  readonly claimed?: number;
  readonly makers?: readonly number[];
};

const agree = (ways: readonly RatioWay[]): boolean => {
  const pairs = ways.flatMap((a, index) => ways.slice(index + 1).map((b) => difference(a.ratio, b.ratio)));
  return pairs.every((pair) => judge(pair, { low: 0, high: 0 }, pairs.length) !== "breaks");
};

/** Mean weighted by 1/u²; a way without uncertainty goes before all others. */
const weightedMean = (ratios: readonly Estimate[]): Estimate => {
  const exact = ratios.find(({ standardUncertainty }) => standardUncertainty === 0);
  if (exact !== undefined) return exact;
  const weights = ratios.map(({ standardUncertainty }) => standardUncertainty ** -2);
  const total = weights.reduce((sum, weight) => sum + weight, 0);
  const shares = weights.map((weight) => weight / total);
  const value = ratios.reduce((sum, ratio, index) => sum + ratio.value * (shares[index] ?? 0), 0);
  return derived(
    value,
    ratios.map((ratio, index) => ({ ...ratio, sensitivity: shares[index] ?? 0 })),
  );
};

/**
 * Axle ratio, all ways together: where no two ways contradict each other, their weighted mean is set against the
 * claim. Where two do, a reading is wrong or the axle is not what its tag says: that stays undecided here.
 *
 * Source: arithmetic on the figures read (weighted mean of independent estimates).
 *
 * @example
 * ratioCombined({
 *   ways: [{ way: "turns", ratio: estimate(3.22, 0.05) }, { way: "road", ratio: estimate(3.25, 0.05) }],
 *   claimed: 3.58, makers: [3.23, 3.58],
 * }).reason // "other-ratio"
 */
export const ratioCombined = (
  { ways, claimed, makers }: RatioCombinedInput,
  firm: FirmLimits = {},
): RuleResult => {
  const spacing = ratioCombinedRecord.limit("ratio.spacing-share", firm);
  const figures = Object.fromEntries(
    ways.map(({ way, ratio }) => [way, figure(ratio.value, "1", ratio.standardUncertainty)]),
  );
  const words = { ways: listed(ways.map(({ way, ratio }) => valueOf(way, ratio.value.toFixed(2)))) };
  if (ways.length < 2) return ratioCombinedRecord.answer("too-few", { figures, words });
  if (!agree(ways)) return ratioCombinedRecord.answer("ways-disagree", { figures, words });
  const mean = weightedMean(ways.map(({ ratio }) => ratio));
  const span = spanOf(mean);
  const combined = { ...figures, ratio: figure(mean.value, "1", mean.standardUncertainty) };
  const detail = { words, limits: [spacing], alternatives: ratiosWithin(span, makers) };
  if (claimed === undefined) return ratioCombinedRecord.answer("no-claim", { ...detail, figures: combined });
  return ratioCombinedRecord.answer(judgeRatio(span, { claimed, makers }, spacing.value), {
    ...detail,
    figures: { ...combined, claimed: figure(claimed) },
  });
};
