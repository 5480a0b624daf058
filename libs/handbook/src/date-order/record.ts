import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const dateOrderRecord = defineRecord("date-order", {
  title: "Order of dates",
  reads: "the dates a part was cast and assembled and the car was built",
  formula:
    "cast on or before assembled, assembled on or before built, for the days each code can mean; a code without a year is read in the model year, September to August",
  limits: {},
  source: commonPractice,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "in-order": holds("The dates are in order: {dates}."),
    "out-of-order": breaks("worth", "The dates cannot be in order: {dates}."),
    "some-readings": cannotTell("The dates are in order only as: {anyAlternative}."),
    "too-few": cannotTell("Fewer than two of the dates are known."),
  },
});
