import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const cylinderStoryRecord = defineRecord("cylinder-story", {
  title: "Compression, leak-down and coolant gas as one story",
  reads: "which cylinders are low, which leak and where the air goes, combustion gas in the coolant",
  formula:
    "a low cylinder leaks; a leaking cylinder is low; air into the coolant and gas in the coolant come together; neighbors low together leak into each other",
  limits: {},
  source: commonPractice,
  consequence: "mechanical",
  over: "both-reports",
  strength: "hint",
  cautions: ["cranking-fuel", "leak-down-air"],
  outcomes: {
    "one-story": holds("Compression, leak-down and coolant tell one story."),
    "gasket-between": holds(
      "Cylinders {cylinders} are low together and leak into each other: the head gasket between them.",
    ),
    "low-but-tight": breaks(
      "repair",
      "Low in compression but tight in leak-down, cylinder {cylinders}: look at valve timing, the cam, or the gauge.",
    ),
    "leaks-but-not-low": breaks(
      "repair",
      "Leaks but is not low in compression, cylinder {cylinders}: one of the two tests wants repeating.",
    ),
    "escape-without-gas": breaks(
      "worth",
      "Air went into the coolant from cylinder {cylinders}, yet no combustion gas was found in it.",
    ),
    "gas-without-escape": breaks(
      "worth",
      "Combustion gas was found in the coolant, yet no cylinder let air into it.",
    ),
    "not-clear": cannotTell("Cylinder {cylinders} is too near a limit to say."),
    "too-few": cannotTell("Fewer than two of the tests speak of the same cylinders."),
  },
});
