import type { FirmLimits, RuleResult } from "@evenhand/shared/cross-check";
import type { Estimate } from "@evenhand/measurement/estimate";
import { derived, judge } from "../interval/index.ts";
import { figure } from "../rule-result/index.ts";
import { vacuumRecord } from "./record.ts";

export type VacuumInput = {
  /** inHg, at idle, warm. */
  readonly vacuum: Estimate;
  /** Height above the sea, ft. */
  readonly height?: Estimate;
  readonly needle: "steady" | "dropping" | "drifting" | "fluttering";
  readonly timing: "right" | "late" | "unknown";
  readonly cam: "stock" | "other" | "unknown";
};

const NEEDLE = {
  dropping: "needle-drops",
  drifting: "needle-drifts",
  fluttering: "needle-flutters",
} as const;

/** Why a low reading is not yet wear. */
const lowReason = ({ timing, cam }: VacuumInput) => {
  if (timing === "late") return "late-timing";
  if (timing === "unknown") return "timing-unknown";
  return cam === "unknown" ? "cam-unknown" : "low";
};

/**
 * Manifold vacuum at idle, set to sea level (about 1 inHg for each 1,000 ft), with the needle and the timing. The
 * band is for a stock camshaft; late timing explains a low reading before wear is blamed.
 *
 * Source: common practice, no source.
 *
 * @example
 * vacuum({ vacuum: exactly(14), height: exactly(5000), needle: "steady", timing: "right", cam: "stock" }).reason
 * // "in-band": 19 inHg at sea level
 */
export const vacuum = (input: VacuumInput, firm: FirmLimits = {}): RuleResult => {
  const { vacuum: reading, height, needle, cam } = input;
  const [low, high, perHeight] = [
    vacuumRecord.limit("vacuum.low", firm),
    vacuumRecord.limit("vacuum.high", firm),
    vacuumRecord.limit("vacuum.height", firm),
  ];
  const figures = { vacuum: figure(reading.value, "inHg", reading.standardUncertainty) };
  const limits = [low, high, perHeight];
  if (cam === "other") return vacuumRecord.answer("cam-not-stock", { figures, limits });
  if (height === undefined) return vacuumRecord.answer("height-unknown", { figures, limits });
  const perFoot = perHeight.value / 1000;
  const corrected = derived(reading.value + perFoot * height.value, [
    reading,
    { ...height, sensitivity: perFoot },
  ]);
  const detail = {
    figures: {
      ...figures,
      height: figure(height.value, "ft", height.standardUncertainty),
      corrected: figure(corrected.value, "inHg", corrected.standardUncertainty),
    },
    limits,
  };
  if (needle !== "steady")
    return vacuumRecord.answer(cam === "unknown" ? "cam-unknown" : NEEDLE[needle], detail);
  const verdict = judge(corrected, { low: low.value, high: high.value });
  if (verdict === "holds") return vacuumRecord.answer("in-band", detail);
  if (verdict === "cannot-tell") return vacuumRecord.answer("range-covers", detail);
  return vacuumRecord.answer(corrected.value > high.value ? "high" : lowReason(input), detail);
};
