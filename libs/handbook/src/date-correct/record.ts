import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const dateCorrectRecord = defineRecord("date-correct", {
  title: "Part date against build date",
  reads:
    "the date of a part and the scheduled build date of the car, both as the days they can mean (a code without a year in the model year, September to August)",
  formula:
    "days from the part to the build: usual, plausible, plausible for parts made in small numbers, too early, after the build",
  limits: {
    "date-correct.usual-days": practice(
      "a part is usually made at most this long before the car",
      60,
      "d",
      [0, 365],
    ),
    "date-correct.plausible-days": practice("still plausible before the car", 180, "d", [0, 730]),
    "date-correct.low-volume-days": practice(
      "plausible for parts made in small numbers",
      365,
      "d",
      [0, 1460],
    ),
  },
  source: commonPractice,
  consequence: "identity",
  over: "both-reports",
  strength: "contradicts",
  cautions: [],
  note: "A right date never shows that a part is original to this car.",
  outcomes: {
    usual: holds(
      "Dated {part}, {days} days before the build ({built}): as is usual. That does not show the part is original to this car.",
    ),
    plausible: holds(
      "Dated {part}, {days} days before the build ({built}): plausible. That does not show the part is original to this car.",
    ),
    "low-volume": holds(
      "Dated {part}, {days} days before the build ({built}): plausible for a part made in small numbers. That does not show it is original to this car.",
    ),
    "after-build": breaks("worth", "Dated {part}, after the build ({built}): not on the car from new."),
    "too-early": breaks(
      "worth",
      "Dated {part}, {days} days before the build ({built}): longer than is plausible by common practice, even for a part made in small numbers.",
    ),
    "fits-nowhere": breaks("worth", "Dated {part}: in no reading does that fit the build ({built})."),
    "low-volume-only": cannotTell(
      "Dated {part}, {days} days before the build ({built}): plausible only for a part made in small numbers.",
    ),
    "some-readings": cannotTell(
      "Dated {part}, built {built}: {anyAlternative} the build; some of that fits and some does not.",
    ),
    "too-few": cannotTell("The part's date or the build date is not known."),
  },
});
