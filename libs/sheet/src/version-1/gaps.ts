import type { Item } from "@evenhand/shared/sheet";
import { shouldBeAbsent } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { ReadingDraft } from "./draft.ts";

const taperGauge: ReadingDraft = {
  unit: "mm",
  alsoIn: ["in", "1/32in"],
  delta: [2],
  scatter: [0.3],
  placement: 0.2,
  betterIs: "target",
  plausible: [-10, 60],
  typical: 5,
  ask: [1, 1],
  byEye: [1.5],
  instrument: ["taper gauge", 0.1, [0.1]],
};

/** Shut lines; doors and lids closed on their first catch and full catch alike. */
export const gaps: Item[] = [
  item(
    "gaps.width-top",
    words("gap at the top or front", "shut line at the top or front", ["panel gap"]),
    "Push a taper gauge in 100 mm from the upper corner; on a level gap, from the front one.",
    {
      positions: "gaps",
      consequence: "appearance",
      core: true,
      severity: "worth",
      minutes: 4,
      costRow: "panel-fit",
      reading: reading({ ...taperGauge, plausible: [0, 60] }),
    },
  ),
  item(
    "gaps.width-bottom",
    words("gap at the bottom or rear", "shut line at the bottom or rear", ["panel gap"]),
    "Push a taper gauge in 100 mm from the lower corner; on a level gap, from the rear one.",
    {
      positions: "gaps",
      consequence: "appearance",
      core: true,
      severity: "worth",
      minutes: 4,
      costRow: "panel-fit",
      reading: reading({ ...taperGauge, plausible: [0, 60] }),
    },
  ),
  item(
    "gaps.flushness",
    words("flushness", undefined, ["step", "proud or sunken"]),
    "Lay a straightedge across and measure the step; positive where the rear or lower panel stands proud.",
    {
      positions: "gaps",
      consequence: "appearance",
      severity: "repair",
      minutes: 10,
      costRow: "panel-fit",
      reading: reading({
        ...taperGauge,
        plausible: [-30, 30],
        typical: 0,
        target: 0,
        instrument: ["straightedge and feeler", 0.1, [0.1]],
      }),
    },
  ),
  item(
    "gaps.bolts-disturbed",
    words("hinge and fender bolts disturbed", "hinge and wing bolts disturbed"),
    "Look for broken paint on heads and washers, and for clean metal beside them.",
    {
      positions: "bolted-panels",
      consequence: "structure",
      minutes: 5,
      costRow: "panel-fit",
      presence: shouldBeAbsent,
    },
  ),
];
