import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const squareRecord = defineRecord("square", {
  title: "Square",
  reads: "wheelbase left and right, and the two underbody diagonals",
  formula: "left less right, beyond its uncertainty and the limit",
  limits: { "square.difference": practice("wheelbase or diagonal, left against right", 6, "mm", [2, 20]) },
  source: commonPractice,
  consequence: "structure",
  over: "both-reports",
  strength: "hint",
  cautions: ["lift-points"],
  note: "A difference asks about collision repair; some cars were made with one on purpose.",
  outcomes: {
    square: holds("Left and right lie within {limitDifference} of each other."),
    "wheelbase-differs": breaks(
      "worth",
      "The wheelbase differs by {wheelbase} from left to right: ask about collision repair, or whether it was made so.",
    ),
    "diagonals-differ": breaks(
      "worth",
      "The underbody diagonals differ by {diagonals}: ask about collision repair.",
    ),
    "range-covers": cannotTell("Left and right are too near the limit of {limitDifference} to tell."),
    "too-few": cannotTell("Neither wheelbase nor diagonals were measured on both sides."),
  },
});
