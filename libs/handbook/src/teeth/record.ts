import { practice } from "../limit-record/index.ts";
import { arithmetic, breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const teethRecord = defineRecord("teeth", {
  title: "Axle ratio by teeth",
  reads: "teeth of ring and pinion, from the tag or counted, the ratio claimed, the maker's ratios",
  formula: "ring teeth over pinion teeth",
  limits: {
    "ratio.rounding": practice(
      "a ratio quoted to two decimals is that far from the quotient",
      0.01,
      "1",
      [0.005, 0.05],
    ),
  },
  source: arithmetic,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    "claimed-ratio": holds("{ring} over {pinion} teeth is {ratio}, the claimed {claimed}."),
    "other-ratio": breaks("worth", "{ring} over {pinion} teeth is {ratio}, not the claimed {claimed}."),
    "not-the-makers": breaks(
      "worth",
      "{ring} over {pinion} teeth is {ratio}, which the maker did not offer.",
    ),
    "no-claim": cannotTell("{ring} over {pinion} teeth is {ratio}. No ratio is claimed."),
  },
});
