import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { needleError } from "../needle-error/index.ts";
import { figure } from "../rule-result/index.ts";
import { tachometerRecord } from "./record.ts";

export type TachometerInput = {
  /** Revolutions as the car shows them and by a shop tachometer, at the same moment, rpm. */
  readonly indicated: Estimate;
  readonly measured: Estimate;
};

/**
 * Error of the car's own tachometer, and whether it matters: a revolution read off the dashboard is only as good
 * as the needle that shows it.
 *
 * Source: arithmetic on the figures read; the error that matters is common practice, no source.
 *
 * @example
 * tachometer({ indicated: exactly(2000), measured: exactly(2400) })
 * // reason "reads-low"; figures error −16.7 %
 */
export const tachometer = (input: TachometerInput, firm: FirmLimits = {}): RuleResult => {
  const { indicated, measured } = input;
  const [share, slowest] = [
    tachometerRecord.limit("tachometer.share", firm),
    tachometerRecord.limit("tachometer.slowest", firm),
  ];
  const figures = {
    indicated: figure(indicated.value, "rpm", indicated.standardUncertainty),
    measured: figure(measured.value, "rpm", measured.standardUncertainty),
  };
  if (measured.value < slowest.value || indicated.value <= 0) {
    return tachometerRecord.answer("too-slow", { figures, limits: [slowest] });
  }
  const { reason, error } = needleError(input, share.value);
  return tachometerRecord.answer(reason, { figures: { ...figures, error }, limits: [share] });
};
