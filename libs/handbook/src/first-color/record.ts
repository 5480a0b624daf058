import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const firstColorRecord = defineRecord("first-color", {
  title: "First color",
  reads: "paint or trim code on the body tag, and spots that were never painted over",
  formula: "equal",
  limits: {},
  source: commonPractice,
  consequence: "identity",
  over: "both-reports",
  strength: "hint",
  cautions: [],
  outcomes: {
    equal: holds("The tag's {tag} is what unpainted spots show."),
    differs: breaks("worth", "The tag says {tag}; found instead: {alternatives}."),
    "other-terms": cannotTell(
      "The tag says {tag}; unpainted spots show {alternatives}. Which color the code stands for is in the maker's list.",
    ),
    "too-few": cannotTell("The tag or the unpainted spots were not read."),
  },
});
