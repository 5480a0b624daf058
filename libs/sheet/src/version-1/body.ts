import type { Item } from "@evenhand/shared/sheet";
import { faults, ranked, shouldBeAbsent, unranked, wear } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { ReadingDraft } from "./draft.ts";
import { paintFaults } from "./fault-kinds.ts";
import { commonPractice } from "./sources.ts";
import { panelSeverities } from "./fault-severities.ts";

const paintGauge: ReadingDraft = {
  unit: "um",
  alsoIn: ["mil", "mm"],
  delta: [75, 0.3],
  scatter: [14, 0.08],
  over: "spots",
  betterIs: "target",
  plausible: [0, 10_000],
  typical: 130,
  ask: [1, 3],
  byEye: [400],
  instrument: ["coating thickness gauge", 1, [2, 0.03]],
};

/** Three on thin paint, in this order; all nine where it reads as refinished. */
const paintSpots = [
  "middle-center",
  "upper-front",
  "lower-rear",
  "upper-rear",
  "lower-front",
  "upper-center",
  "lower-center",
  "middle-front",
  "middle-rear",
].map((id) => ({ id, words: words(id.replace("-", " ")) }));

const outside = { consequence: "appearance", needs: ["daylight"] } as const satisfies Partial<Item>;

/** Outer panels and paint, a panel at a time. */
export const body: Item[] = [
  item(
    "body.paint-thickness",
    words("paint thickness", undefined, ["paint meter", "film build", "mil gauge", "coating thickness"]),
    "Measure the fixed spots with a probe for the panel's metal: three on thin paint, all nine where it reads as refinished.",
    {
      ...outside,
      needs: [],
      positions: "panels",
      core: true,
      severity: "worth",
      minutes: 12,
      costRow: "paint-panel",
      cautions: ["lead-paint"],
      reading: reading({ ...paintGauge, spots: paintSpots }),
    },
  ),
  item(
    "body.paint-highest",
    words("highest paint reading", undefined, ["thickest spot"]),
    "Sweep the panel for its thickest place, take three readings there, and say where it was.",
    {
      ...outside,
      needs: [],
      positions: "panels",
      severity: "worth",
      minutes: 15,
      costRow: "filler-panel",
      cautions: ["lead-paint"],
      reading: reading({ ...paintGauge, betterIs: "lower", over: "repeats", placement: 10, ask: [3, 1] }),
    },
  ),
  item(
    "body.paint-history",
    words("paint history", undefined, ["original paint", "respray", "repaint"]),
    "Say what is claimed of the paint; thickness never proves originality.",
    {
      ...outside,
      positions: "panels",
      core: true,
      severity: "worth",
      minutes: 2,
      costRow: "paint-panel",
      choice: {
        ...ranked(
          ["original", words("original paint", undefined, ["factory paint", "untouched"])],
          ["blended", "blended in part", "no-yardstick"],
          ["refinished", words("refinished", "resprayed", ["repainted", "older respray"]), "no-yardstick"],
          ["repaired", words("repaired and refinished", undefined, ["filled", "bodywork"]), "worth"],
        ),
        // Where a blend ends and old paint begins two careful people part; the gauge decides (common practice, no source).
        neighbors: "doubtful",
      },
    },
  ),
  item(
    "body.panel-material",
    words("panel material"),
    "Say what the panel is made of; each metal needs its own probe.",
    {
      ...outside,
      positions: "panels",
      minutes: 3,
      costRow: null,
      choice: unranked(
        ["steel", "steel"],
        ["aluminum", words("aluminum", "aluminium", ["alloy"])],
        ["glass-fiber", words("fiberglass", "glass fibre", ["GRP"]), "no-yardstick"],
        ["other", "other", "no-yardstick"],
      ),
    },
  ),
  item(
    "body.color",
    words("color match", "colour match"),
    "Measure in daylight shade or with a color meter; from one angle a metallic cannot be told.",
    {
      ...outside,
      positions: "panels",
      severity: "worth",
      minutes: 15,
      costRow: "paint-panel",
      color: { delta: 2, repeatability: 0.3, source: commonPractice },
    },
  ),
  item(
    "body.finish",
    words("finish", undefined, ["gloss", "paint condition", "shine"]),
    "Look along the panel in daylight and grade its surface.",
    {
      ...outside,
      positions: "panels",
      time: "only-rises",
      severity: "repair",
      minutes: 10,
      costRow: "paint-panel",
      grade: wear,
    },
  ),
  item(
    "body.faults",
    words("panel faults", undefined, ["dents", "rust bubbles", "scratches", "stone chips"]),
    "Go round each panel in raking light and write every fault in words, with its size and place.",
    {
      ...outside,
      positions: "panels",
      time: "only-rises",
      core: true,
      minutes: 15,
      costRow: "panel-repair",
      cautions: ["lead-paint"],
      faults: faults(paintFaults, "panel", panelSeverities),
    },
  ),
  item(
    "body.magnet",
    words("magnet holds"),
    "Hang a soft-backed magnet on the lower part; compare with a sound spot.",
    {
      consequence: "structure",
      positions: "lower-panels",
      minutes: 5,
      costRow: "filler-panel",
      cautions: ["lead-paint"],
      choice: ranked(["holds", "holds"], ["weak", "weak", "worth"], ["falls", "falls off", "worth"]),
    },
  ),
  item(
    "body.patch-edges",
    words("patch edges", undefined, ["welded-in section"]),
    "Look and feel for the edge of a welded or bonded piece, from both sides where they can be reached.",
    {
      consequence: "structure",
      positions: "panels",
      minutes: 8,
      costRow: "panel-repair",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "body.spot-welds",
    words("spot welds not from the factory", undefined, ["non-factory welds", "plug welds"]),
    "Compare the welds along the seams with a sound seam: spacing, size, ground-off heads.",
    {
      consequence: "structure",
      positions: "panels",
      minutes: 8,
      costRow: "panel-repair",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "body.fender-inner-face",
    words("inner face of the fender", "inner face of the wing"),
    "Look and feel behind the front fender: one flat skin, a patch, or a second skin.",
    {
      consequence: "structure",
      positions: "front-fenders",
      core: true,
      minutes: 2,
      costRow: "panel-repair",
      choice: ranked(
        ["flat", "flat"],
        ["patched", "patched", "worth"],
        ["doubled", words("doubled", undefined, ["second skin"]), "worth"],
      ),
    },
  ),
];
