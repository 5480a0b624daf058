import { ratioOutcomes } from "../ratio-zone/outcomes.ts";
import { arithmetic, defineRecord } from "../rule-record/index.ts";
import { roadRatioRecord } from "../road-ratio/record.ts";

/** What the Handbook says of it. */
export const turnsRatioRecord = defineRecord("turns-ratio", {
  title: "Axle ratio by turning",
  reads: "turns of the driveshaft for turns of the wheels: both wheels together, or one with the other held",
  formula: "turns of the shaft over turns of the wheel; twice that where one wheel is held",
  limits: { "ratio.spacing-share": roadRatioRecord.limits["ratio.spacing-share"] },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["limited-slip", "lift-points"],
  outcomes: { ...ratioOutcomes("{ratio} by turning the wheels") },
});
