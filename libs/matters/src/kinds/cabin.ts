import { kind } from "./kind.ts";
import type { Kind } from "./kind.ts";

/** Electrics, equipment and the cabin. */
export const cabin: readonly Kind[] = [
  kind(
    "wiring",
    "electrics",
    "wiring",
    [
      "engine.wiring",
      "electrics.dash-wiring",
      "electrics.fuse-box",
      "electrics.polarity",
      "electrics.battery-cutoff",
    ],
    {
      says: { danger: "The wiring can start a fire", repair: "The wiring has been altered" },
      decides: "The loom opened where it was altered, by an electrician.",
      ask: "Who altered the wiring, what hangs on it, and how is it fused?",
    },
  ),
  kind(
    "charging",
    "electrics",
    "battery and charging",
    [
      "electrics.volts-rest",
      "electrics.volts-cranking",
      "electrics.volts-charging",
      "electrics.system-voltage",
      "electrics.charger-kind",
      "electrics.battery-age",
      "electrics.starter",
      "electrics.charge-gauge",
      "visit.battery-on-charger",
    ],
    {
      rules: ["charging", "cranking"],
      says: { repair: "Battery, starter or charging need work" },
      decides: "Volts at rest, cranking and charging, off any charger for three hours.",
      ask: "How old is the battery, and does it hold its charge over a week?",
    },
  ),
  kind(
    "lamps",
    "electrics",
    "lamps, horn and wipers",
    [
      "electrics.lamps",
      "electrics.hazard",
      "electrics.horn",
      "electrics.wipers",
      "electrics.washers",
      "electrics.defrost",
      "brightwork.lenses",
      "brightwork.mirrors",
    ],
    {
      says: {
        danger: "Lamps that others must see do not work",
        repair: "Lamps, horn or wipers do not work as they should",
      },
      decides: "Every lamp switched on in turn, somebody behind the car.",
      ask: "Do all lamps, horn and wipers work?",
    },
  ),
  kind(
    "instruments",
    "electrics",
    "instruments",
    [
      "electrics.speedometer",
      "electrics.fuel-gauge",
      "electrics.tachometer",
      "electrics.clock",
      "electrics.warning-lamps",
      "road.indicated-revolutions",
      "road.indicated-speed",
      "road.gps-speed",
    ],
    {
      rules: ["speedometer", "tachometer"],
      says: { danger: "An instrument hides a danger", repair: "Instruments or warning lamps do not work" },
      decides: "Every instrument watched through a start and a drive.",
      ask: "Which instruments do not work, and since when?",
    },
  ),
  kind(
    "heating",
    "electrics",
    "heating and air conditioning",
    ["electrics.heat", "electrics.blower", "electrics.air-conditioning", "electrics.vent-temperature"],
    {
      says: { repair: "Heating or air conditioning do not work" },
      decides: "Ten minutes running, a thermometer in the vent.",
      ask: "When did heating and air conditioning last work, and what was done to them?",
    },
  ),
  kind("equipment", "electrics", "equipment", ["electrics", "trunk"], {
    says: { danger: "Equipment is not safe", repair: "Equipment does not work or is missing" },
    decides: "Each switched on in turn.",
    ask: "Which equipment does not work or is missing?",
  }),
  kind(
    "seats-belts",
    "cabin",
    "seats and belts",
    ["interior.belt-webbing", "interior.belt-latch", "interior.belt-date", "interior.seat-adjusters"],
    {
      says: { danger: "Seats or belts will not hold anybody", repair: "Seats or belts need work" },
      decides: "Every belt pulled out and latched, every seat pushed at.",
      ask: "How old are the belts, and do all seats lock?",
    },
  ),
  kind(
    "water",
    "cabin",
    "water and damp",
    ["interior.flood-line", "interior.silt", "interior.water-marks", "interior.smell", "trunk.damp"],
    {
      says: { halt: "The car has stood in water", repair: "It is damp, or something covers a smell" },
      decides: "Carpets up, behind the door panels, and under the seats.",
      ask: "Where does water get in, and has the car ever stood in water?",
    },
  ),
  kind(
    "top",
    "cabin",
    "top",
    [
      "interior.top",
      "interior.hardtop",
      "interior.tonneau",
      "interior.side-curtains",
      "interior.top-pump",
      "electrics.power-top",
      "doors.sunroof",
      "doors.lift-off-panels",
    ],
    {
      says: { repair: "The top needs work" },
      decides: "Raised and lowered once, then looked at from inside.",
      ask: "How old is the top, and does it leak?",
    },
  ),
  kind("trim", "cabin", "interior", ["interior"], {
    says: { worth: "The interior is not as it was built", repair: "The interior is worn or not original" },
    decides: "A look at each seat and panel.",
    ask: "What of the interior has been replaced, and with what?",
  }),
  kind("visit", "rest", "how the car was shown", ["visit"], {
    says: { repair: "The car was made ready before it was looked at" },
    decides: "Another look, the car untouched overnight.",
    ask: "What was done to the car before it was shown?",
    step: "look-again",
  }),
];
