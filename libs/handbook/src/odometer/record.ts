import { breaks, cannotTell, defineRecord, holds, undecided } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const odometerRecord = defineRecord("odometer", {
  title: "Odometer",
  reads: "odometer readings with their dates, the digits it shows, the miles it may have been driven",
  formula:
    "a later reading is not lower; the rise is not more than was driven; with five digits every count of roll-overs is kept",
  limits: {},
  source: { kind: "regulation", text: "arithmetic; 49 CFR 580.5 for what a reading declares, from memory" },
  consequence: "papers",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  outcomes: {
    rises: holds("From {earlier} ({from}) to {later} ({to}): it rises."),
    falls: breaks("worth", "From {earlier} ({from}) to {later} ({to}): it falls."),
    "rises-too-much": breaks(
      "worth",
      "From {earlier} ({from}) to {later} ({to}): {rise}, more than the {allowed} it may have been driven.",
    ),
    "rolled-over-or-back": undecided(
      "worth",
      "From {earlier} ({from}) to {later} ({to}): with five digits it may have rolled over; the miles may be {anyAlternative}.",
    ),
    "range-covers": cannotTell("From {earlier} ({from}) to {later} ({to}): too near to tell."),
    "too-few": cannotTell("Fewer than two readings with a date."),
  },
});
