import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";
import { paintMapRecord } from "../paint-map/record.ts";

/** What the Handbook says of it. */
export const originalPaintRecord = defineRecord("original-paint", {
  title: "Paint called original",
  reads: "paint thickness by panel, and the claim that the paint is original",
  formula:
    "every panel within a factory finish, and none thicker than the car's others by more than chance and the contrast; the gauge's own error cancels between them",
  limits: {
    "paint.contrast": practice(
      "a panel called original that stands over the car's others by more was painted again",
      30,
      "um",
      [15, 150],
    ),
    "paint.thin": paintMapRecord.limits["paint.thin"],
    "paint.factory": paintMapRecord.limits["paint.factory"],
    "paint.refinish": paintMapRecord.limits["paint.refinish"],
    "paint.heavy": paintMapRecord.limits["paint.heavy"],
    "paint.filler": paintMapRecord.limits["paint.filler"],
  },
  source: commonPractice,
  consequence: "appearance",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["lead-paint"],
  note: "Thickness never proves that paint is original; it can only speak against it.",
  outcomes: {
    "no-contradiction": holds(
      "Within a factory finish (thickest {thickestPanel}, {thickest}). That does not show the paint is original.",
    ),
    refinished: breaks("worth", "Called original paint, but thicker than a factory finish: {alternatives}."),
    "over-the-others": breaks(
      "worth",
      "Called original paint, but it stands over the car's other panels, whose median is {median} by the same gauge, by more than {limitContrast}: {alternatives}.",
    ),
    "range-covers": cannotTell(
      "Thickest {thickestPanel}, {thickest}: too near the edge of a factory finish to tell.",
    ),
    thin: cannotTell("Thinner than a factory finish, polished or misread: {alternatives}."),
    "too-few": cannotTell("No panel's paint was measured."),
  },
});
