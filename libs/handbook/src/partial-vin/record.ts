import { breaks, cannotTell, defineRecord, holds, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const partialVinRecord = defineRecord("partial-vin", {
  title: "Partial VIN on engine or gearbox",
  reads:
    "the stamp on the engine or gearbox, the chassis number, and the maker's way of deriving one from the other",
  formula: "the stamp equals the places of the chassis number the maker took: {6} one place, {7-11} several",
  limits: {},
  source: {
    kind: "common-practice",
    text: "the maker's way, as the firm entered it; common practice, no source",
  },
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  note: "Many engines were never stamped; that alone says nothing against a car.",
  outcomes: {
    equal: holds("The stamp {stamp} is the one that {number} leads to."),
    differs: breaks("halt", "The stamp is {stamp}; {number} leads to {expected}."),
    "read-again": undecided(
      "halt",
      "The stamp was read once, as {stamp}; {number} leads to {expected}. Read it again, with a photograph, before anything is made of it.",
    ),
    "probably-misread": undecided(
      "halt",
      "The stamp {stamp} is one slip of the eye from {expected}, to which {number} leads: read it again.",
    ),
    "never-stamped": cannotTell("The maker stamped no partial VIN here; that says nothing against the car."),
    "not-read": cannotTell("The stamp was not read, so it cannot be set against {number}."),
    "no-pattern": cannotTell("The stamp is {stamp}; how the maker derived it from {number} is not entered."),
    "number-too-short": cannotTell("{number} is too short for the way the maker derived stamps."),
  },
});
