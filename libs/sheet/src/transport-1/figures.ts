import type { Item } from "@evenhand/shared/sheet";
import { ranked, works } from "../version-1/answers.ts";
import type { PresenceDraft } from "../version-1/draft.ts";
import { item, reading, words } from "../version-1/draft.ts";

const cabin = {
  consequence: "papers",
  costRow: null,
  stage: "cold",
  depth: "first-look",
  place: "cabin",
} as const;

/** Missing only where it was there at collection. */
const ifItWasThere: PresenceDraft = { goodIs: "present", onlyIfPromised: true };

/** What is read and counted. */
export const figures: Item[] = [
  item(
    "identity.odometer",
    words("odometer reading", "mileage", ["mileage", "miles"]),
    "Read every digit as it stands, with the key on if it needs it.",
    {
      ...cabin,
      time: "only-rises",
      severity: "worth",
      core: true,
      minutes: 0.5,
      reading: reading({
        unit: "mi",
        alsoIn: ["km"],
        delta: [1],
        scatter: [0],
        betterIs: "lower",
        plausible: [0, 999_999],
        typical: 61_240,
        ask: [1, 1],
        byEye: [0],
        instrument: ["odometer", 1, [0]],
        readOff: true,
        // On and off a truck and about a yard; common practice, no source.
        riseAllowed: 3,
        noAlarmBecause: "What it reads says nothing by itself; how far it moved is what is compared.",
      }),
    },
  ),
  item(
    "identity.fuel-level",
    words("fuel level", undefined, ["fuel gauge"]),
    "Read the gauge with the key on, or say that it does not work; a truck wants a quarter of a tank or less.",
    {
      ...cabin,
      severity: "small",
      time: "drifts",
      core: true,
      minutes: 0.25,
      cautions: ["fuel"],
      choice: {
        ...ranked(
          ["full", "full"],
          ["three-quarters", "three quarters"],
          ["half", "half"],
          ["quarter", "a quarter"],
          ["reserve", "reserve or empty"],
        ),
        neighbors: "consistent",
      },
    },
  ),
  item(
    "identity.key-count",
    words("keys handed over", undefined, ["number of keys"]),
    "Count every key and remote that is handed over, and write what each is for in the note.",
    {
      ...cabin,
      severity: "repair",
      core: true,
      minutes: 0.5,
      reading: reading({
        unit: "1",
        alsoIn: [],
        delta: [0.5],
        scatter: [0.1],
        betterIs: "higher",
        plausible: [0, 50],
        typical: 2,
        ask: [1, 1],
        byEye: [0],
        instrument: ["count", 0, [0]],
        readOff: true,
        noAlarmBecause:
          "How many keys a car has says nothing by itself; whether as many arrive is what is compared.",
      }),
    },
  ),
  item(
    "contents.with-it",
    words("goes along"),
    "Open trunk and cabin and say of each whether it is in the car.",
    {
      ...cabin,
      severity: "repair",
      positions: "travels-with-it",
      core: true,
      minutes: 1.5,
      presence: ifItWasThere,
    },
  ),
  item(
    "contents.loose-items",
    words("loose items left in the car"),
    "Say whether anything is left that would fly about or get lost; name it in the note, and take it out or tie it down.",
    {
      ...cabin,
      severity: "small",
      minutes: 0.5,
      presence: { goodIs: "absent", severity: "small" },
    },
  ),
];

const moving = { consequence: "mechanical", costRow: null, depth: "first-look" } as const;

/** What a driver has to know before the car is on the ramp. */
export const movingAndLashing: Item[] = [
  item(
    "road.moves",
    words("can it be moved", undefined, ["non-runner", "roller"]),
    "At walking pace on level ground: does it start, roll, steer, brake and hold.",
    {
      ...moving,
      positions: "moving",
      stage: "cold-start",
      core: true,
      severity: "repair",
      minutes: 2,
      cautions: ["rolls-away", "carbon-monoxide", "traffic", "winch"],
      working: { at: { brakes: "danger", holds: "danger", steers: "danger" } },
    },
  ),
  item(
    "road.leaks",
    words("drips under the car", undefined, ["leaks"]),
    "Look at the ground where it stood, from outside: nothing, damp, drops, or a run. Warn of it: what drips falls on the car below.",
    {
      ...moving,
      stage: "cold-start",
      place: "under-front",
      severity: "repair",
      core: true,
      minutes: 0.5,
      cautions: ["fuel", "under-ramp"],
      // No yardstick: an old car that drips at both ends of its way is as it was; more than before is what counts.
      choice: ranked(
        ["none", "nothing"],
        ["weep", "damp", "no-yardstick"],
        ["drip", "drops", "no-yardstick"],
        ["run", "a run or a puddle", "no-yardstick"],
      ),
    },
  ),
  item(
    "lashing.ground-clearance",
    words("ground clearance"),
    "Measure the lowest part in front of the axle over level ground, from outside.",
    {
      ...moving,
      stage: "daylight",
      place: "nose",
      minutes: 1,
      cautions: ["under-ramp"],
      reading: reading({
        unit: "mm",
        alsoIn: ["in", "cm"],
        delta: [25],
        scatter: [3],
        placement: 2,
        betterIs: "higher",
        plausible: [20, 500],
        typical: 140,
        ask: [1, 1],
        byEye: [40],
        instrument: ["steel rule", 1, [2]],
        // Air, fuel and springs settle on a truck; common practice, no source.
        dayToDay: [15],
        noAlarmBecause: "The ramp's angle decides whether it is enough: the driver judges.",
      }),
      time: "drifts",
    },
  ),
  item(
    "lashing.tie-down-points",
    words("tie-down points", "lashing points", ["tow eyes"]),
    "Say where it may be pulled and lashed: at points of its own, or over the wheels only.",
    {
      ...moving,
      consequence: "safety",
      stage: "daylight",
      place: "nose",
      minutes: 1,
      cautions: ["lashing", "under-ramp", "winch"],
      choice: ranked(
        ["sound", "there and sound"],
        ["wheels-only", "only over the wheels", "no-yardstick"],
        ["unsound", "not sound", "danger"],
      ),
    },
  ),
  item(
    "lashing.battery-cutoff",
    words("battery cut-off", "battery isolator"),
    "Turn it off for the way and see that everything dies.",
    {
      ...moving,
      severity: "small",
      equipment: true,
      stage: "daylight",
      place: "engine-bay",
      minutes: 0.5,
      cautions: ["battery"],
      working: works,
    },
  ),
];
