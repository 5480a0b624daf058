import { arithmetic, breaks, cannotTell, defineRecord, holds, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const sameNumberRecord = defineRecord("same-number", {
  title: "The same number everywhere",
  reads: "the number on the title, the plate, the stamping, the photograph",
  formula:
    "every pair equal, spaces, hyphens and case aside; two numbers differ where each of them was read by both people or at two places; in a 17-character VIN O is read as 0 and I as 1",
  limits: {},
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "all-equal": holds("{number} stands in all {places} places."),
    differ: breaks("halt", "The numbers differ: {alternatives}."),
    "read-again": undecided(
      "halt",
      "The numbers differ, but one of each two was read once: {alternatives}. Read it again, with a photograph, before anything is made of it.",
    ),
    "probably-misread": undecided("halt", "Probably misread: {alternatives}. Read it again."),
    "too-few": cannotTell("The number was read in {places} of the places; two are needed."),
  },
});
