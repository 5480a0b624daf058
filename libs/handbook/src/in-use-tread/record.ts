import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, localLaw, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const inUseTreadRecord = defineRecord("in-use-tread", {
  title: "Tread depth in use",
  reads: "tread depth at the spots measured",
  formula: "not less than 2/32 in anywhere measured; equal passes",
  limits: {
    "in-use.tread": published(
      "least tread depth, in 1/32 in",
      2,
      "1/32in",
      "49 CFR 570.9(a), from memory for passenger cars",
    ),
  },
  source: regulation("49 CFR 570.9(a), from memory for passenger cars"),
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["aged-tires", "local-law"],
  note: localLaw,
  outcomes: {
    meets: holds("{reading}: not under the in-use limit. Local inspection law decides."),
    "under-limit": breaks(
      "danger",
      "{reading}: under the in-use limit of {limitTread}. Local inspection law decides.",
    ),
    "range-covers": cannotTell(
      "{reading}: as read it {plain}, but too near the in-use limit of {limitTread} to be sure. Local inspection law decides.",
    ),
  },
});
