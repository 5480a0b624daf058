import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, localLaw, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const inUseRunoutRecord = defineRecord("in-use-runout", {
  title: "Wheel runout in use",
  reads: "lateral or radial runout of a wheel",
  formula: "not more than 1/8 in; equal passes",
  limits: {
    "in-use.runout": published(
      "greatest lateral or radial runout of a wheel",
      0.125,
      "in",
      "49 CFR 570.10(b)",
    ),
  },
  source: regulation("49 CFR 570.10(b)"),
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["lift-points", "local-law"],
  note: localLaw,
  outcomes: {
    meets: holds("Runout {reading}: within the in-use limit. Local inspection law decides."),
    "over-limit": breaks("repair", "Runout {reading}: over the in-use limit. Local inspection law decides."),
    "range-covers": cannotTell(
      "Runout {reading}: as read it {plain}, but too near the in-use limit to be sure. Local inspection law decides.",
    ),
  },
});
