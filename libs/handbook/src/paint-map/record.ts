import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const paintMapRecord = defineRecord("paint-map", {
  title: "Paint map",
  reads: "paint thickness by panel and spot, what the panel is made of, where seams are leaded",
  formula:
    "the car's median, and the median of the distances from it; panels farther off than chance, and thick spots, stand out",
  limits: {
    "paint.stand-out": practice(
      "robust standard deviations a panel lies off the car's median",
      3.5,
      "1",
      [2, 6],
    ),
    "paint.matters": practice(
      "a panel nearer to the car's median than this does not stand out",
      75,
      "um",
      [20, 200],
    ),
    "paint.matters-share": practice("nor one nearer than this share of the median", 0.3, "1", [0.1, 1]),
    "paint.thin": practice("thinner than a factory finish", 75, "um", [40, 120]),
    "paint.factory": practice("factory finish or thin refinish up to this", 200, "um", [120, 300]),
    "paint.refinish": practice("refinish up to this; normal on a good restoration", 400, "um", [200, 600]),
    "paint.heavy": practice("heavy build up to this", 700, "um", [400, 900]),
    "paint.filler": practice(
      "filler likely from heavy build up to this; over it filler or body lead",
      1000,
      "um",
      [700, 2000],
    ),
  },
  source: commonPractice,
  consequence: "appearance",
  over: "one-report",
  strength: "hint",
  cautions: ["lead-paint"],
  note: "Thickness never proves that paint is original.",
  outcomes: {
    "even-over-car": holds(
      "The {panels} panels lie about {median}; none stands out. That does not show the paint is original.",
    ),
    "panels-stand-out": breaks("worth", "The car's median is {median}; standing out: {alternatives}."),
    "filler-likely": breaks(
      "worth",
      "{median, select, none {} other {The car's median is {median}. }}So thick that filler is likely, or thick beside it: {alternatives}.",
    ),
    thick: breaks("worth", "Thicker than a refinish is: {alternatives}."),
    "range-covers": cannotTell("The car's median is {median}; some panels are too near the edge to tell."),
    "too-few": cannotTell("{panels} panels were measured; too few for a map."),
  },
});
