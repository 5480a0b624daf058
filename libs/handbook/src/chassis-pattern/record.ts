import { breaks, cannotTell, defineRecord, firmsEntry, holds, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const chassisPatternRecord = defineRecord("chassis-pattern", {
  title: "Form of an older chassis number",
  reads: "a chassis number from before 1981 or from another market, and the maker's form",
  formula:
    "each character fits its place: # a digit, @ a letter, ? either, [..] one of those listed, others themselves",
  limits: {},
  source: firmsEntry,
  consequence: "identity",
  over: "one-report",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    matches: holds("{number} has the maker's form {pattern}."),
    "does-not-match": breaks("halt", "{number} leaves the maker's form {pattern} at place {place}."),
    "read-again": undecided(
      "halt",
      "{number}, as it was read once, leaves the maker's form {pattern} at place {place}. Read it again, with a photograph, before anything is made of it.",
    ),
    "no-pattern": cannotTell("No maker's form is entered for {number}."),
  },
});
