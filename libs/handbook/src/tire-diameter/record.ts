import { practice } from "../limit-record/index.ts";
import { rollingLimits } from "../rolling-circumference/limits.ts";
import { breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const tireDiameterRecord = defineRecord("tire-diameter", {
  title: "Tire diameter",
  reads: "a tire size, and a measured rollout or a second size",
  formula:
    "diameter = rim + 2 × section × aspect; rolling circumference = the rollout measured, else 0.97 × π × diameter ± 1.5 %",
  limits: {
    ...rollingLimits,
    "tire.rollout-share": practice(
      "measured rollout from the size's own circumference, as a share",
      0.03,
      "1",
      [0.005, 0.1],
    ),
  },
  source: {
    kind: "handbook",
    text: "what the size says: nominal diameter from section, aspect and rim; the rolling share is common practice, no source",
  },
  consequence: "mechanical",
  over: "both-reports",
  strength: "hint",
  cautions: [],
  note: "Equivalent sizes are advice, never a fault: sources differ by one size.",
  outcomes: {
    "rollout-fits": holds(
      "{size} rolls {circumference} in a turn by its size, {rollout} as measured: they fit.",
    ),
    "rollout-differs": breaks(
      "small",
      "{size} rolls {circumference} in a turn by its size, but {rollout} as measured.",
    ),
    "equal-in-diameter": holds(
      "{size} ({diameter}) and {other} ({otherDiameter}) have much the same diameter.",
    ),
    "other-diameter": cannotTell(
      "{size} is {diameter} over all, {other} {otherDiameter}: a different diameter, which is no fault in itself.",
    ),
    "range-covers": cannotTell(
      "{size} is {diameter} over all by its size; what it was set against is neither clearly the same nor clearly another.",
    ),
    "size-unreadable": cannotTell("{size} could not be read as a tire size."),
    "nothing-to-set-against": cannotTell("{size} is {diameter} over all by its size."),
  },
});
