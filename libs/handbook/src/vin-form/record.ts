import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, regulation, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const vinFormRecord = defineRecord("vin-form", {
  title: "VIN form and check digit",
  reads: "a vehicle identification number, the market the car was built for, and its model year",
  formula:
    "17 characters, none of them I, O or Q; the values of the characters times the weights of their positions, summed; the remainder on division by 11 (10 is written X) stands in position 9",
  limits: {
    "vin.first-year": published(
      "check digit and year character are required from this model year",
      1981,
      "a",
      "49 CFR 565, from memory",
    ),
  },
  source: regulation("49 CFR 565.15"),
  consequence: "identity",
  over: "one-report",
  strength: "contradicts",
  cautions: [],
  note: "An old plate may carry a wrong digit from the day it was made: a break asks for a second look, it proves nothing.",
  outcomes: {
    passes: holds("{vin} has the form of a VIN, and its check digit {carried} is right."),
    length: breaks("halt", "{vin} has {length} characters where a VIN has 17."),
    characters: breaks("halt", "{vin} holds characters no VIN has: {wrong}."),
    "check-digit": breaks(
      "halt",
      "{vin} carries {carried} in position 9 where the other characters ask for {expected} (sum {weightedSum}): misread, or wrong on the plate itself.",
    ),
    "read-again": undecided(
      "halt",
      "{vin}, as it was read once, has {length} characters{wrong, select, none {} other {, {wrong} among them, which no VIN has}}{carried, select, none {} other {, and carries {carried} in position 9 where the others ask for {expected}}}; a VIN has 17 and passes its check digit. Read it again, with a photograph, before anything is made of it.",
    ),
    "before-1981": cannotTell("{vin} is from before 1981: the check digit was not yet required."),
    "year-unknown": cannotTell(
      "{vin} has {length} characters; without the model year it cannot be said whether it ought to have 17.",
    ),
    "other-market": cannotTell("{vin} was not made for North America, where the check digit is required."),
    "market-unknown": cannotTell(
      "{vin}: the market the car was built for is not known, so a check digit need not be there.",
    ),
  },
});
