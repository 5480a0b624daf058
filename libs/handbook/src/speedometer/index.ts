import type { Figure, FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { productOf } from "../interval/index.ts";
import { needleError } from "../needle-error/index.ts";
import { figure } from "../rule-result/index.ts";
import { speedometerRecord } from "./record.ts";

export type SpeedometerInput = {
  /** Indicated and true speed at the same moment, mph. */
  readonly indicated: Estimate;
  readonly satellite: Estimate;
  /** Diameter of the tire fitted, in. */
  readonly fittedDiameter?: Estimate;
};

/** The diameter the instrument is right for. */
const explaining = ({ indicated, satellite, fittedDiameter }: SpeedometerInput): Record<string, Figure> => {
  if (fittedDiameter === undefined) return {};
  const { value, standardUncertainty } = productOf(1, [
    [fittedDiameter, 1],
    [indicated, 1],
    [satellite, -1],
  ]);
  return { explainingDiameter: figure(value, "in", standardUncertainty) };
};

/**
 * Speedometer error, and the tire that would explain it: the instrument counts turns, so it is right for a tire
 * of the fitted diameter × indicated / true.
 *
 * Source: arithmetic on the figures read; the error that matters is common practice, no source.
 *
 * @example
 * speedometer({ indicated: exactly(69), satellite: exactly(60), fittedDiameter: exactly(25) })
 * // reason "reads-high"; figures error 15 %, explainingDiameter 28.75 in
 */
export const speedometer = (input: SpeedometerInput, firm: FirmLimits = {}): RuleResult => {
  const { indicated, satellite } = input;
  const [share, slowest] = [
    speedometerRecord.limit("speedometer.share", firm),
    speedometerRecord.limit("ratio.slowest", firm),
  ];
  const figures = {
    indicated: figure(indicated.value, "mph", indicated.standardUncertainty),
    satellite: figure(satellite.value, "mph", satellite.standardUncertainty),
  };
  if (satellite.value < slowest.value || indicated.value <= 0) {
    return speedometerRecord.answer("too-slow", { figures, limits: [slowest] });
  }
  const { reason, error } = needleError({ indicated, measured: satellite }, share.value);
  return speedometerRecord.answer(reason, {
    figures: { ...figures, error, ...explaining(input) },
    limits: [share],
  });
};
