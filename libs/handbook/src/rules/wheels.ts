import { arithmetic } from "../rule-record/index.ts";
import type { RuleRecord } from "../rule-record/index.ts";

const tireHandbook = {
  kind: "handbook",
  text: "tire makers' size handbooks: nominal diameter from section, aspect and rim; the rolling share is common practice, no source",
} as const;

const ratioOutcomes = {
  "claimed-ratio": "holds",
  "other-ratio": "breaks",
  "cannot-separate": "cannot-tell",
  "no-claim": "cannot-tell",
} as const;

/** Tires, road speed and the axle. */
export const wheelRules = {
  "tires-mixed": {
    title: "Tires mixed",
    reads: "size and construction of the four tires",
    formula: "one size and one construction on an axle; never radial tires in front of bias tires",
    limits: [],
    source: {
      kind: "common-practice",
      text: "common practice, no source (49 CFR 570.9 asks the same of an axle, from memory)",
    },
    consequence: "safety",
    over: "one-report",
    strength: "contradicts",
    cautions: ["aged-tires"],
    outcomes: {
      matched: "holds",
      "radial-front-bias-rear": "breaks",
      "constructions-differ": "breaks",
      "sizes-differ": "breaks",
      "equivalent-sizes": "cannot-tell",
      "size-unreadable": "cannot-tell",
      "not-all-known": "cannot-tell",
    },
  },
  "tire-diameter": {
    title: "Tire diameter",
    reads: "a tire size, and a measured rollout or a second size",
    formula:
      "diameter = rim + 2 × section × aspect; rolling circumference = the rollout measured, else 0.97 × π × diameter ± 1.5 %",
    limits: ["tire.rolling-share", "tire.rolling-tolerance", "tire.rollout-share"],
    source: tireHandbook,
    consequence: "mechanical",
    over: "both-reports",
    strength: "hint",
    cautions: [],
    note: "Equivalent sizes are advice, never a fault: sources differ by one size.",
    outcomes: {
      "rollout-fits": "holds",
      "rollout-differs": "breaks",
      "equal-in-diameter": "holds",
      "other-diameter": "cannot-tell",
      "range-covers": "cannot-tell",
      "size-unreadable": "cannot-tell",
      "nothing-to-set-against": "cannot-tell",
    },
  },
  speedometer: {
    title: "Speedometer",
    reads: "indicated speed and the speed by satellite at the same moment, and the tire fitted",
    formula:
      "error = (indicated − true) / true; the tire that would explain it = the fitted diameter × indicated / true",
    limits: ["speedometer.share", "ratio.slowest"],
    source: arithmetic,
    consequence: "mechanical",
    over: "both-reports",
    strength: "contradicts",
    cautions: ["road-consent"],
    outcomes: {
      within: "holds",
      "reads-high": "breaks",
      "reads-low": "breaks",
      "range-covers": "cannot-tell",
      "too-slow": "cannot-tell",
    },
  },
  "road-ratio": {
    title: "Axle ratio from the road",
    reads:
      "engine speed, road speed by satellite, rolling circumference, gear, converter slip as a range, the ratio claimed and the maker's neighbors",
    formula: "ratio = engine speed × (1 − slip) × circumference / (road speed × gear)",
    limits: ["ratio.spacing-share", "ratio.slip-low", "ratio.slip-high", "ratio.slowest"],
    source: arithmetic,
    consequence: "identity",
    over: "both-reports",
    strength: "contradicts",
    cautions: ["road-consent"],
    outcomes: { ...ratioOutcomes, "gear-unknown": "cannot-tell", "too-slow": "cannot-tell" },
  },
  "turns-ratio": {
    title: "Axle ratio by turning",
    reads:
      "turns of the driveshaft for turns of the wheels: both wheels together, or one with the other held",
    formula: "turns of the shaft over turns of the wheel; twice that where one wheel is held",
    limits: ["ratio.spacing-share"],
    source: arithmetic,
    consequence: "identity",
    over: "both-reports",
    strength: "contradicts",
    cautions: ["limited-slip", "lift-points"],
    outcomes: ratioOutcomes,
  },
  teeth: {
    title: "Axle ratio by teeth",
    reads: "teeth of ring and pinion, from the tag or counted, the ratio claimed, the maker's ratios",
    formula: "ring teeth over pinion teeth",
    limits: ["ratio.rounding"],
    source: arithmetic,
    consequence: "identity",
    over: "both-reports",
    strength: "contradicts",
    cautions: [],
    outcomes: {
      "claimed-ratio": "holds",
      "other-ratio": "breaks",
      "not-the-makers": "breaks",
      "no-claim": "cannot-tell",
    },
  },
  "ratio-combined": {
    title: "Axle ratio, all ways together",
    reads: "the ratio by tag, by teeth, by turning and from the road, and the ratio claimed",
    formula: "where the ways do not contradict each other, their mean weighted by their uncertainties",
    limits: ["ratio.spacing-share"],
    source: arithmetic,
    consequence: "identity",
    over: "both-reports",
    strength: "contradicts",
    cautions: ["road-consent"],
    outcomes: { ...ratioOutcomes, "ways-disagree": "cannot-tell", "too-few": "cannot-tell" },
  },
} as const satisfies Record<string, RuleRecord>;
