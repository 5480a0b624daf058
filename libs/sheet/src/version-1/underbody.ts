import type { Item } from "@evenhand/shared/sheet";
import { faults, ranked, rankedLoosely, shouldBeAbsent } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { ReadingDraft } from "./draft.ts";
import { metalFaults } from "./fault-kinds.ts";
import {
  floorSeverities,
  jackingSeverities,
  structureSeverities,
  towerSeverities,
} from "./fault-severities.ts";

type Beneath = Pick<Item, "consequence" | "time" | "needs" | "cautions">;
const metal: Beneath = {
  consequence: "structure",
  time: "only-rises",
  needs: ["lift"],
  cautions: ["lead-paint"],
};
const steady: Beneath = { ...metal, time: "steady" };

const tape: ReadingDraft = {
  unit: "mm",
  alsoIn: ["in", "cm"],
  delta: [8],
  scatter: [1.5],
  placement: 1,
  betterIs: "target",
  plausible: [500, 6000],
  typical: 2750,
  ask: [2, 1],
  byEye: [100],
  instrument: ["steel tape or trammel", 1, [1, 0.0001]],
};

/** Rails, floors and joints from below. */
export const underbody: Item[] = [
  item(
    "underbody.lift-points",
    words("lift points", "jacking points", ["jack points"]),
    "Before lifting: press, tap and look at each point the arms will take.",
    {
      consequence: "safety",
      time: "only-rises",
      positions: "floor-quarters",
      core: true,
      minutes: 3,
      costRow: "floor",
      cautions: ["lift-points", "jack-alone"],
      choice: rankedLoosely(
        ["sound", "sound"],
        ["surface-corrosion", words("surface corrosion", "surface rust")],
        ["patched", "patched", "danger"],
        ["soft", words("soft or perforated", undefined, ["rotten"]), "danger"],
      ),
    },
  ),
  item(
    "underbody.rails",
    words("frame rails", "chassis legs", ["subframe rails", "chassis rails"]),
    "Look along and tap each rail, drain holes and inner faces too.",
    {
      ...metal,
      positions: "rails",
      core: true,
      minutes: 5,
      costRow: "rails",
      faults: faults(metalFaults, "length", structureSeverities),
    },
  ),
  item(
    "underbody.rail-joints",
    words("rail joints", undefined, ["splice", "frame joints"]),
    "Look where rails meet floor, firewall and cross-members.",
    {
      ...metal,
      positions: "rails",
      minutes: 4,
      costRow: "rails",
      faults: faults(metalFaults, "length", structureSeverities),
    },
  ),
  item("underbody.torque-boxes", words("torque boxes"), "Look at each box's skins and flanges.", {
    ...metal,
    positions: "floor-quarters",
    equipment: true,
    appliesWhen: { torqueBoxes: ["yes"] },
    minutes: 3,
    costRow: "rails",
    faults: faults(metalFaults, "quarter-floor", structureSeverities),
  }),
  item(
    "underbody.floor-pans",
    words("floor pans", "floors", ["floorpan"]),
    "Tap each quarter from below, compare with above where carpet may be lifted.",
    {
      ...metal,
      positions: "floor-quarters",
      core: true,
      minutes: 3,
      costRow: "floor",
      faults: faults(metalFaults, "quarter-floor", floorSeverities),
    },
  ),
  item(
    "underbody.floor-repair",
    words("floor as built"),
    "Compare ribs, drain plugs, seams and sealer with the maker's pressing.",
    {
      ...steady,
      positions: "floor-quarters",
      minutes: 3,
      costRow: "floor",
      choice: ranked(
        ["as-built", words("as built", undefined, ["original floor"])],
        ["replaced", "replaced, neat", "worth"],
        ["patched", "patched", "worth"],
        ["covered-over", "new sheet over old", "worth"],
      ),
    },
  ),
  item("underbody.cross-members", words("cross-members"), "Look at each, bolts and welds too.", {
    ...metal,
    positions: "cross-members",
    minutes: 3,
    costRow: "rails",
    faults: faults(metalFaults, "length", structureSeverities),
  }),
  item(
    "underbody.inner-rockers",
    words("inner rockers", "inner sills"),
    "Look from below and through drain holes.",
    {
      ...metal,
      positions: "sides-under",
      core: true,
      minutes: 3,
      costRow: "rockers",
      faults: faults(metalFaults, "length", structureSeverities),
    },
  ),
  item(
    "underbody.pinch-welds",
    words("pinch welds", "sill seams", ["sill flange"]),
    "Look along the seam for crushing, splitting, filler.",
    {
      ...metal,
      positions: "sides-under",
      equipment: true,
      minutes: 2,
      costRow: "rockers",
      faults: faults(
        ["crushed-seam", "corrosion", "perforation", "filler", "bend"],
        "length",
        structureSeverities,
      ),
    },
  ),
  item(
    "underbody.spring-hangers",
    words("spring hangers", undefined, ["leaf spring mounts", "shackles"]),
    "Look at brackets, boxes and the rail around them.",
    {
      ...metal,
      positions: "sides-under",
      equipment: true,
      minutes: 3,
      costRow: "rails",
      faults: faults(metalFaults, "length", structureSeverities),
    },
  ),
  item(
    "underbody.towers",
    words("spring and damper towers", "spring and damper turrets", ["shock towers", "strut towers"]),
    "Look from below and from the engine bay or trunk: cracks, plates, pulled bolts.",
    {
      ...metal,
      positions: "corners-under",
      core: true,
      minutes: 3,
      costRow: "towers",
      faults: faults(metalFaults, "length", towerSeverities),
    },
  ),
  item(
    "underbody.rear-rails-over-axle",
    words("rear rails over the axle", "rear chassis legs over the axle"),
    "Lamp and mirror above the axle.",
    {
      ...metal,
      positions: "sides-under",
      core: true,
      minutes: 3,
      costRow: "rails",
      faults: faults(metalFaults, "length", structureSeverities),
    },
  ),
  item(
    "underbody.outer-wheelhouses",
    words("outer wheelhouses", "outer wheel arches"),
    "Feel the lip and look at the seam to the outer panel.",
    {
      ...metal,
      positions: "corners-under",
      minutes: 4,
      costRow: "wheelhouse",
      faults: faults([...metalFaults, "filler"], "length", floorSeverities),
    },
  ),
  item("underbody.jacking-damage", words("jacking damage"), "Look where jacks should not have been.", {
    ...metal,
    time: "steady",
    positions: "floor-quarters",
    minutes: 2,
    costRow: "floor",
    faults: faults(["dent", "buckle", "crushed-seam", "bend"], "quarter-floor", jackingSeverities),
  }),
  item(
    "underbody.collision-repair",
    words("collision repair", "accident repair", ["frame damage", "crash damage"]),
    "Look for pulled rails, clamp marks, new sections, odd sealer.",
    {
      ...steady,
      core: true,
      minutes: 4,
      costRow: "rails",
      choice: ranked(
        ["none", words("none", undefined, ["accident-free", "never hit"])],
        ["repaired-well", "repaired well", "worth"],
        ["repaired-poorly", "repaired poorly", "danger"],
        ["unrepaired", "not repaired", "danger"],
      ),
    },
  ),
  item(
    "underbody.welds-and-sealer",
    words("weld and sealer quality"),
    "Compare beads, spot spacing and sealer strokes with untouched seams.",
    {
      ...steady,
      positions: "floor-quarters",
      minutes: 4,
      costRow: "floor",
      choice: ranked(
        ["as-built", "as built"],
        ["neat", "neat repair", "worth"],
        ["rough", "rough", "worth"],
        ["failing", "cracked or lifting", "danger"],
      ),
    },
  ),
  item(
    "underbody.fresh-undercoat",
    words("fresh undercoat over rust", "fresh underseal over rust", ["fresh undercoating"]),
    "Press with a thumb: soft coat over scale; look for overspray on hoses.",
    {
      ...steady,
      positions: "floor-quarters",
      core: true,
      cautions: ["asbestos-undercoat"],
      minutes: 2,
      costRow: "floor",
      presence: shouldBeAbsent,
    },
  ),
  item(
    "underbody.wheelbase",
    words("wheelbase"),
    "Hub center to hub center, wheels straight ahead, each side.",
    {
      ...steady,
      needs: [],
      cautions: [],
      positions: "sides-under",
      minutes: 5,
      costRow: "rails",
      reading: reading(tape),
    },
  ),
  item(
    "underbody.diagonals",
    words("underbody diagonals", undefined, ["cross measurements", "square"]),
    "Between the same two points of each side, named in the note.",
    {
      ...steady,
      positions: "diagonals",
      minutes: 6,
      costRow: "rails",
      reading: reading({ ...tape, delta: [9], placement: 1.2 }),
    },
  ),
];
