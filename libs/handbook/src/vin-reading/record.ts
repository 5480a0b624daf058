import { breaks, cannotTell, defineRecord, holds, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const vinReadingRecord = defineRecord("vin-reading", {
  title: "Which reading of the VIN is right",
  reads: "two readings of one VIN that are one look-alike or one exchange of neighbors apart",
  formula: "the check digit of each; where one alone passes, the other was misread",
  limits: {},
  source: regulation("49 CFR 565.15"),
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    same: holds("Both readings are {first}."),
    "first-misread": breaks(
      "small",
      "The check digit of {right} passes and that of {wrong} does not: the first reading was misread. Look again.",
    ),
    "second-misread": breaks(
      "small",
      "The check digit of {right} passes and that of {wrong} does not: the second reading was misread. Look again.",
    ),
    "both-pass": cannotTell(
      "{first} and {second} both pass the check digit; it cannot say which was misread.",
    ),
    "neither-passes": cannotTell("Neither {first} nor {second} passes the check digit."),
    "not-a-misreading": cannotTell("{first} and {second} are too far apart for one slip of the eye."),
    "outside-the-rule": cannotTell(
      "{first} and {second}: no check digit is required here that could decide.",
    ),
  },
});
