import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const compressionRecord = defineRecord("compression", {
  title: "Pattern of compression",
  reads: "compression by cylinder, with one gauge, engine warm, throttle open",
  formula:
    "each cylinder over each other one, so the lowest over the highest; the level itself against the maker's least figure, or without one against common practice; neighbors low together",
  limits: {
    "compression.least": practice(
      "compression under this is low on any engine, warm, throttle open",
      85,
      "psi",
      [40, 140],
    ),
    "compression.lowest-share": practice("lowest cylinder over the highest", 0.75, "1", [0.5, 0.95]),
  },
  source: {
    kind: "handbook",
    text: "makers' manuals differ: the service manual of an industrial engine has 75 % of the highest; another maker has 70 % and a least figure",
  },
  consequence: "mechanical",
  over: "one-report",
  strength: "contradicts",
  cautions: ["cranking-fuel"],
  outcomes: {
    even: holds(
      "Lowest {lowest} (cylinder {lowestCylinder}), highest {highest} (cylinder {highestCylinder}): {share} of it, and {limitLowestShare} is enough.",
    ),
    uneven: breaks(
      "worth",
      "Lowest {lowest} (cylinder {lowestCylinder}) is {share} of the highest {highest} (cylinder {highestCylinder}); {limitLowestShare} is the least. The median is {median}.",
    ),
    "neighbors-low": breaks(
      "worth",
      "Cylinders {neighbors} are low together (lowest {lowest}, median {median}): ask about the head gasket between them.",
    ),
    "under-least": breaks(
      "worth",
      "Lowest {lowest} (cylinder {lowestCylinder}) is under the maker's least of {least}.",
    ),
    "low-level": breaks(
      "worth",
      "Lowest {lowest} (cylinder {lowestCylinder}), highest {highest}: low, under {limitLeast}. An engine built with low compression is judged by its maker's figure.",
    ),
    "range-covers": cannotTell(
      "Lowest {lowest} (cylinder {lowestCylinder}) is {share} of the highest {highest}: too near a limit to tell.",
    ),
    "too-few": cannotTell("Compression of fewer than two cylinders is known."),
  },
});
