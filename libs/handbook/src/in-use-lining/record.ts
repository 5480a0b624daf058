import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, localLaw, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const inUseLiningRecord = defineRecord("in-use-lining", {
  title: "Brake lining in use",
  reads: "least lining thickness, and whether it is riveted or bonded",
  formula: "not less than 1/32 in over the fastener, or over the shoe where bonded; equal passes",
  limits: {
    "in-use.lining-riveted": published(
      "least lining over the fastener",
      0.03125,
      "in",
      "49 CFR 570.5(g), from memory; read in 570.59(c)",
    ),
    "in-use.lining-bonded": published(
      "least bonded lining over the shoe",
      0.03125,
      "in",
      "49 CFR 570.5(g), from memory",
    ),
  },
  source: regulation(
    "49 CFR 570.5(g), from memory; the riveted figure read in 570.59(c), which has 1/16 in for bonded linings of heavier vehicles",
  ),
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["lining-dust", "local-law"],
  note: localLaw,
  outcomes: {
    meets: holds("{reading}: not under the in-use limit. Local inspection law decides."),
    "under-limit": breaks("danger", "{reading}: under the in-use limit. Local inspection law decides."),
    "range-covers": cannotTell(
      "{reading}: as read it {plain}, but too near the in-use limit to be sure. Local inspection law decides.",
    ),
    "fixing-unknown": cannotTell(
      "{reading}: whether the lining is riveted or bonded is not known, so neither is what was measured.",
    ),
  },
});
