import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const decadeLessRecord = defineRecord("decade-less", {
  title: "Codes without a decade",
  reads: "a code with a one-digit year, the first and last day it can stand for, and the year claimed",
  formula:
    "every year the digit can mean between those days; other facts take years away, the code never does",
  limits: {},
  source: commonPractice,
  consequence: "identity",
  over: "one-report",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "one-left": holds("{code} can only mean {anyAlternative}."),
    "none-left": breaks("worth", "{code} can mean {all}, and other facts rule out each."),
    "claim-not-among": breaks("worth", "{code} can mean {anyAlternative}, not the claimed {claimed}."),
    "several-left": cannotTell("{code} can mean {anyAlternative}; nothing yet says which."),
  },
});
