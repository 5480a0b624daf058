import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { chargingRecord } from "./record.ts";

export type ChargingInput = {
  /** V, engine running. */
  readonly volts: Estimate;
  /** rpm; a condition of the test, taken by its value. */
  readonly engineSpeed?: number;
  readonly system: 6 | 12;
  readonly machine: "alternator" | "generator";
};

/**
 * Charging voltage within the band of the system, at 1,500 to 2,000 rpm. A generator is never judged at idle.
 *
 * Source: common practice, no source.
 *
 * @example
 * charging({ volts: exactly(12.6), engineSpeed: 1800, system: 12, machine: "alternator" }).reason // "too-low"
 */
export const charging = (input: ChargingInput, firm: FirmLimits = {}): RuleResult => {
  const { volts, engineSpeed, system, machine } = input;
  const [low, high] = [
    chargingRecord.limit(`charging.low-${system}`, firm),
    chargingRecord.limit(`charging.high-${system}`, firm),
  ];
  const [slowest, fastest] = [
    chargingRecord.limit("charging.rpm-low", firm),
    chargingRecord.limit("charging.rpm-high", firm),
  ];
  const detail = {
    figures: {
      volts: figure(volts.value, "V", volts.standardUncertainty),
      ...(engineSpeed === undefined ? {} : { engineSpeed: figure(engineSpeed, "rpm") }),
    },
    words: { machine },
    limits: [low, high, slowest, fastest],
  };
  if (engineSpeed === undefined) return chargingRecord.answer("speed-unknown", detail);
  if (machine === "generator" && engineSpeed < slowest.value)
    return chargingRecord.answer("generator-at-idle", detail);
  if (engineSpeed < slowest.value || engineSpeed > fastest.value)
    return chargingRecord.answer("other-speed", detail);
  const breaking = volts.value < low.value ? "too-low" : "too-high";
  const verdict = judge(volts, { low: low.value, high: high.value });
  return chargingRecord.answer(
    ({ holds: "charges", breaks: breaking, "cannot-tell": "range-covers" } as const)[verdict],
    detail,
  );
};
