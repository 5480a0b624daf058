import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, localLaw, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const inUseToeRecord = defineRecord("in-use-toe", {
  title: "Toe in use",
  reads: "toe-in or toe-out and the maker's value",
  formula: "not more than 1.5 times the maker's value; equal passes",
  limits: { "in-use.toe-share": published("toe over the maker's value", 1.5, "1", "49 CFR 570.7(d)") },
  source: regulation("49 CFR 570.7(d)"),
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["local-law"],
  note: localLaw,
  outcomes: {
    meets: holds(
      "Toe {reading}: within {most}, 1.5 times the maker's {makers}. Local inspection law decides.",
    ),
    "over-limit": breaks(
      "repair",
      "Toe {reading}: over {most}, 1.5 times the maker's {makers}. Local inspection law decides.",
    ),
    "range-covers": cannotTell(
      "Toe {reading}: as read it {plain}, but too near {most} to be sure. Local inspection law decides.",
    ),
    "makers-value-unknown": cannotTell(
      "Toe {reading}: the maker's value is not known, or allows no multiple.",
    ),
  },
});
