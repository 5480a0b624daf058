import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const tireAgeRecord = defineRecord("tire-age", {
  title: "Age of a tire",
  reads: "the tire identification number and the day of the visit",
  formula:
    "the last four digits are week and year; three digits (before 2000) never fix the decade; age to the day of the visit",
  limits: {
    "tire-age.caution-years": practice("caution from this age", 6, "a", [3, 10]),
    "tire-age.replace-years": practice("replace at this age", 10, "a", [5, 15]),
  },
  source: regulation("49 CFR 574.5 for the code; the ages are common practice, no source"),
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["aged-tires"],
  outcomes: {
    young: holds("Made {made}: {age} years old at the visit."),
    "caution-age": breaks(
      "repair",
      "Made {made}: {age} years old at the visit; caution from {limitCautionYears}.",
    ),
    "replace-age": breaks(
      "danger",
      "Made {made}: {age} years old at the visit; replace at {limitReplaceYears}.",
    ),
    "not-a-date": cannotTell("{number} does not end in a week and a year."),
    "after-the-visit": cannotTell("{number} ends in a week after the visit: misread."),
    "some-readings": cannotTell("Made {made}: {age} years old at the visit, so the age stays undecided."),
  },
});
