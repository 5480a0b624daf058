import type { FirmLimits } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { rectangular } from "@evenhand/measurement/type-b";
import { derived } from "../interval/index.ts";
import { limitInForce } from "../limit-record/index.ts";
import { rollingLimits } from "./limits.ts";

const inForce = (id: keyof typeof rollingLimits, firm: FirmLimits): number =>
  limitInForce(id, rollingLimits[id], firm).value;

/**
 * Distance a tire rolls in one turn: 0.97 × π × diameter, within ± 1.5 % (both common practice, no source). A
 * rollout measured on the car goes before it.
 *
 * @param diameter overall diameter; the result is in its unit
 * @example rollingCircumference({ value: 28, standardUncertainty: 0, degreesOfFreedom: Infinity }).value // 85.32…
 */
export const rollingCircumference = (diameter: Estimate, firm: FirmLimits = {}): Estimate => {
  const share = inForce("tire.rolling-share", firm) * Math.PI;
  const value = share * diameter.value;
  const tolerance = rectangular(inForce("tire.rolling-tolerance", firm) * value);
  return derived(value, [{ ...diameter, sensitivity: share }, { standardUncertainty: tolerance }]);
};
