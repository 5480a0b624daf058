import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import { figure } from "../rule-result/index.ts";
import { teethRecord } from "./record.ts";

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
  const rounding = teethRecord.limit("ratio.rounding", firm);
  const ratio = ring / pinion;
  const near = (quoted: number): boolean => Math.abs(quoted - ratio) <= rounding.value;
  const figures = { ring: figure(ring), pinion: figure(pinion), ratio: figure(ratio) };
  const detail = { figures, limits: [rounding] };
  if (makers !== undefined && !makers.some(near)) return teethRecord.answer("not-the-makers", detail);
  if (claimed === undefined) return teethRecord.answer("no-claim", detail);
  return teethRecord.answer(near(claimed) ? "claimed-ratio" : "other-ratio", {
    ...detail,
    figures: { ...figures, claimed: figure(claimed) },
  });
};
