import { ratioOutcomes } from "../ratio-zone/outcomes.ts";
import { arithmetic, cannotTell, defineRecord } from "../rule-record/index.ts";
import { practice } from "../limit-record/index.ts";
import { roadRatioRecord } from "../road-ratio/record.ts";

/** What the Handbook says of it. */
export const turnsRatioRecord = defineRecord("turns-ratio", {
  title: "Axle ratio by turning",
  reads: "turns of the driveshaft for turns of the wheels: both wheels together, or one with the other held",
  formula: "turns of the shaft over turns of the wheel; twice that where one wheel is held",
  limits: {
    "ratio.most": practice("the greatest ratio of a car's axle", 6, "1", [5, 8]),
    "ratio.spacing-share": roadRatioRecord.limits["ratio.spacing-share"],
  },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["limited-slip", "lift-points"],
  outcomes: {
    "perhaps-doubled": cannotTell(
      "{ratio} is more than any car's axle has: the turns were perhaps doubled before they were written down, and it would be {anyAlternative}. Count again, ten turns at least, as they are.",
    ),
    ...ratioOutcomes("{ratio} by turning the wheels"),
  },
});
