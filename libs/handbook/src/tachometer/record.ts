import { practice } from "../limit-record/index.ts";
import { arithmetic, breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const tachometerRecord = defineRecord("tachometer", {
  title: "Tachometer",
  reads: "revolutions as the car shows them and by a shop tachometer, at the same moment",
  formula: "error = (shown − measured) / measured",
  limits: {
    "tachometer.share": practice(
      "tachometer error that matters, as a share: old instruments are no better",
      0.1,
      "1",
      [0.01, 0.2],
    ),
    "tachometer.slowest": practice(
      "engine speed under which the share of an old needle says nothing",
      1000,
      "rpm",
      [500, 3000],
    ),
  },
  source: arithmetic,
  consequence: "mechanical",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["road-consent"],
  outcomes: {
    within: holds("It shows {indicated} at a measured {measured}: {error} off."),
    "reads-high": breaks("repair", "It shows {indicated} at a measured {measured}: it reads {error} high."),
    "reads-low": breaks(
      "repair",
      "It shows {indicated} at a measured {measured}: it is off by {error}, low, and whoever goes by it turns the engine faster than they know.",
    ),
    "range-covers": cannotTell(
      "It shows {indicated} at a measured {measured}: {error} off, which may or may not matter.",
    ),
    "too-slow": cannotTell(
      "It shows {indicated} at a measured {measured}: too slow to judge the tachometer.",
    ),
  },
});
