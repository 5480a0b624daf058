import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge, productOf } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { displacementRecord } from "./record.ts";

export type DisplacementInput = {
  /** Bore and stroke, in. */
  readonly bore: Estimate;
  readonly stroke: Estimate;
  readonly cylinders: number;
  /** in³ */
  readonly claimed?: number;
};

/**
 * Displacement from bore, stroke and cylinders against the one claimed: π/4 × bore² × stroke × cylinders.
 *
 * Source: arithmetic on the figures read; ± 1 % is common practice, no source.
 *
 * @example
 * displacement({ bore: exactly(3.75), stroke: exactly(3.125), cylinders: 8, claimed: 276 }).figures.displacement
 * // { value: 276.116…, unit: "in3" }
 */
export const displacement = (input: DisplacementInput, firm: FirmLimits = {}): RuleResult => {
  const { bore, stroke, cylinders, claimed } = input;
  const share = displacementRecord.limit("displacement.share", firm);
  const swept = productOf((Math.PI / 4) * cylinders, [
    [bore, 2],
    [stroke, 1],
  ]);
  const figures = {
    bore: figure(bore.value, "in", bore.standardUncertainty),
    stroke: figure(stroke.value, "in", stroke.standardUncertainty),
    cylinders: figure(cylinders),
    displacement: figure(swept.value, "in3", swept.standardUncertainty),
  };
  if (claimed === undefined) return displacementRecord.answer("no-claim", { figures, limits: [share] });
  const overbore = displacementRecord.limit("displacement.overbore", firm);
  // The nominal size stays the engine's name when it is bored over.
  const bored = (bore.value / (bore.value - overbore.value)) ** 2;
  const nominal = claimed * (1 + share.value);
  const verdict = judge(swept, { low: claimed * (1 - share.value), high: nominal * bored });
  const reason = (
    {
      holds: swept.value > nominal ? "overbored" : "as-claimed",
      breaks: "not-as-claimed",
      "cannot-tell": "range-covers",
    } as const
  )[verdict];
  return displacementRecord.answer(reason, {
    figures: { ...figures, claimed: figure(claimed, "in3") },
    limits: [share, overbore],
  });
};
