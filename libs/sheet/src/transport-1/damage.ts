import type { Item } from "@evenhand/shared/sheet";
import { faults } from "../version-1/answers.ts";
import { item, words } from "../version-1/draft.ts";
import {
  brightSeverities,
  glassSeverities,
  panelSeverities,
  trifles,
  wheelSeverities,
} from "../version-1/fault-severities.ts";

const looked = {
  consequence: "appearance",
  costRow: null,
  time: "only-rises",
  stage: "daylight",
  depth: "first-look",
  core: true,
  strict: true,
} as const;

/** Once around the car, and in it, place by place: every fault with its size and where, or none. */
export const damage: Item[] = [
  item(
    "body.faults",
    words("panel damage", undefined, ["dents", "scratches", "stone chips"]),
    "Walk around once, a panel at a time, looking along it; write every fault with its length and place.",
    {
      ...looked,
      positions: "panels",
      minutes: 5,
      faults: faults(
        ["dent", "ding", "scratch", "chip", "crack", "bend", "stain", "missing-piece"],
        "panel",
        [...panelSeverities],
      ),
    },
  ),
  item(
    "brightwork.glass-faults",
    words("glass damage", undefined, ["windshield crack", "stone chip in the glass"]),
    "Look along each pane for chips, cracks and scratches.",
    {
      ...looked,
      positions: "glasses",
      consequence: "safety",
      minutes: 1,
      cautions: ["broken-glass"],
      faults: faults(["chip", "crack", "scratch", "missing-piece"], "glass", glassSeverities),
    },
  ),
  item(
    "brightwork.outer-faults",
    words("damage to outer parts", undefined, ["bumpers", "lamps", "mirrors"]),
    "Bumpers, lamps, mirrors, antenna: broken, bent, scratched, gone.",
    {
      ...looked,
      positions: "outer-parts",
      minutes: 1,
      cautions: ["broken-glass"],
      faults: faults(
        ["dent", "scratch", "chip", "crack", "bend", "tear", "missing-piece"],
        "length",
        brightSeverities,
      ),
    },
  ),
  item(
    "wheels.wheel-faults",
    words("wheel and tire damage", "wheel and tyre damage", ["curb rash", "flat tire"]),
    "Rim, face and sidewall of each wheel, and whether the tire is up.",
    {
      ...looked,
      positions: "wheels",
      consequence: "safety",
      minutes: 1,
      faults: faults(["scratch", "dent", "bend", "crack", "cut", "bulge", "missing-piece"], "wheel", [
        { kinds: ["cut", "bulge"], severity: "danger" },
        ...wheelSeverities,
      ]),
    },
  ),
  item(
    "interior.faults",
    words("damage inside", undefined, ["tears", "stains"]),
    "Look in through open doors and trunk: tears, stains, burns, broken or missing parts.",
    {
      ...looked,
      positions: "cabin-parts",
      minutes: 1,
      faults: faults(["tear", "stain", "burn", "crack", "scratch", "missing-piece"], undefined, trifles),
    },
  ),
  item(
    "underbody.edge-faults",
    words("damage underneath, seen from outside"),
    "Kneel beside the car on level ground, before it is loaded: lip, jacking edges, exhaust.",
    {
      ...looked,
      positions: "under-parts",
      minutes: 1,
      cautions: ["under-ramp"],
      faults: faults(["dent", "scratch", "crack", "bend", "missing-piece"], "length", brightSeverities),
    },
  ),
];
