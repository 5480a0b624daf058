import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { limitUse } from "../limits/index.ts";
import { figure, ruleResult } from "../rule-result/index.ts";

export type TeethInput = {
  readonly ring: number;
  readonly pinion: number;
  readonly claimed?: number;
  readonly makers?: readonly number[];
};

/**
 * Axle ratio by teeth: ring over pinion, set against the claim and the maker's list, which quote it rounded.
 *
 * Source: arithmetic on the figures read.
 *
 * @example teeth({ ring: 41, pinion: 11, claimed: 3.73 }).reason // "claimed-ratio"
 */
export const teeth = ({ ring, pinion, claimed, makers }: TeethInput, firm: FirmLimits = {}): RuleResult => {
  const rounding = limitUse("ratio.rounding", firm);
  const ratio = ring / pinion;
  const near = (quoted: number): boolean => Math.abs(quoted - ratio) <= rounding.value;
  const figures = { ring: figure(ring), pinion: figure(pinion), ratio: figure(ratio) };
  const detail = { figures, limits: [rounding] };
  if (makers !== undefined && !makers.some(near)) return ruleResult("teeth", "not-the-makers", detail);
  if (claimed === undefined) return ruleResult("teeth", "no-claim", detail);
  return ruleResult("teeth", near(claimed) ? "claimed-ratio" : "other-ratio", {
    ...detail,
    figures: { ...figures, claimed: figure(claimed) },
  });
};
