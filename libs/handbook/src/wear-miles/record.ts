import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const wearMilesRecord = defineRecord("wear-miles", {
  title: "Wear against miles",
  reads: "wear of pedals, wheel rim, belts; the odometer; whether the part was retrimmed",
  formula: "heavy wear under a low reading asks whether the reading is the whole of it",
  limits: {
    "wear.low-miles": practice("heavy wear is not expected under this", 30000, "mi", [5000, 100000]),
  },
  source: commonPractice,
  consequence: "papers",
  over: "both-reports",
  strength: "hint",
  cautions: [],
  outcomes: {
    "fits-miles": holds("Wear of {parts} fits {miles}."),
    "more-wear-than-miles": breaks(
      "worth",
      "Heavy wear of {parts} at {miles}: ask whether the reading is the whole of it.",
    ),
    "range-covers": cannotTell("Wear of {parts} at {miles}: too near to tell."),
    retrimmed: cannotTell("Every part that shows wear was retrimmed."),
    "too-few": cannotTell("Wear or the odometer was not read."),
  },
});
