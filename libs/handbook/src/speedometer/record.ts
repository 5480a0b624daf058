import { practice } from "../limit-record/index.ts";
import { arithmetic, breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const speedometerRecord = defineRecord("speedometer", {
  title: "Speedometer",
  reads: "indicated speed and the speed by satellite at the same moment, and the tire fitted",
  formula:
    "error = (indicated − true) / true; the tire that would explain it = the fitted diameter × indicated / true",
  limits: {
    "speedometer.share": practice(
      "speedometer error that matters, as a share: old instruments are no better",
      0.1,
      "1",
      [0.01, 0.2],
    ),
    "ratio.slowest": practice("road speed under which a ratio is not worked out", 20, "mph", [5, 60]),
  },
  source: arithmetic,
  consequence: "mechanical",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["road-consent"],
  outcomes: {
    within: holds("Indicated {indicated} at a true {satellite}: {error} off."),
    "reads-high": breaks(
      "repair",
      "Indicated {indicated} at a true {satellite}: it reads {error} high{explainingDiameter, select, none {} other {; a tire of {explainingDiameter} over all would explain it}}.",
    ),
    "reads-low": breaks(
      "repair",
      "Indicated {indicated} at a true {satellite}: it is off by {error}, low{explainingDiameter, select, none {} other {; a tire of {explainingDiameter} over all would explain it}}.",
    ),
    "range-covers": cannotTell(
      "Indicated {indicated} at a true {satellite}: {error} off, which may or may not matter.",
    ),
    "too-slow": cannotTell("Indicated {indicated} at a true {satellite}: too slow to judge the speedometer."),
  },
});
