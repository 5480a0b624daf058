import type { Item } from "@evenhand/shared/sheet";
import { unranked, works } from "./answers.ts";
import { item, reading, words } from "./draft.ts";
import type { WorkingDraft } from "./draft.ts";
import { openBodies } from "./place.ts";

const mechanical = { consequence: "mechanical" } as const;
const safety = { consequence: "safety" } as const;
const running = ["carbon-monoxide", "fans-and-belts"];

const onTheMove: ReadonlySet<string> = new Set(["speedometer", "odometer-works"]);

/** What is out of order costs, and what the miles rest on decides the price. */
const gauges = [
  ["speedometer", words("speedometer", undefined, ["speedo"]), "repair"],
  ["odometer-works", words("odometer counts", "mileometer counts", ["odometer working"]), "worth"],
  ["fuel-gauge", words("fuel gauge", "petrol gauge", ["gas gauge"]), "small"],
  ["temperature-gauge", words("temperature gauge", undefined, ["water temperature gauge"]), "repair"],
  ["oil-gauge", words("oil pressure gauge", undefined, ["oil light"]), "repair"],
  [
    "charge-gauge",
    words("charge gauge", "ammeter or battery gauge", ["ammeter", "voltmeter", "charge light"]),
    "small",
  ],
  ["tachometer", words("tachometer", "rev counter", ["tach"]), "repair"],
  ["clock", words("clock"), "repair"],
] as const;

/** Lamps another driver or the policeman needs are a danger dark; the rest are trifles, or an evening's work. */
const lampWorks: WorkingDraft = {
  severity: "danger",
  at: {
    "left-front-parking": "repair",
    "right-front-parking": "repair",
    "left-repeater": "small",
    "right-repeater": "small",
    reverse: "small",
    plate: "small",
    interior: "small",
    instrument: "small",
  },
};

/** Instruments, lamps and everything with a switch. */
export const equipment: Item[] = [
  ...gauges.map(([name, named, severity]) =>
    item(
      `electrics.${name}`,
      named,
      onTheMove.has(name)
        ? "On the road: it moves, and to a likely place."
        : "Key on, then engine running: it moves, and to a likely place.",
      {
        ...(name === "speedometer" ? safety : mechanical),
        severity,
        ...(onTheMove.has(name) ? { needs: ["road"] } : { equipment: true }),
        minutes: 1,
        costRow: "instruments",
        working: works,
      },
    ),
  ),
  item(
    "electrics.warning-lamps",
    words("warning lamps", "warning lights"),
    "All on with the key, all out with the engine.",
    {
      ...safety,
      severity: "repair",
      equipment: true,
      minutes: 1,
      costRow: "instruments",
      cautions: running,
      working: { ...works, ofSeveral: true },
    },
  ),
  item(
    "electrics.lamps",
    words("lamps", "lights", ["headlights", "blinkers", "brake lights", "side repeaters"]),
    "Every lamp by position, a second person at each end.",
    {
      ...safety,
      positions: "lamps",
      core: true,
      equipment: true,
      minutes: 3,
      costRow: "lamps",
      working: lampWorks,
    },
  ),
  item("electrics.hazard", words("hazard flashers", "hazard lights"), "All four together, engine off.", {
    ...safety,
    severity: "repair",
    equipment: true,
    minutes: 1,
    costRow: "lamps",
    working: { ...works, ofSeveral: true },
  }),
  item("electrics.horn", words("horn"), "From every place of the ring or button.", {
    ...safety,
    core: true,
    severity: "repair",
    minutes: 1,
    costRow: "electrics-small",
    working: works,
  }),
  item("electrics.wipers", words("wipers"), "Glass wet, every speed, parking.", {
    ...safety,
    severity: "repair",
    equipment: true,
    minutes: 1,
    costRow: "wipers",
    working: works,
  }),
  item("electrics.washers", words("washers", "screen washers"), "Both jets reach the swept glass.", {
    ...safety,
    severity: "small",
    equipment: true,
    minutes: 1,
    costRow: "wipers",
    working: works,
  }),
  item("electrics.blower", words("blower", "heater fan", ["fan motor"]), "Every speed.", {
    ...mechanical,
    severity: "small",
    equipment: true,
    minutes: 1,
    costRow: "heating",
    working: works,
  }),
  item("electrics.heat", words("heat", "heater"), "Warm engine, full heat.", {
    ...mechanical,
    equipment: true,
    minutes: 1,
    costRow: "heating",
    cautions: running,
    working: works,
  }),
  item("electrics.defrost", words("defrost", "demister"), "Air at the windshield, warm.", {
    ...safety,
    severity: "repair",
    equipment: true,
    minutes: 1,
    costRow: "heating",
    working: works,
  }),
  item(
    "electrics.air-conditioning",
    words("air conditioning", undefined, ["A/C", "AC"]),
    "Clutch engages, vents cool; fittings stay closed.",
    {
      ...mechanical,

      equipment: true,
      appliesWhen: { airConditioning: ["yes"] },
      minutes: 2,
      costRow: "air-conditioning",
      cautions: ["refrigerant", ...running],
      working: works,
    },
  ),
  item(
    "electrics.vent-temperature",
    words("vent temperature"),
    "Center vent after five minutes at fast idle, doors shut.",
    {
      ...mechanical,
      time: "drifts",
      equipment: true,
      appliesWhen: { airConditioning: ["yes"] },
      minutes: 6,
      costRow: "air-conditioning",
      cautions: ["refrigerant", ...running],
      conditions: ["outside-temperature"],
      reading: reading({
        unit: "degC",
        alsoIn: ["degF"],
        delta: [4],
        scatter: [0.7],
        betterIs: "lower",
        plausible: [-10, 70],
        typical: 9,
        ask: [1, 1],
        byEye: [6],
        instrument: ["pocket thermometer", 0.1, [0.5]],
      }),
    },
  ),
  item("electrics.radio", words("radio", undefined, ["stereo"]), "Reception and every speaker.", {
    consequence: "appearance",
    severity: "small",
    equipment: true,
    minutes: 1,
    costRow: "radio",
    working: works,
  }),
  item(
    "electrics.power-windows",
    words("power windows", "electric windows"),
    "Each switch, driver's and the door's own.",
    {
      ...mechanical,
      positions: "windows",
      equipment: true,
      sameAs: "doors.regulators",
      minutes: 2,
      costRow: "regulators",
      working: works,
    },
  ),
  item(
    "electrics.power-top",
    words("power top", "electric hood"),
    "One full cycle, hands out of the frame.",
    {
      ...mechanical,
      equipment: true,
      minutes: 3,
      costRow: "convertible-top",
      appliesWhen: { ...openBodies, powerTop: ["yes"] },
      working: works,
    },
  ),
  item("electrics.starter", words("starter", "starter motor"), "Hot and cold: even, no grinding.", {
    ...mechanical,
    minutes: 1,
    costRow: "starter",
    cautions: running,
    working: works,
  }),
];

const volts = (typical: number, alsoRunning: boolean) => ({
  reading: reading({
    unit: "V",
    alsoIn: ["mV"],
    delta: [0.2],
    scatter: alsoRunning ? [0.03] : [0.02],
    betterIs: alsoRunning ? "target" : "higher",
    plausible: [0, 20],
    typical,
    ask: [alsoRunning ? 2 : 1, 1],
    byEye: [2],
    instrument: ["digital voltmeter", 0.01, [0.01, 0.003]],
  }),
});

/** Battery, starting and charging. */
export const supply: Item[] = [
  item(
    "electrics.volts-rest",
    words("battery volts at rest", undefined, ["resting voltage", "battery voltage"]),
    "At the posts, two hours off a charger, everything off.",
    {
      ...mechanical,
      time: "drifts",
      core: true,
      minutes: 2,
      costRow: "battery",
      conditions: ["charger-off"],
      cautions: ["battery", "prop-hood", "electric-conversion"],
      ...volts(12.6, false),
    },
  ),
  item(
    "electrics.volts-cranking",
    words("battery volts cranking", undefined, ["cranking voltage"]),
    "At the posts, in park or neutral with chocks set: lowest steady figure in a ten-second crank, ignition disabled.",
    {
      ...mechanical,
      time: "drifts",
      minutes: 3,
      costRow: "battery",
      cautions: ["chocks", "battery", "prop-hood", "cranking-fuel", "fans-and-belts"],
      reading: reading({
        unit: "V",
        alsoIn: ["mV"],
        delta: [0.4],
        scatter: [0.1],
        betterIs: "higher",
        plausible: [0, 20],
        typical: 10.4,
        ask: [2, 1],
        byEye: [2],
        instrument: ["digital voltmeter", 0.01, [0.01, 0.003]],
      }),
    },
  ),
  item(
    "electrics.volts-charging",
    words("charging volts", undefined, ["charging voltage", "alternator output"]),
    "At the posts, 1,500–2,000 rpm; a generator is never judged at idle.",
    {
      ...mechanical,
      time: "drifts",
      core: true,
      minutes: 2,
      costRow: "alternator",
      conditions: ["engine-speed"],
      cautions: ["battery", "prop-hood", "electric-conversion", ...running],
      ...volts(14.1, true),
    },
  ),
  item(
    "electrics.system-voltage",
    words("system voltage", undefined, ["6 volt", "12 volt"]),
    "Read the battery and count its cells.",
    {
      ...mechanical,
      severity: "small",
      minutes: 1,
      costRow: null,
      cautions: ["battery"],
      choice: unranked(["six", "6 V"], ["twelve", "12 V"]),
    },
  ),
  item(
    "electrics.polarity",
    words("polarity", undefined, ["ground", "earth"]),
    "See which post goes to the body.",
    {
      ...safety,
      severity: "repair",
      minutes: 1,
      costRow: null,
      cautions: ["battery"],
      choice: unranked(
        ["negative-ground", words("negative ground", "negative earth")],
        ["positive-ground", words("positive ground", "positive earth")],
      ),
    },
  ),
  item(
    "electrics.charger-kind",
    words("alternator or generator", "alternator or dynamo"),
    "See what is fitted.",
    {
      ...mechanical,
      severity: "small",
      minutes: 1,
      costRow: null,
      cautions: ["fans-and-belts"],
      choice: unranked(["alternator", "alternator"], ["generator", words("generator", "dynamo")]),
    },
  ),
];
