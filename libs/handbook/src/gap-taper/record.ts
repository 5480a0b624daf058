import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const gapTaperRecord = defineRecord("gap-taper", {
  title: "Taper of gaps",
  reads: "width of a gap at its two ends, left and right",
  formula: "one end less the other; left less right",
  limits: { "gap.taper": practice("taper of a gap, or left against right", 3, "mm", [1, 10]) },
  source: commonPractice,
  consequence: "appearance",
  over: "one-report",
  strength: "hint",
  cautions: [],
  outcomes: {
    even: holds("The gaps are even; the most is {difference}, {gap}."),
    tapers: breaks("repair", "Gaps out of true: {alternatives}. Hinges, hanging, or a repair."),
    "sides-differ": breaks("repair", "Left and right differ: {alternatives}. Hanging, or a repair."),
    "range-covers": cannotTell("The most is {difference}, {gap}: too near the limit to tell."),
    "too-few": cannotTell("No gap was measured at both ends."),
  },
});
