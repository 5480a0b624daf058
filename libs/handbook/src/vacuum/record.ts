import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const vacuumRecord = defineRecord("vacuum", {
  title: "Manifold vacuum",
  reads:
    "vacuum at idle, height above the sea, how the needle behaves, ignition timing, whether the cam is stock",
  formula:
    "vacuum plus about 1 inHg for each 1,000 ft; late timing explains low vacuum before wear is blamed",
  limits: {
    "vacuum.low": practice(
      "least manifold vacuum of a stock engine at idle, at sea level",
      17,
      "inHg",
      [10, 20],
    ),
    "vacuum.high": practice("usual greatest manifold vacuum at idle, at sea level", 21, "inHg", [18, 25]),
    "vacuum.height": practice("vacuum lost for each 1,000 ft of height", 1, "inHg", [0.5, 1.5]),
    "vacuum.late-timing": practice("timing is late when it is this far behind the maker's", 2, "deg", [1, 6]),
  },
  source: commonPractice,
  consequence: "mechanical",
  over: "one-report",
  strength: "hint",
  cautions: ["carbon-monoxide"],
  outcomes: {
    "in-band": holds(
      "{vacuum}, {corrected} at sea level, needle steady: a stock engine usually has {limitLowToHigh}.",
    ),
    low: breaks(
      "repair",
      "{vacuum}, {corrected} at sea level, with timing right: low; a stock engine usually has {limitLowToHigh}.",
    ),
    "needle-drops": breaks("repair", "{vacuum} with a needle that drops in step: ask about a valve."),
    "needle-drifts": breaks(
      "repair",
      "{vacuum} with a needle that drifts: ask about mixture or a leak of air.",
    ),
    "needle-flutters": breaks(
      "repair",
      "{vacuum} with a needle that flutters: ask about guides, springs or ignition.",
    ),
    "range-covers": cannotTell(
      "{vacuum}, {corrected} at sea level: too near the edge of the usual {limitLowToHigh} to tell.",
    ),
    "late-timing": cannotTell(
      "{vacuum}, {corrected} at sea level: under the usual {limitLowToHigh}, but timing is late, which explains it before wear does.",
    ),
    "timing-unknown": cannotTell(
      "{vacuum}, {corrected} at sea level: under the usual {limitLowToHigh}, but timing is not known, and late timing would explain it.",
    ),
    "cam-unknown": cannotTell(
      "{vacuum}, {corrected} at sea level: whether the cam is stock is not known, and the usual {limitLowToHigh} is for a stock cam.",
    ),
    "cam-not-stock": cannotTell(
      "{vacuum}: the cam is not stock, so the usual {limitLowToHigh} says nothing.",
    ),
    "height-unknown": cannotTell("{vacuum}: the height above the sea is not noted."),
    high: cannotTell("{vacuum}, {corrected} at sea level: above the usual {limitLowToHigh}."),
  },
});
