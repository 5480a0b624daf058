import { breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const tiresMixedRecord = defineRecord("tires-mixed", {
  title: "Tires mixed",
  reads: "size and construction of the four tires",
  formula: "one size and one construction on an axle; never radial tires in front of bias tires",
  limits: {},
  source: {
    kind: "common-practice",
    text: "common practice, no source (49 CFR 570.9 asks the same of an axle, from memory)",
  },
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["aged-tires"],
  outcomes: {
    matched: holds(
      "Each axle has one size and construction. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
    "radial-front-bias-rear": breaks(
      "danger",
      "Radial tires stand in front of bias tires: the rear lets go first. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
    "constructions-differ": breaks(
      "danger",
      "An axle mixes constructions. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
    "sizes-differ": breaks(
      "repair",
      "An axle mixes sizes. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
    "equivalent-sizes": cannotTell(
      "An axle has two sizes that tables call equivalent, which is advice only. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
    "size-unreadable": cannotTell(
      "A size could not be read. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
    "not-all-known": cannotTell(
      "Not every tire is known. Front: {leftFront} and {rightFront}; rear: {leftRear} and {rightRear}.",
    ),
  },
});
