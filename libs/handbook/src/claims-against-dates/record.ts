import { practice } from "../limit-record/index.ts";
import { arithmetic, breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const claimsAgainstDatesRecord = defineRecord("claims-against-dates", {
  title: "Claims against dates",
  reads:
    "a claim (new, no older than so many years, original, untouched, fitted with this bill, seen in this photograph) and the newest and oldest dates on it",
  formula: "no day the claim needs comes before a day that was needed for it",
  limits: {
    "claims.new-days": practice("what is called new was made at most this long before", 730, "d", [30, 3650]),
  },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "no-contradiction": holds("“{claim}” is not contradicted by the dates ({dates}; against {reference})."),
    "new-but-old": breaks("repair", "Called new on {reference}, but dated {dates}."),
    "older-than-claimed": breaks(
      "repair",
      "Called no older than {years} years on {reference}, but dated {dates}.",
    ),
    "original-but-later": breaks(
      "worth",
      "Called original, but dated {dates}, after the car was built ({reference}).",
    ),
    "untouched-but-later": breaks(
      "worth",
      "Called untouched, but dated {dates}, after the car was built ({reference}).",
    ),
    "fitted-before-made": breaks(
      "worth",
      "Said to be fitted with the bill of {reference}, but dated {dates}.",
    ),
    "pictured-before-made": breaks(
      "worth",
      "Said to be in the photograph of {reference}, but dated {dates}.",
    ),
    "some-readings": cannotTell(
      "Whether “{claim}” fits depends on which of its dates is meant: {dates}; against {reference}.",
    ),
    "too-few": cannotTell("No date is known to set against the claim “{claim}”."),
  },
});
