import type { FirmLimits } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { rectangular } from "@evenhand/measurement/type-b";
import { derived } from "../interval/index.ts";
import { tireDiameterRecord } from "../tire-diameter/record.ts";

/**
 * Distance a tire rolls in one turn: 0.97 × π × diameter, within ± 1.5 % (both common practice, no source). A
 * rollout measured on the car goes before it.
 *
 * @param diameter overall diameter; the result is in its unit
 * @example rollingCircumference({ value: 28, standardUncertainty: 0, degreesOfFreedom: Infinity }).value // 85.32…
 */
export const rollingCircumference = (diameter: Estimate, firm: FirmLimits = {}): Estimate => {
  const share = tireDiameterRecord.limit("tire.rolling-share", firm).value * Math.PI;
  const value = share * diameter.value;
  const tolerance = rectangular(tireDiameterRecord.limit("tire.rolling-tolerance", firm).value * value);
  return derived(value, [{ ...diameter, sensitivity: share }, { standardUncertainty: tolerance }]);
};
