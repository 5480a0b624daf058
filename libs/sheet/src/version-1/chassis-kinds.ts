import type { Item } from "@evenhand/shared/sheet";
import { code, faults, ranked, unranked } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import { hoseFaults } from "./fault-kinds.ts";
import { repairs } from "./fault-severities.ts";

const beneath = { consequence: "safety", needs: ["lift"], time: "only-rises" } satisfies Partial<Item>;
const play = ranked(["tight", "tight"], ["slight", "slight play", "small"], ["loose", "loose", "danger"]);

/** Joints, hoses and circuits that not every car has. */
export const steeringKinds: Item[] = [
  item(
    "steering.king-pin-play",
    words("king pin play", "king pin play", ["trunnion play"]),
    "Wheel rocked at twelve and six, the brake held on by a pedal jack set before lifting so that bearing play is out of it, dial indicator at the rim.",
    {
      ...beneath,
      positions: "sides-under",
      equipment: true,
      core: true,
      minutes: 4,
      costRow: "ball-joints",
      cautions: ["local-law"],
      appliesWhen: { frontPivots: ["king-pins"] },
      reading: reading({
        unit: "mm",
        alsoIn: ["in"],
        delta: [1],
        scatter: [0.2],
        placement: 0.1,
        betterIs: "lower",
        plausible: [0, 40],
        typical: 0.8,
        ask: [2, 1],
        byEye: [2],
        instrument: ["dial indicator", 0.01, [0.05]],
        riseAllowed: 0.1,
      }),
    },
  ),
  ...(
    [
      [
        "steering.idler-and-pitman",
        words("idler and pitman arms", "idler and drop arms"),
        "By hand, wheels on the ground or a drive-on lift: up and down at idler and pitman arm.",
      ],
      [
        "steering.drag-link",
        words("drag link", "drag link", ["relay rod", "center link"]),
        "By hand at each end, along the rod.",
      ],
    ] as const
  ).map(([id, named, how]) =>
    item(id, named, how, {
      ...beneath,
      equipment: true,
      minutes: 2,
      costRow: "steering-linkage",
      choice: play,
    }),
  ),
  item("steering.hoses", words("power steering hoses"), "Engine off: look and squeeze from pump to box.", {
    ...beneath,
    consequence: "mechanical",
    equipment: true,
    minutes: 1,
    costRow: "steering-box",
    faults: faults(hoseFaults, "length", repairs),
  }),
];

export const drivelineKinds: Item[] = [
  item(
    "driveline.center-bearing",
    words("center bearing", "centre bearing"),
    "Lift the shaft at the bearing by hand; look at rubber and seat.",
    {
      ...beneath,
      consequence: "mechanical",
      equipment: true,
      minutes: 1,
      costRow: "driveshaft",
      choice: ranked(
        ["sound", "sound"],
        ["cracked", "cracked", "small"],
        ["loose", "loose or noisy", "repair"],
      ),
    },
  ),
  item(
    "driveline.clutch-hydraulics",
    words("clutch hydraulics"),
    "Look at both cylinders and the hose; press the pedal, car in neutral, and watch for a fall.",
    {
      consequence: "mechanical",
      severity: "repair",
      equipment: true,
      minutes: 2,
      costRow: "clutch",
      appliesWhen: { gearbox: ["manual"] },
      choice: ranked(
        ["dry", "dry"],
        ["damp", "damp", "small"],
        ["leaks", "leaks", "repair"],
        ["falls", "pedal falls", "repair"],
      ),
    },
  ),
  item(
    "driveline.transfer-case",
    words("transfer case and hubs", "transfer box and hubs"),
    "At rest: every range in and out; each hub locked and free.",
    {
      consequence: "mechanical",
      equipment: true,
      minutes: 3,
      costRow: "gearbox",
      appliesWhen: { driven: ["all"] },
      working: {},
    },
  ),
];

export const brakeKinds: Item[] = [
  item(
    "brakes.circuit",
    words("brake circuit", undefined, ["dual circuit", "single circuit", "rod brakes"]),
    "Look at the reservoirs: one, two or none.",
    {
      consequence: "safety",
      severity: "repair",
      minutes: 1,
      costRow: null,
      cautions: ["prop-hood"],
      choice: unranked(["dual", "two circuits"], ["single", "one circuit"], ["mechanical", "rods or cables"]),
    },
  ),
  item(
    "brakes.fluid-kind",
    words("brake fluid kind", undefined, ["DOT 3", "DOT 4", "silicone"]),
    "Read cap and papers; a drop that does not mix with water is silicone.",
    {
      consequence: "safety",
      severity: "repair",
      equipment: true,
      minutes: 1,
      costRow: "brake-fluid",
      cautions: ["prop-hood"],
      choice: unranked(
        ["dot-3", "DOT 3"],
        ["dot-4", "DOT 4"],
        ["dot-5-1", "DOT 5.1"],
        ["dot-5", words("DOT 5, silicone")],
        ["mixed", "mixed", "danger"],
      ),
    },
  ),
  item(
    "brakes.rods",
    words("brake rods, cams and cables"),
    "By hand and eye, car on the lift: clevis pins, cams, equalizer, frayed strands.",
    {
      ...beneath,
      equipment: true,
      minutes: 4,
      costRow: "brake-friction",
      choice: ranked(
        ["sound", "sound"],
        ["worn", "worn", "danger"],
        ["seized", "seized or frayed", "danger"],
      ),
    },
  ),
];

export const wheelKinds: Item[] = [
  item(
    "wheels.hub-caps",
    words("hub caps and trim rings", "hub caps and rim embellishers", ["wheel covers"]),
    "Count them; dents, plating, the right ones.",
    {
      consequence: "appearance",
      equipment: true,
      minutes: 1,
      costRow: "trim",
      choice: ranked(
        ["complete", "complete, sound"],
        ["marked", "dented or pitted", "small"],
        ["incomplete", "some missing", "small"],
      ),
    },
  ),
  item(
    "wheels.tubes",
    words("tubes", "inner tubes"),
    "Look at valves and sidewalls: tubeless or tubed, and whether a tube sits in a radial tire.",
    {
      consequence: "safety",
      severity: "repair",
      equipment: true,
      minutes: 1,
      costRow: "tire",
      choice: unranked(
        ["tubeless", "tubeless"],
        ["tubed-right", "tubed, as the wheel asks"],
        ["tubed-wrong", "tube where none belongs", "repair"],
        ["missing", "no tube where the wheel needs one", "danger"],
      ),
    },
  ),
  item(
    "wheels.load-and-speed",
    words("load and speed rating", undefined, ["load index", "load range"]),
    "Copy both from the sidewall and set them against the car's weight and speed.",
    {
      consequence: "safety",
      severity: "repair",
      positions: "corners-and-spare",
      minutes: 2,
      costRow: "tire",
      code: code("text"),
    },
  ),
];
