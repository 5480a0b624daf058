import type { Item } from "@evenhand/shared/sheet";
import { code, faults, leak, ranked, shouldBeAbsent, wear } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import { hoseFaults } from "./fault-kinds.ts";
import { repairs } from "./fault-severities.ts";

const mechanical = { consequence: "mechanical" } as const;
const open = ["prop-hood", "fans-and-belts"];
const running = [...open, "carbon-monoxide"];
const dimension = (
  unit: "in" | "in3",
  plausible: [number, number],
  typical: number,
  delta: [number, number],
) =>
  reading({
    unit,
    alsoIn: unit === "in" ? ["mm"] : ["cm3", "l"],
    delta,
    scatter: [0, 0.0005],
    betterIs: "target",
    plausible,
    typical,
    ask: [1, 1],
    byEye: [0, 0.005],
    instrument: ["paper or bore gauge", unit === "in" ? 0.001 : 1, [unit === "in" ? 0.002 : 0.8]],
    readOff: true,
  });

/** The engine bay by eye, ear and nose. */
export const engine: Item[] = [
  item(
    "engine.oil",
    words("engine oil", undefined, ["oil condition", "milky oil"]),
    "Pull the dipstick cold: level, color, water, smell of fuel.",
    {
      ...mechanical,
      time: "drifts",
      core: true,
      minutes: 2,
      costRow: "oil-service",
      cautions: open,
      choice: {
        ...ranked(
          ["clean", "clean and full"],
          ["used", "used"],
          ["low", "low", "small"],
          ["fuel-thinned", "smells of fuel", "repair"],
          ["milky", words("milky", undefined, ["emulsified", "mayonnaise"]), "worth"],
        ),
        several: true,
        neighbors: "consistent",
        drifting: ["used", "low"],
      },
    },
  ),
  item(
    "engine.coolant",
    words("coolant", "coolant", ["antifreeze condition"]),
    "Cold, cap off: color, rust, oil, level.",
    {
      ...mechanical,
      time: "drifts",
      equipment: true,
      minutes: 2,
      costRow: "coolant",
      cautions: [...open, "hot-coolant"],
      choice: {
        ...ranked(
          ["clean", "clean and full"],
          ["low", "low", "small"],
          ["rusty", "rusty", "repair"],
          ["oily", "oily", "worth"],
        ),
        several: true,
        drifting: ["low"],
      },
    },
  ),
  item(
    "engine.belts",
    words("belts", undefined, ["fan belt", "drive belt"]),
    "Engine off: cracks, glaze, tension.",
    {
      ...mechanical,
      time: "only-rises",
      equipment: true,
      minutes: 2,
      costRow: "belts-and-hoses",
      cautions: open,
      grade: wear,
    },
  ),
  item(
    "engine.hoses",
    words("hoses", undefined, ["radiator hose", "rear hose", "heater hose"]),
    "Cold: squeeze each hose; look at its ends.",
    {
      ...mechanical,
      time: "only-rises",
      equipment: true,
      minutes: 3,
      costRow: "belts-and-hoses",
      cautions: [...open, "hot-coolant"],
      faults: faults(hoseFaults, "length", repairs),
    },
  ),
  item(
    "engine.radiator",
    words("radiator leak"),
    "Look for green, white or rusty tracks on tanks and core.",
    {
      ...mechanical,
      equipment: true,
      minutes: 2,
      costRow: "radiator",
      cautions: [...open, "hot-coolant"],
      choice: leak,
    },
  ),
  item(
    "engine.wiring",
    words("engine bay wiring", undefined, ["harness", "loom"]),
    "Look for splices, bare ends, brittle cloth, cut connectors; a car turned electric is left to a qualified person.",
    {
      ...mechanical,
      consequence: "safety",
      core: true,
      minutes: 3,
      costRow: "wiring",
      cautions: ["rodent-nests", ...open, "battery", "electric-conversion"],
      choice: ranked(
        ["as-built", "as built"],
        ["renewed", "renewed to pattern"],
        ["spliced", "spliced neatly", "repair"],
        ["bodged", words("bare, burnt or loose", undefined, ["hacked", "bodged"]), "danger"],
      ),
    },
  ),
  item(
    "engine.fuel-smell",
    words("fuel smell", "petrol smell", ["gas smell", "gasoline smell"]),
    "Before starting and after the road, nose at carburetor, pump, hoses.",
    {
      ...mechanical,
      consequence: "safety",
      core: true,
      minutes: 1,
      costRow: "fuel-lines",
      cautions: [...open, "fuel-leak", "cold-lamps"],
      presence: shouldBeAbsent,
    },
  ),
  ...[
    {
      id: "engine.smoke-cold",
      name: "smoke, cold start",
      needs: ["cold-engine" as const],
      blue: "repair" as const,
    },
    { id: "engine.smoke-warm", name: "smoke, warm", needs: ["hot-engine" as const], blue: "worth" as const },
  ].map(({ id, name, needs, blue }) =>
    item(
      id,
      words(name, undefined, ["exhaust smoke"]),
      "A second person watches the tail pipe: color, how long, when.",
      {
        ...mechanical,
        core: true,
        minutes: 1,
        needs,
        costRow: "engine-rebuild",
        cautions: running,
        choice: {
          ...ranked(
            ["none", "none"],
            ["vapor", words("white vapor that clears", "white vapour that clears")],
            ["white", "white, stays", "worth"],
            ["blue", words("blue", undefined, ["oil smoke"]), blue],
            ["black", words("black", undefined, ["rich"]), "repair"],
          ),
          // Vapor that clears is what a sound engine may show on one morning and not on the next.
          neighbors: "consistent" as const,
          several: true,
        },
      },
    ),
  ),
  item(
    "engine.noise",
    words("engine noise", undefined, ["knock", "tick", "lifter noise", "rod knock"]),
    "Listen cold and warm, idle and a light rev.",
    {
      ...mechanical,
      core: true,
      minutes: 3,
      costRow: "engine-rebuild",
      cautions: running,
      choice: {
        ...ranked(
          ["quiet", "quiet"],
          ["tick-cold", "ticks cold, quiet warm", "small"],
          ["tick-warm", "ticks warm", "repair"],
          ["knock", "knocks", "worth"],
        ),
        several: true,
      },
    },
  ),
  item(
    "engine.finish",
    words("engine bay finish", undefined, ["engine paint", "detailing"]),
    "Grade paint and plating of block, heads, covers, inner fenders.",
    {
      ...mechanical,
      consequence: "appearance",
      severity: "small",
      minutes: 3,
      costRow: "engine-bay-finish",
      cautions: ["prop-hood"],
      grade: wear,
    },
  ),
  item(
    "engine.as-built",
    words("finish and clamps as built", undefined, ["correct clamps", "factory decals"]),
    "Compare clamps, decals, hose marks and finishes with period pictures.",
    {
      ...mechanical,
      consequence: "appearance",
      severity: "worth",
      minutes: 5,
      costRow: "engine-bay-finish",
      cautions: ["prop-hood"],
      choice: ranked(
        ["as-built", "as built"],
        ["mostly", "mostly as built"],
        ["mixed", "mixed", "no-yardstick"],
        ["modified", "modified", "worth"],
      ),
    },
  ),
  item(
    "engine.bore",
    words("cylinder bore", undefined, ["bore size"]),
    "From rebuild papers or measured with the head off.",
    {
      ...mechanical,
      minutes: 2,
      costRow: null,
      reading: dimension("in", [1, 10], 3.75, [0.012, 0]),
    },
  ),
  item("engine.stroke", words("stroke"), "From rebuild papers or measured with the head off.", {
    ...mechanical,
    minutes: 2,
    costRow: null,
    reading: dimension("in", [1, 10], 3.125, [0.012, 0]),
  }),
  item(
    "engine.displacement",
    words("displacement", "cubic capacity", ["cubic inches", "engine size", "liters", "litres"]),
    "Say what is claimed; bore and stroke are read beside it.",
    {
      ...mechanical,
      consequence: "identity",
      asked: "statement",
      minutes: 1,
      costRow: null,
      reading: dimension("in3", [5, 1000], 276, [3, 0.01]),
    },
  ),
  item(
    "engine.rebuild-claim",
    words("engine rebuild", undefined, ["rebuilt engine", "overhauled"]),
    "Say what is claimed of the engine's last rebuild.",
    {
      ...mechanical,
      severity: "worth",
      asked: "statement",
      minutes: 1,
      costRow: "engine-rebuild",
      choice: ranked(
        ["rebuilt-with-bills", "rebuilt, bills seen", "no-yardstick"],
        ["rebuilt", "rebuilt, no bills", "no-yardstick"],
        ["top-end", "top end only", "no-yardstick"],
        ["never", words("never opened", undefined, ["untouched"]), "no-yardstick"],
      ),
    },
  ),
  item(
    "engine.carburetor-number",
    words("carburetor number", "carburettor number", ["carb tag"]),
    "Copy the tag or stamping.",
    {
      ...mechanical,
      consequence: "identity",
      minutes: 2,
      costRow: null,
      cautions: ["prop-hood"],
      appliesWhen: { fuelSystem: ["carburetor"] },
      code: code("casting-number"),
    },
  ),
];
