import { ratioOutcomes } from "../ratio-zone/outcomes.ts";
import { arithmetic, cannotTell, defineRecord } from "../rule-record/index.ts";
import { roadRatioRecord } from "../road-ratio/record.ts";

/** What the Handbook says of it. */
export const ratioCombinedRecord = defineRecord("ratio-combined", {
  title: "Axle ratio, all ways together",
  reads: "the ratio by tag, by teeth, by turning and from the road, and the ratio claimed",
  formula: "where the ways do not contradict each other, their mean weighted by their uncertainties",
  limits: { "ratio.spacing-share": roadRatioRecord.limits["ratio.spacing-share"] },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["road-consent"],
  outcomes: {
    ...ratioOutcomes("{ratio} from all ways together ({ways})"),
    "ways-disagree": cannotTell(
      "The ways contradict each other ({ways}): a reading is wrong, or the axle is not what its tag says.",
    ),
    "too-few": cannotTell("Fewer than two ways to the ratio were taken."),
  },
});
