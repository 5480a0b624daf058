import { breaks, cannotTell, commonPractice, defineRecord, holds, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const numberEndsAlikeRecord = defineRecord("number-ends-alike", {
  title: "Numbers that end alike",
  reads:
    "the number stamped on engine or gearbox and the chassis number, where no maker's way of deriving one from the other is entered; whether the numbers are said to match",
  formula: "the digits both end in: equal over four at least, or not",
  limits: {},
  source: commonPractice,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  note: "Makers derived stamps in their own ways, and some stamped nothing that follows from the chassis number: without the maker's way a difference asks, and equal ends do not show when the stamp was made.",
  outcomes: {
    alike: holds(
      "The {unit} is stamped {stamp}, which ends as {number} does. That does not show when it was stamped.",
    ),
    "not-alike": undecided(
      "worth",
      "The {unit} is stamped {stamp}, which does not end as {number} does: it is not shown to be this car's. Ask how the maker numbered it.",
    ),
    "said-to-match": breaks(
      "halt",
      "The numbers are said to match, but the {unit} is stamped {stamp}, which does not end as {number} does: it is not shown to be this car's.",
    ),
    "read-again": undecided(
      "halt",
      "The numbers are said to match, but the {unit} was read once as {stamp}, which does not end as {number} does. Read it again, with a photograph, before anything is made of it.",
    ),
    "probably-misread": undecided(
      "halt",
      "The {unit} is stamped {stamp}, one slip of the eye from the end of {number}: read it again.",
    ),
    "too-short": cannotTell("The {unit}'s stamp {stamp} has too few digits to set against {number}."),
  },
});
