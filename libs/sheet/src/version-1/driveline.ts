import type { Item } from "@evenhand/shared/sheet";
import { code, faults, leak, leakBySource, ranked, rankedLoosely, wear } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { ReadingDraft } from "./draft.ts";
import { lineFaults } from "./fault-kinds.ts";
import {
  bootSeverities,
  dangers,
  exhaustSeverities,
  lineSeverities,
  shaftSeverities,
  tankSeverities,
} from "./fault-severities.ts";

type Beneath = Pick<Item, "consequence" | "needs">;
type Fuel = Pick<Item, "consequence" | "needs" | "cautions">;
const beneath: Beneath = { consequence: "mechanical", needs: ["lift"] };
const fuel: Fuel = { consequence: "safety", needs: ["lift"], cautions: ["cold-lamps", "fuel-leak"] };

const ratio: ReadingDraft = {
  unit: "1",
  alsoIn: [],
  delta: [0.1],
  scatter: [0.002],
  betterIs: "target",
  plausible: [1.5, 8],
  typical: 3.58,
  ask: [1, 1],
  byEye: [0.02],
  instrument: ["the tag itself", 0.01, [0]],
  readOff: true,
};
const teeth = (plausible: [number, number], typical: number): ReadingDraft => ({
  ...ratio,
  delta: [0.5],
  scatter: [0],
  plausible,
  typical,
  byEye: [0.2],
  instrument: ["counting", 0, [0.1]],
  readOff: true,
});

/** Leaks, shafts, axle. */
export const driveline: Item[] = [
  ...[
    {
      id: "driveline.leaks-before",
      name: "leaks before the road",
      how: "First lift, before anything is wiped: at each source none, weep, drip or run.",
    },
    {
      id: "driveline.leaks-after",
      name: "leaks after the road",
      how: "Second lift, hot: fresh oil shows its source.",
    },
  ].map(({ id, name, how }) =>
    item(id, words(name, undefined, ["oil leak", "drips", "seepage"]), how, {
      ...beneath,
      positions: "leak-sources",
      equipment: true,
      core: true,
      minutes: 4,
      costRow: "seals-engine",
      cautions: ["cold-lamps", "fuel-leak"],
      choice: leakBySource,
    }),
  ),
  item(
    "driveline.driveshaft",
    words("driveshaft", "propshaft", ["prop shaft", "drive shaft"]),
    "Look for dents, lost weights, rust, a wet yoke.",
    {
      ...beneath,
      equipment: true,
      minutes: 2,
      costRow: "driveshaft",
      faults: faults(["dent", "bend", "corrosion", "crack", "missing-piece"], "length", shaftSeverities),
    },
  ),
  item(
    "driveline.joint-play",
    words("universal joint play", undefined, ["u-joint", "UJ", "universal joint"]),
    "Twist and lift against each joint by hand.",
    {
      ...beneath,
      positions: "driveshaft-joints",
      time: "only-rises",
      equipment: true,
      minutes: 3,
      costRow: "driveshaft",
      choice: ranked(
        ["none", "none"],
        ["slight", "slight", "small"],
        ["clear", "clear play", "repair"],
        ["rough", "rough or rusty", "repair"],
      ),
    },
  ),
  item(
    "driveline.half-shaft-boots",
    words("half-shaft boots", "driveshaft gaiters", ["CV boots"]),
    "Engine off, out of gear, turn the wheels by hand: splits, grease thrown.",
    {
      ...beneath,
      positions: "sides-under",
      time: "only-rises",
      minutes: 2,
      cautions: ["limited-slip", "chocks"],
      costRow: "driveshaft",
      appliesWhen: { driven: ["front", "all"] },
      faults: faults(["crack", "tear", "missing-piece"], "length", bootSeverities),
    },
  ),
  item(
    "driveline.axle-ratio",
    words("axle ratio", "final drive ratio", ["rear end ratio", "differential ratio", "gears"]),
    "Say what is claimed or on papers; turns, teeth and road speed are read beside it.",
    {
      ...beneath,
      needs: [],
      severity: "worth",
      asked: "statement",
      minutes: 1,
      costRow: "axle",
      reading: reading(ratio),
    },
  ),
  item(
    "driveline.axle-ratio-tag",
    words("axle ratio by tag"),
    "Copy the ratio from the axle's tag or stamp.",
    { ...beneath, severity: "worth", minutes: 2, costRow: null, reading: reading(ratio) },
  ),
  item(
    "driveline.axle-turns",
    words("driveshaft turns for one wheel turn", "propshaft turns for one wheel turn"),
    "Neutral, key out, chalk on tire and shaft: turn one wheel by hand, or both together, ten turns or more, and write the shaft's turns for one turn of the wheel just as counted; whether both wheels turned is noted, the sum is made for you.",
    {
      ...beneath,
      minutes: 6,
      costRow: null,
      conditions: ["both-wheels"],
      cautions: ["chocks", "limited-slip"],
      reading: reading({
        ...ratio,
        delta: [0.15],
        scatter: [0.03],
        placement: 0.015,
        ask: [2, 1],
        byEye: [0.3],
        instrument: ["chalk marks", 0.05, [0.01]],
      }),
    },
  ),
  item(
    "driveline.ring-teeth",
    words("ring gear teeth", "crown wheel teeth"),
    "Count with the cover off, or from the stamp.",
    {
      ...beneath,
      needs: ["lift", "dismantling"],
      severity: "worth",
      minutes: 10,
      costRow: null,
      reading: reading(teeth([20, 80], 43)),
    },
  ),
  item("driveline.pinion-teeth", words("pinion teeth"), "Count with the cover off, or from the stamp.", {
    ...beneath,
    needs: ["lift", "dismantling"],
    severity: "worth",
    minutes: 2,
    costRow: null,
    reading: reading(teeth([5, 20], 12)),
  }),
  item(
    "driveline.limited-slip",
    words("limited slip", undefined, ["limited-slip differential", "LSD", "locking axle"]),
    "Engine off, out of gear, both wheels free: turn one by hand, which way the other goes. Never with the engine.",
    {
      ...beneath,
      equipment: true,
      minutes: 2,
      costRow: "axle",
      cautions: ["limited-slip", "chocks"],
      choice: ranked(
        ["works", "fitted, works"],
        ["open", words("open axle", "open differential"), "no-yardstick"],
        ["worn", "fitted, worn", "repair"],
      ),
    },
  ),
  item(
    "driveline.pinion-seal",
    words("pinion seal leak"),
    "Look behind the flange and for a thrown ring on the floor.",
    { ...beneath, sameAs: "driveline.leaks-before", minutes: 1, costRow: "axle", choice: leak },
  ),
  item(
    "driveline.mounts",
    words("engine and gearbox mounts", "engine and gearbox mountings", ["motor mounts"]),
    "Look at the rubber, and pry gently by hand with the engine off; nobody loads the engine while anybody is under or before the car.",
    {
      ...beneath,
      positions: "mounts",
      time: "only-rises",
      cautions: ["raised-car"],
      minutes: 3,
      costRow: "mounts",
      choice: ranked(
        ["sound", "sound"],
        ["cracked", "cracked", "small"],
        ["oil-soaked", "soaked in oil", "repair"],
        ["separated", words("separated", undefined, ["broken"]), "danger"],
      ),
    },
  ),
  item(
    "driveline.gearbox-fluid",
    words("gearbox fluid", "gearbox oil", ["transmission fluid"]),
    "Level, color, smell, metal.",
    {
      ...beneath,
      needs: [],
      time: "drifts",
      minutes: 2,
      costRow: "gearbox",
      cautions: ["chocks", "fans-and-belts", "carbon-monoxide", "hot-parts"],
      choice: {
        ...rankedLoosely(
          ["clean", "clean and full"],
          ["dark", "dark"],
          ["low", "low", "small"],
          ["burnt", "burnt", "repair"],
          ["metal", "metal in it", "worth"],
        ),
        several: true,
        drifting: ["low"],
      },
    },
  ),
];

/** Exhaust, tank, lines, cable. */
export const plumbing: Item[] = [
  item(
    "driveline.exhaust",
    words("exhaust", undefined, ["muffler", "silencer", "headers"]),
    "Look and tap at each part, engine off, once it can be touched; what blows is listened for on the ground, from beside the car.",
    {
      ...beneath,
      positions: "exhaust-parts",
      time: "only-rises",
      core: true,
      minutes: 3,
      costRow: "exhaust",
      cautions: ["hot-parts", "carbon-monoxide"],
      faults: faults(
        ["corrosion", "perforation", "blow-hole", "crack", "dent", "patch", "missing-piece"],
        "length",
        exhaustSeverities,
      ),
    },
  ),
  item(
    "driveline.tank-outside",
    words("fuel tank, outside", "petrol tank, outside", ["gas tank"]),
    "Look at seams, straps, filler neck; smell.",
    {
      ...fuel,
      time: "only-rises",
      core: true,
      minutes: 3,
      costRow: "tank",
      faults: faults(["corrosion", "perforation", "dent", "patch", "crack"], "panel", tankSeverities),
    },
  ),
  item(
    "driveline.tank-inside",
    words("fuel tank, inside", "petrol tank, inside"),
    "Through the filler with a cold, sealed lamp.",
    {
      ...fuel,
      needs: [],
      time: "only-rises",
      minutes: 2,
      costRow: "tank",
      choice: ranked(
        ["clean", "clean"],
        ["coated", words("coated", undefined, ["sealed tank"]), "no-yardstick"],
        ["rusty", "rusty", "repair"],
      ),
    },
  ),
  item(
    "driveline.fuel-hoses",
    words("fuel hoses", "petrol hoses", ["gas lines", "rubber fuel line"]),
    "Every rubber piece from tank to carburetor: soft, cracked, swollen.",
    {
      ...fuel,
      time: "only-rises",
      core: true,
      equipment: true,
      minutes: 3,
      costRow: "fuel-lines",
      faults: faults(["crack", "swelling", "hardening", "chafe", "cut"], "length", dangers),
    },
  ),
  item(
    "driveline.fuel-hose-date",
    words("fuel hose age", undefined, ["date of the fuel hose"]),
    "Copy grade and date printed on the hose.",
    { ...fuel, severity: "repair", minutes: 2, costRow: "fuel-lines", code: code("date-code") },
  ),
  item(
    "driveline.lines",
    words("fuel and brake lines", "fuel and brake pipes", ["hard lines", "brake pipes"]),
    "Follow each line from end to end; wipe, never scrape hard.",
    {
      ...fuel,
      positions: "lines",
      time: "only-rises",
      core: true,
      minutes: 3,
      costRow: "lines",
      faults: faults(lineFaults, "length", lineSeverities),
    },
  ),
  item(
    "driveline.parking-brake-cable",
    words("parking-brake cable", "handbrake cable"),
    "Follow the cable: fray, rust, free run.",
    {
      consequence: "safety",
      needs: ["lift"],
      time: "only-rises",
      minutes: 2,
      costRow: "parking-brake",
      grade: wear,
    },
  ),
];
