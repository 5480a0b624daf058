import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { derived, judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { oilPressureRecord } from "./record.ts";

export type OilPressureInput = {
  /** psi */
  readonly pressure: Estimate;
  readonly engineSpeed: Estimate;
  /** °C; a condition of the test, taken by its value. */
  readonly oilTemperature?: number;
  /** The maker's least pressure at this speed, psi, entered with its source. */
  readonly makersLeast?: number;
};

/**
 * Oil pressure with the oil hot: 10 psi for each 1,000 rpm, or the maker's own figure, which goes before it.
 *
 * Source: common practice, no source.
 *
 * @example
 * oilPressure({ pressure: exactly(15), engineSpeed: exactly(2000), oilTemperature: 95 }).reason // "low"
 */
export const oilPressure = (input: OilPressureInput, firm: FirmLimits = {}): RuleResult => {
  const { pressure, engineSpeed, oilTemperature, makersLeast } = input;
  const [perThousand, hot] = [
    oilPressureRecord.limit("oil-pressure.per-1000-rpm", firm),
    oilPressureRecord.limit("oil-pressure.hot", firm),
  ];
  const least = makersLeast ?? (perThousand.value * engineSpeed.value) / 1000;
  const detail = {
    figures: {
      pressure: figure(pressure.value, "psi", pressure.standardUncertainty),
      engineSpeed: figure(engineSpeed.value, "rpm", engineSpeed.standardUncertainty),
      least: figure(least, "psi"),
      ...(makersLeast === undefined ? {} : { makersLeast: figure(makersLeast, "psi") }),
      ...(oilTemperature === undefined ? {} : { oilTemperature: figure(oilTemperature, "degC") }),
    },
    limits: makersLeast === undefined ? [perThousand, hot] : [hot],
  };
  if (oilTemperature === undefined) return oilPressureRecord.answer("temperature-unknown", detail);
  if (oilTemperature < hot.value) return oilPressureRecord.answer("not-hot", detail);
  const perRpm = makersLeast === undefined ? perThousand.value / 1000 : 0;
  const over = derived(pressure.value - least, [pressure, { ...engineSpeed, sensitivity: perRpm }]);
  const low = makersLeast === undefined ? "low" : "under-makers";
  const reason = ({ holds: "enough", breaks: low, "cannot-tell": "range-covers" } as const)[
    judge(over, { low: 0 })
  ];
  return oilPressureRecord.answer(reason, detail);
};
