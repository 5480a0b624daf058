import { published } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds, localLaw, regulation } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const inUseFreePlayRecord = defineRecord("in-use-free-play", {
  title: "Steering free play in use",
  reads: "free play at the rim and the diameter of the steering wheel",
  formula:
    "not more than the table has for the wheel's diameter; between two rows the stricter passes and the laxer fails; equal passes",
  limits: {
    "in-use.free-play-16": published(
      "greatest free play, wheel of 16 in or less",
      2,
      "in",
      "49 CFR 570.7(a) table 1",
    ),
    "in-use.free-play-18": published(
      "greatest free play, wheel of 18 in",
      2.25,
      "in",
      "49 CFR 570.7(a) table 1",
    ),
    "in-use.free-play-20": published(
      "greatest free play, wheel of 20 in",
      2.5,
      "in",
      "49 CFR 570.7(a) table 1",
    ),
    "in-use.free-play-22": published(
      "greatest free play, wheel of 22 in",
      2.75,
      "in",
      "49 CFR 570.7(a) table 1",
    ),
  },
  source: regulation("49 CFR 570.7(a) table 1; the table has no rule between its rows"),
  consequence: "safety",
  over: "one-report",
  strength: "contradicts",
  cautions: ["local-law"],
  note: localLaw,
  outcomes: {
    meets: holds("{reading} at the rim: within the in-use limit. Local inspection law decides."),
    "over-limit": breaks(
      "danger",
      "{reading} at the rim: over the in-use limit for a wheel of {wheelDiameter}. Local inspection law decides.",
    ),
    "range-covers": cannotTell(
      "{reading} at the rim: as read it {plain}, but too near the in-use limit to be sure. Local inspection law decides.",
    ),
    "between-rows": cannotTell(
      "{reading} at the rim: the table has no row for a wheel of {wheelDiameter}. Local inspection law decides.",
    ),
    "wheel-unknown": cannotTell(
      "{reading} at the rim: more than every wheel may have, and the wheel's diameter is not known.",
    ),
  },
});
