import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { productOf, spanOf } from "../interval/index.ts";
import { judgeRatio, ratiosWithin } from "../ratio-zone/index.ts";
import { figure } from "../rule-result/index.ts";
import { turnsRatioRecord } from "./record.ts";

export type Turning = {
  readonly shaftTurns: Estimate;
  readonly wheelTurns: number;
  /** Both wheels turned together, or one with the other held: the differential then halves the shaft's turns. */
  readonly wheels: "both" | "one-held";
};

export type TurnsRatioInput = Turning & { readonly claimed?: number; readonly makers?: readonly number[] };

/**
 * Axle ratio by turning: turns of the driveshaft over turns of the wheels, doubled where one wheel was held.
 *
 * @example turnsEstimate({ shaftTurns: exactly(17.9), wheelTurns: 10, wheels: "one-held" }).value // 3.58
 */
export const turnsEstimate = ({ shaftTurns, wheelTurns, wheels }: Turning): Estimate =>
  productOf((wheels === "both" ? 1 : 2) / wheelTurns, [[shaftTurns, 1]]);

/**
 * Whether the turns of one wheel come to more than any car's axle has, and so were perhaps doubled by whoever counted them.
 *
 * @example isPerhapsDoubled({ shaftTurns: exactly(3.55), wheelTurns: 1, wheels: "one-held" }) // true: 7.10
 */
export const isPerhapsDoubled = (turning: Turning, firm: FirmLimits = {}): boolean =>
  turning.wheels === "one-held" &&
  spanOf(turnsEstimate(turning)).high > turnsRatioRecord.limit("ratio.most", firm).value;

/**
 * Axle ratio by turning against the claim.
 *
 * Source: arithmetic on the figures read.
 *
 * @example
 * turnsRatio({ shaftTurns: exactly(32.3), wheelTurns: 10, wheels: "both", claimed: 3.58, makers: [3.23, 3.58] }).reason
 * // "other-ratio"
 */
export const turnsRatio = (input: TurnsRatioInput, firm: FirmLimits = {}): RuleResult => {
  const { claimed, makers } = input;
  const spacing = turnsRatioRecord.limit("ratio.spacing-share", firm);
  const ratio = turnsEstimate(input);
  const span = spanOf(ratio);
  const figures = { ratio: figure(ratio.value, "1", ratio.standardUncertainty) };
  const detail = { figures, limits: [spacing], alternatives: ratiosWithin(span, makers) };
  const most = turnsRatioRecord.limit("ratio.most", firm);
  if (isPerhapsDoubled(input, firm))
    return turnsRatioRecord.answer("perhaps-doubled", {
      figures,
      limits: [most],
      alternatives: [(ratio.value / 2).toFixed(2)],
    });
  if (claimed === undefined) return turnsRatioRecord.answer("no-claim", detail);
  return turnsRatioRecord.answer(judgeRatio(span, { claimed, makers }, spacing.value), {
    ...detail,
    figures: { ...figures, claimed: figure(claimed) },
  });
};
