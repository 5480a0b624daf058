import { practice } from "../limit-record/index.ts";
import { ratioOutcomes } from "../ratio-zone/outcomes.ts";
import { arithmetic, cannotTell, defineRecord } from "../rule-record/index.ts";
import { speedometerRecord } from "../speedometer/record.ts";

/** What the Handbook says of it. */
export const roadRatioRecord = defineRecord("road-ratio", {
  title: "Axle ratio from the road",
  reads:
    "engine speed, road speed by satellite, rolling circumference, gear, converter slip as a range, the ratio claimed and the maker's neighbors",
  formula: "ratio = engine speed × (1 − slip) × circumference / (road speed × gear)",
  limits: {
    "ratio.spacing-share": practice(
      "half the spacing of axle ratios where the maker's list is not entered",
      0.025,
      "1",
      [0.005, 0.1],
    ),
    "ratio.slip-low": practice(
      "least slip of an unlocked torque converter at a steady speed",
      0.01,
      "1",
      [0, 0.1],
    ),
    "ratio.slip-high": practice(
      "greatest slip of an unlocked torque converter at a steady speed",
      0.08,
      "1",
      [0.01, 0.2],
    ),
    "ratio.slowest": speedometerRecord.limits["ratio.slowest"],
  },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["road-consent"],
  outcomes: {
    ...ratioOutcomes("{ratio} from {engineSpeed} at {roadSpeed}"),
    "gear-unknown": cannotTell(
      "{engineSpeed} at {roadSpeed}: the gear engaged is not noted, so no ratio follows.",
    ),
    "too-slow": cannotTell("{engineSpeed} at {roadSpeed}: too slow to work out a ratio."),
  },
});
