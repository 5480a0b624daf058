import { practice } from "../limit-record/index.ts";
import { breaks, defineRecord, holds, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const actualMilesRecord = defineRecord("actual-miles", {
  title: "Miles called actual",
  reads:
    "the digits of the odometer, what it shows, the entries on papers with their dates, and whether the miles are disclosed as actual",
  formula:
    "an odometer of five digits starts again at 100,000: an older entry higher than what it shows now means that it did, or was turned back; every stretch between two entries in which 100,000 more could have been driven is kept as an alternative",
  limits: {
    "miles.a-year": practice("miles driven in a year at the most", 25_000, "mi", [5000, 100_000]),
  },
  source: { kind: "regulation", text: "arithmetic; 49 CFR 580.5 for what a reading declares, from memory" },
  consequence: "papers",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  note: "That the miles may be higher accuses nobody: with five digits the instrument cannot show them.",
  outcomes: {
    "no-room": holds(
      "The odometer shows {shown}. The entries on papers lie so close ({entries}) that 100,000 miles more do not fit between them.",
    ),
    "six-digits": holds(
      "The odometer shows {shown} and has six digits, so it has not started again at 100,000.",
    ),
    "called-actual-but-lower": breaks(
      "worth",
      "The odometer shows {shown} with five digits, but {earlierPlace} of {earlierDay} already has {earlier}: the miles shown cannot be the actual miles. They may be {anyAlternative}.",
    ),
    "lower-than-papers": undecided(
      "worth",
      "The odometer shows {shown} with five digits, but {earlierPlace} of {earlierDay} already has {earlier}. It started again at 100,000 or was turned back; the miles may be {anyAlternative}.",
    ),
    "may-be-more": undecided(
      "worth",
      "The odometer shows {shown} with five digits; nothing seen rules out that it started again at 100,000: the miles may be {anyAlternative}.",
    ),
    "too-near": undecided(
      "worth",
      "The odometer shows {shown} with five digits, too near the {earlier} of {earlierDay} to tell whether it started again; the miles may be {anyAlternative}.",
    ),
  },
});
