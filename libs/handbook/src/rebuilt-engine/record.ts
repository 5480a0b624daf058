import { practice } from "../limit-record/index.ts";
import { breaks, cannotTell, commonPractice, defineRecord, holds } from "../rule-record/index.ts";

/** What the Handbook says of it. */
export const rebuiltEngineRecord = defineRecord("rebuilt-engine", {
  title: "Engine called rebuilt",
  reads:
    "the claim that the engine was rebuilt, compression and leak-down by cylinder, oil pressure hot, smoke with the engine warm, blow-by at the filler",
  formula:
    "lowest compression against a level, and against the highest: evenly tired is tired; leak-down against the poor band, oil pressure as its own rule judges it, blue smoke, a stream at the filler",
  limits: {
    "rebuilt.least": practice("a rebuilt engine has at least this compression", 100, "psi", [60, 160]),
    "rebuilt.uneven": practice(
      "the lowest cylinder of a rebuilt engine over the highest",
      0.85,
      "1",
      [0.75, 0.95],
    ),
    "rebuilt.failed": practice(
      "under this share of the highest a cylinder has failed",
      0.75,
      "1",
      [0.5, 0.85],
    ),
    "rebuilt.leaks": practice("a rebuilt engine leaks no more than this, at 100 psi", 20, "%", [5, 50]),
  },
  source: commonPractice,
  consequence: "mechanical",
  over: "both-reports",
  strength: "contradicts",
  cautions: ["cranking-fuel", "leak-down-air"],
  note: "It says that the engine is not as a rebuilt one should be, not that the work was never done. Repeat a low reading with oil in the cylinder.",
  outcomes: {
    "no-contradiction": holds(
      "Called rebuilt: lowest {lowest}, highest {highest}. Nothing measured speaks against it; how far the work went only opening or bills show.",
    ),
    "failed-cylinder": breaks(
      "worth",
      "Called rebuilt, but cylinder {lowestCylinder} has {lowest} where the highest has {highest}: under {limitFailed} of it a cylinder has failed.",
    ),
    tired: breaks(
      "worth",
      "Called rebuilt, but compression is low: lowest {lowest}, highest {highest}, where a rebuilt engine has at least {limitLeast}. Evenly tired is still tired.",
    ),
    uneven: breaks(
      "worth",
      "Called rebuilt, but compression is uneven: lowest {lowest} (cylinder {lowestCylinder}), highest {highest}, where it is at least {limitUneven} of it.",
    ),
    leaks: breaks(
      "worth",
      "Called rebuilt, but cylinder {worstCylinder} leaks {worst}, where {limitLeaks} is the most.",
    ),
    smokes: breaks("worth", "Called rebuilt, but it smokes blue when warm."),
    "low-oil": breaks(
      "worth",
      "Called rebuilt, but oil pressure is {pressure} hot at {engineSpeed}, under the {least} that the rule of oil pressure goes by.",
    ),
    "blows-by": breaks("worth", "Called rebuilt, but it blows a stream with oil at the filler."),
    "range-covers": cannotTell("Called rebuilt; what was measured is too near the limits to tell."),
    "too-few": cannotTell("Called rebuilt; nothing that would show it was measured."),
  },
});
