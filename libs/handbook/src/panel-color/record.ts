import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const panelColorRecord = defineRecord("panel-color", {
  title: "Color of neighboring panels",
  reads: "L*a*b* of neighboring panels, at one geometry",
  formula: "CIEDE2000 difference of the panels' means",
  limits: {
    "panel-color.noticeable": practice(
      "color difference of neighboring panels that is noticed",
      2,
      "dE",
      [0.5, 6],
    ),
  },
  source: {
    kind: "standard",
    text: "CIEDE2000 (ISO/CIE 11664-6); the figure that is noticed is common practice, no source",
  },
  consequence: "appearance",
  over: "one-report",
  strength: "hint",
  cautions: [],
  outcomes: {
    "not-noticed": holds("{panels} are farthest apart in color, by {deltaE}: not noticed."),
    noticeable: breaks("repair", "Noticeably apart in color: {alternatives}."),
    "range-covers": cannotTell("{panels} are apart in color by {deltaE}: too near what is noticed to tell."),
    "metallic-one-angle": cannotTell(
      "{panels} are apart by {deltaE}, but metallic paint from one angle cannot be told.",
    ),
    "too-few": cannotTell("No two neighboring panels were measured."),
  },
});
