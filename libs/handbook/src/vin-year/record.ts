import { breaks, cannotTell, defineRecord, holds, regulation, undecided } from "../rule-record/index.ts";
import { vinFormRecord } from "../vin-form/record.ts";

/** What the Handbook says of it. */
export const vinYearRecord = defineRecord("vin-year", {
  title: "Model year in the VIN",
  reads: "a 17-character VIN of a car built for North America, and the model year claimed",
  formula:
    "position 10 gives the year within a cycle of 30; a digit in position 7 means 1980 to 2009, a letter 2010 to 2039 (cars, multipurpose vehicles and light trucks)",
  limits: { "vin.first-year": vinFormRecord.limits["vin.first-year"] },
  source: regulation("49 CFR 565.15; the rule of position 7 from memory"),
  consequence: "identity",
  over: "one-report",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "same-year": holds("Position 10 of {vin} is {character}: model year {anyAlternative}, as claimed."),
    "other-year": breaks(
      "halt",
      "Position 10 of {vin} is {character}: model year {anyAlternative}, not the claimed {claimed}.",
    ),
    "year-character": breaks("halt", "Position 10 of {vin} is {character}, which stands for no model year."),
    "read-again": undecided(
      "halt",
      "Position 10 of {vin}, as it was read once, is {character}, which does not stand for the claimed {claimed}. Read it again, with a photograph, before anything is made of it.",
    ),
    "before-1981": cannotTell("{vin} is from before 1981 and carries no year by this rule."),
    "other-market": cannotTell("{vin} was not made for North America, where position 10 is the model year."),
    "market-unknown": cannotTell(
      "{vin}: the market is not known, so position 10 need not be the model year.",
    ),
    "not-seventeen": cannotTell("{vin} does not have 17 characters and tells no year by this rule."),
    "either-cycle": cannotTell(
      "Position 10 of {vin} is {character}: model year {anyAlternative}; {claimed} is one of them.",
    ),
  },
});
