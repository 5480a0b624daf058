import type { Item } from "@evenhand/shared/sheet";
import { code, faults, ranked, shouldBeAbsent, wear, works } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import { metalFaults } from "./fault-kinds.ts";
import { floorSeverities, structureSeverities } from "./fault-severities.ts";
import { fixedRoof, openBodies } from "./place.ts";

const rust = { consequence: "structure", time: "only-rises" } as const;
const worn = { consequence: "appearance", time: "only-rises", equipment: true } as const;

/** Where water gets in and stays, and roofs that come off. */
export const bodySpots: Item[] = [
  item(
    "body.cowl-water",
    words("cowl and plenum", "scuttle and plenum", ["cowl leak", "cowl rust"]),
    "With the owner's word pour a cup of water through the cowl's grille: it must leave under the car and not at the feet.",
    {
      consequence: "structure",
      minutes: 4,
      needs: ["permission"],
      costRow: "panel-repair",
      choice: ranked(
        ["drains", "drains, dry inside"],
        ["slow", "drains slowly", "small"],
        ["leaks", "leaks inside", "worth"],
        ["holes", "rusted through", "worth"],
      ),
    },
  ),
  item(
    "body.window-channels",
    words("window channels", "window apertures", ["rear window rust"]),
    "Look along the lower edge of windshield and rear window, under the trim where it lifts.",
    {
      ...rust,
      minutes: 3,
      costRow: "panel-repair",
      faults: faults(["blister", "corrosion", "perforation", "filler", "patch"], "length", floorSeverities),
    },
  ),
  item(
    "body.drip-rails",
    words("drip rails", "roof gutters"),
    "Look along the gutter over the doors for bubbles, filler and cracks in the sealer.",
    {
      ...rust,
      minutes: 1,
      costRow: "panel-repair",
      appliesWhen: fixedRoof,
      faults: faults(["blister", "corrosion", "perforation", "filler", "crack"], "length", floorSeverities),
    },
  ),
  item(
    "body.vinyl-roof",
    words("vinyl roof", undefined, ["landau top"]),
    "Press along seams and edges: bubbles and crackling mean rust beneath.",
    {
      ...worn,
      minutes: 2,
      costRow: "panel-repair",
      appliesWhen: fixedRoof,
      faults: faults(["blister", "corrosion", "tear", "fading"], "panel", floorSeverities),
    },
  ),
  item(
    "body.wood-frame",
    words("wooden frame", undefined, ["ash frame", "wood framing"]),
    "Press with a thumb, never a blade, at pillars, sills and roof rails, and watch whether a pillar moves with its door.",
    {
      consequence: "structure",
      equipment: true,
      minutes: 8,
      costRow: "panel-repair",
      choice: ranked(
        ["sound", "sound"],
        ["repaired", "repaired", "no-yardstick"],
        ["loose", "joints move", "worth"],
        ["soft", words("soft", undefined, ["rotten"]), "danger"],
      ),
    },
  ),
  item(
    "doors.vent-windows",
    words("vent windows", "quarterlights", ["wing windows"]),
    "Open, shut and latch each; look for rust in the frame.",
    {
      consequence: "mechanical",
      severity: "small",
      positions: "sides",
      equipment: true,
      minutes: 1,
      costRow: "latches",
      appliesWhen: { ventWindows: ["yes"] },
      working: works,
    },
  ),
  item(
    "doors.sunroof",
    words("sunroof", "sunroof", ["sliding roof"]),
    "Open and shut it fully, and look at its drains and frame.",
    {
      consequence: "mechanical",
      equipment: true,
      minutes: 2,
      costRow: "seals",
      appliesWhen: fixedRoof,
      working: works,
    },
  ),
  item(
    "doors.lift-off-panels",
    words("lift-off roof panels", undefined, ["T-tops", "targa panel"]),
    "Lift off and refit each panel with two hands; look at seals, latches and the roof between.",
    {
      ...worn,
      severity: "repair",
      minutes: 4,
      costRow: "seals",
      grade: wear,
    },
  ),
  ...(
    [
      [
        "interior.hardtop",
        words("hardtop", undefined, ["removable hard top"]),
        "Grade it on or off the car: fixings, seals, glass, lining.",
      ],
      [
        "interior.tonneau",
        words("tonneau cover", "tonneau cover", ["top boot"]),
        "Fit it and grade fabric, fasteners and zip.",
      ],
      [
        "interior.side-curtains",
        words("side curtains", "side screens"),
        "Fit both and grade frames and panes.",
      ],
    ] as const
  ).map(([id, named, how]) =>
    item(id, named, how, {
      ...worn,
      minutes: 3,
      costRow: "convertible-top",
      appliesWhen: openBodies,
      grade: wear,
    }),
  ),
  item(
    "interior.top-pump",
    words("top pump and cylinders", "hood pump and rams"),
    "Look for oil at pump, hoses and cylinders before the top is worked.",
    {
      consequence: "mechanical",
      equipment: true,
      minutes: 2,
      costRow: "convertible-top",
      appliesWhen: { ...openBodies, powerTop: ["yes"] },
      choice: ranked(["dry", "dry"], ["weep", "weeps", "small"], ["leaks", "leaks", "repair"]),
    },
  ),
  item(
    "trunk.loose-items",
    words("loose items in the car"),
    "Look in trunk, cabin and under seats for what would fly about or get lost on a truck.",
    {
      consequence: "papers",
      severity: "small",
      costRow: null,
      minutes: 1,
      presence: shouldBeAbsent,
    },
  ),
];

/** Metal that rots out of sight, and what carries the body. */
export const structureSpots: Item[] = [
  ...(
    [
      [
        "underbody.battery-tray",
        words("battery tray"),
        "Look under and beside the battery: acid eats tray, apron and rail below.",
        floorSeverities,
        "panel-repair",
        false,
      ],
      [
        "underbody.radiator-support",
        words("radiator support", "front panel and slam panel", ["core support"]),
        "Look at its feet, mounts and lower edge; compare left with right.",
        floorSeverities,
        "panel-repair",
        false,
      ],
      [
        "underbody.firewall",
        words("firewall", "bulkhead"),
        "Look at seams, pedal mounts and the corners below the cowl.",
        structureSeverities,
        "floor",
        false,
      ],
      [
        "underbody.hinge-pillars",
        words("hinge pillars", "A-posts", ["door pillars"]),
        "Open each door: look and feel at the pillar's foot.",
        structureSeverities,
        "rockers",
        false,
      ],
      [
        "underbody.trunk-drop-offs",
        words("trunk drop-offs", "boot floor extensions", ["trunk extensions"]),
        "Feel down between trunk floor and quarter panel, both sides.",
        floorSeverities,
        "trunk-floor",
        false,
      ],
    ] as const
  ).map(([id, named, how, severities, costRow]) =>
    item(id, named, how, {
      ...rust,
      minutes: 2,
      costRow,
      cautions: ["lead-paint"],
      faults: faults(metalFaults, "length", [...severities]),
    }),
  ),
  item(
    "underbody.body-mounts",
    words("body mounts", undefined, ["cab mounts", "body bushings"]),
    "Look at every rubber, bolt and the metal round it.",
    {
      consequence: "structure",
      needs: ["lift"],
      minutes: 4,
      costRow: "bushings",
      appliesWhen: { construction: ["body-on-frame"] },
      choice: ranked(
        ["sound", "sound"],
        ["cracked", "cracked or flat", "small"],
        ["gone", "gone, or metal soft round them", "worth"],
      ),
    },
  ),
  item(
    "underbody.subframe-bushings",
    words("subframe bushings", "subframe bushes"),
    "Look at rubber and bolts; a pry bar by hand, the car's weight on its wheels or the lift.",
    {
      consequence: "structure",
      equipment: true,
      needs: ["lift"],
      minutes: 3,
      costRow: "bushings",
      appliesWhen: { construction: ["unit-body"] },
      choice: ranked(
        ["sound", "sound"],
        ["cracked", "cracked", "small"],
        ["gone", "gone, metal on metal", "repair"],
      ),
    },
  ),
  item(
    "underbody.ground-clearance",
    words("ground clearance"),
    "Measure the lowest part of the car over level ground, exhaust and spoiler included.",
    {
      consequence: "mechanical",
      minutes: 2,
      costRow: "springs",
      reading: reading({
        unit: "mm",
        alsoIn: ["in"],
        delta: [20],
        scatter: [3],
        placement: 2,
        betterIs: "higher",
        plausible: [20, 500],
        typical: 140,
        ask: [1, 1],
        byEye: [40],
        instrument: ["steel rule", 1, [2]],
      }),
    },
  ),
  item(
    "underbody.tie-down-points",
    words("tie-down points", "lashing points", ["tow eyes"]),
    "Find where a carrier may pull and lash, and tap the metal there.",
    {
      consequence: "safety",
      needs: ["lift"],
      minutes: 2,
      costRow: "rails",
      choice: ranked(
        ["sound", "there and sound"],
        ["wheels-only", "only over the wheels", "no-yardstick"],
        ["unsound", "not sound", "danger"],
      ),
    },
  ),
  item(
    "electrics.battery-cutoff",
    words("battery cut-off", "battery isolator"),
    "Turn it off and on and see that everything dies and comes back.",
    {
      consequence: "mechanical",
      severity: "small",
      equipment: true,
      minutes: 1,
      costRow: "battery",
      cautions: ["battery"],
      working: works,
    },
  ),
  item(
    "road.moves",
    words("can it be moved", undefined, ["non-runner", "roller"]),
    "Without driving off: does it start, roll, steer, brake and hold.",
    {
      consequence: "mechanical",
      positions: "moving",
      core: true,
      minutes: 3,
      costRow: "tune-up",
      cautions: ["carbon-monoxide", "chocks", "slope"],
      working: { at: { brakes: "danger", holds: "danger", steers: "danger" } },
    },
  ),
  item(
    "road.starting-trick",
    words("the trick to start it", undefined, ["starting procedure", "hidden switch"]),
    "Write down what the keeper does: choke, pump, hidden switch, which key.",
    {
      consequence: "papers",
      severity: "small",
      costRow: null,
      minutes: 1,
      code: code("own-words"),
    },
  ),
];
