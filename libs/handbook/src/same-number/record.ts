import { arithmetic, breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const sameNumberRecord = defineRecord("same-number", {
  title: "The same number everywhere",
  reads: "the number on the title, the plate, the stamping, the photograph",
  formula:
    "every pair equal, spaces, hyphens and case aside; in a 17-character VIN O is read as 0 and I as 1",
  limits: {},
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "all-equal": holds("{number} stands in all {places} places."),
    differ: breaks("halt", "The numbers differ: {alternatives}."),
    "probably-misread": cannotTell("Probably misread: {alternatives}."),
    "too-few": cannotTell("The number was read in {places} of the places; two are needed."),
  },
});
