import type { Item } from "@evenhand/shared/sheet";
import { code, ranked, unranked, works } from "./answers.ts";
import { item, words } from "./draft.ts";

const mechanical = { consequence: "mechanical" } as const;
const open = ["prop-hood", "fans-and-belts"];
const running = [...open, "carbon-monoxide"];
const several = { several: true };

/** Cooling, fuel, plugs, oil: what tells of an engine besides its gauges. */
export const engineSupply: Item[] = [
  item(
    "engine.blow-by",
    words("blow-by at the filler", undefined, ["crankcase breathing"]),
    "Idling and warm, lift the oil filler cap slowly, hand and face away: a breath, a steady puff, a stream.",
    {
      ...mechanical,
      severity: "worth",
      minutes: 1,
      needs: ["hot-engine"],
      costRow: "engine-rebuild",
      cautions: [...running, "hot-parts"],
      choice: ranked(
        ["breath", "a breath"],
        ["puffs", "steady puffs", "small"],
        ["stream", "a stream with oil", "worth"],
      ),
    },
  ),
  item(
    "engine.cooling-pressure",
    words("cooling system under pressure", undefined, ["pressure test"]),
    "Pump a cold system to the figure on its cap and watch the gauge for ten minutes.",
    {
      ...mechanical,
      equipment: true,
      minutes: 6,
      needs: ["permission", "cold-engine"],
      costRow: "radiator",
      cautions: [...open, "hot-coolant"],
      choice: ranked(
        ["holds", "holds"],
        ["slow", "falls slowly", "repair"],
        ["fast", "falls at once", "worth"],
      ),
    },
  ),
  item(
    "engine.water-pump",
    words("water pump"),
    "Engine off: rock the fan by hand, look below for tracks; how it sounds comes with the engine's noise.",
    {
      ...mechanical,
      equipment: true,
      minutes: 1,
      costRow: "radiator",
      cautions: [...open, "chocks"],
      choice: {
        ...unranked(
          ["sound", "sound"],
          ["weeps", "weeps", "repair"],
          ["play", "has play", "repair"],
          ["noisy", "noisy", "repair"],
        ),
        ...several,
      },
    },
  ),
  item(
    "engine.fan-clutch",
    words("fan clutch", "viscous fan"),
    "Engine off and cold: turn the fan by hand; it drags evenly and has no oil on it.",
    {
      ...mechanical,
      severity: "small",
      equipment: true,
      minutes: 1,
      costRow: "radiator",
      cautions: [...open, "chocks"],
      working: works,
    },
  ),
  item(
    "electrics.heater-core",
    words("heater core", "heater matrix"),
    "Smell and feel below the dash and at the carpet; look for a film on the glass.",
    {
      ...mechanical,
      equipment: true,
      minutes: 1,
      costRow: "heating",
      choice: ranked(["dry", "dry"], ["bypassed", "bypassed", "repair"], ["leaks", "leaks", "repair"]),
    },
  ),
  item(
    "engine.choke",
    words("choke", "choke", ["automatic choke"]),
    "Cold: the flap shuts; warm: it stands open.",
    {
      ...mechanical,
      severity: "small",
      equipment: true,
      minutes: 1,
      costRow: "tune-up",
      appliesWhen: { fuelSystem: ["carburetor"] },
      cautions: open,
      working: works,
    },
  ),
  item(
    "engine.fuel-pump",
    words("fuel pump", "petrol pump"),
    "Look for drips and mixed fittings at pump and filter; an electric one runs with the key on.",
    {
      consequence: "safety",
      severity: "repair",
      minutes: 1,
      costRow: "fuel-lines",
      cautions: [...open, "fuel-leak", "electric-fuel-pump"],
      choice: ranked(
        ["dry", "dry, as built"],
        ["changed", "changed, neat", "no-yardstick"],
        ["unsafe", "fitted unsafely", "danger"],
        ["leaks", "leaks", "danger"],
      ),
    },
  ),
  item(
    "engine.fuel-age",
    words("age of the fuel", "age of the petrol", ["stale gas", "varnish"]),
    "Smell at the filler and ask when it was last filled.",
    {
      ...mechanical,
      severity: "repair",
      time: "drifts",
      minutes: 1,
      costRow: "tank",
      cautions: ["cold-lamps", "fuel-leak"],
      choice: {
        ...ranked(
          ["fresh", "fresh"],
          ["a-season", "a season old", "small"],
          ["stale", words("stale", undefined, ["varnish"]), "repair"],
        ),
        drifting: ["fresh", "a-season"],
      },
    },
  ),
  item(
    "engine.plugs",
    words("spark plugs as read", "sparking plugs as read", ["plug reading"]),
    "With the plugs out: lay them in order and read each; nuts and leads go back as they came.",
    {
      ...mechanical,
      positions: "cylinders",
      minutes: 6,
      needs: ["permission", "dismantling"],
      costRow: "tune-up",
      cautions: [...open, "hot-parts"],
      choice: {
        ...unranked(
          ["tan", "tan, dry"],
          ["sooty", "sooty", "small"],
          ["oily", "oily", "repair"],
          ["steamed", "steamed clean", "worth"],
          ["damaged", "damaged", "repair"],
        ),
        ...several,
      },
    },
  ),
  item(
    "engine.oil-sample",
    words("oil sample"),
    "Draw a warm sample and send it; write what the laboratory says.",
    {
      ...mechanical,
      minutes: 5,
      needs: ["permission"],
      costRow: "engine-rebuild",
      cautions: ["hot-parts"],
      choice: {
        ...unranked(
          ["ordinary", "ordinary"],
          ["fuel", "fuel in it", "repair"],
          ["coolant", "coolant in it", "worth"],
          ["metal", "metal out of the ordinary", "worth"],
        ),
        ...several,
      },
    },
  ),
  item(
    "engine.smoke-overrun",
    words("smoke after overrun", undefined, ["smoke on lift-off", "valve guides"]),
    "On the road, lift off downhill or from speed, then open half throttle; a second person watches the mirror.",
    {
      ...mechanical,
      severity: "worth",
      core: true,
      minutes: 2,
      cautions: ["full-throttle"],
      needs: ["road"],
      costRow: "engine-rebuild",
      choice: ranked(["none", "none"], ["puff", "a blue puff", "repair"], ["cloud", "a blue cloud", "worth"]),
    },
  ),
  item(
    "engine.boost",
    words("boost", undefined, ["turbo", "supercharger", "boost controller"]),
    "Look for controllers, other springs and pipes; write a figure from a gauge in the note.",
    {
      ...mechanical,
      severity: "worth",
      equipment: true,
      minutes: 2,
      costRow: "engine-rebuild",
      cautions: [...open, "hot-parts"],
      choice: ranked(["as-built", "as built"], ["raised", "raised", "worth"]),
    },
  ),
  item(
    "engine.timing-belt-date",
    words("date of the timing belt", "date of the cambelt"),
    "Copy date and miles from sticker or bill; without either it is due.",
    {
      ...mechanical,
      severity: "repair",
      equipment: true,
      minutes: 1,
      costRow: "belts-and-hoses",
      code: code("date-code"),
    },
  ),
  item(
    "electrics.dash-wiring",
    words("wiring under the dash", undefined, ["under-dash harness"]),
    "Lamp and mirror under the dash, key off: added wires, taped joints, burnt plugs.",
    {
      consequence: "safety",
      severity: "repair",
      minutes: 2,
      costRow: "wiring",
      choice: ranked(
        ["as-built", "as built"],
        ["added-neat", "added, neat", "no-yardstick"],
        ["spliced", "spliced", "repair"],
        ["unsafe", "bare, burnt or loose", "danger"],
      ),
    },
  ),
  item(
    "electrics.fuse-box",
    words("fuse box"),
    "Battery off: look for heat, foil, wrong fuses, green contacts.",
    {
      consequence: "safety",
      severity: "repair",
      equipment: true,
      minutes: 1,
      costRow: "wiring",
      cautions: ["battery"],
      choice: ranked(
        ["sound", "sound"],
        ["corroded", "corroded", "small"],
        ["heat", "marks of heat", "repair"],
        ["bridged", "bridged with foil or wire", "danger"],
      ),
    },
  ),
  item(
    "electrics.battery-age",
    words("battery age"),
    "Copy the date stamped on case or label; look under seats and in the trunk too.",
    {
      ...mechanical,
      severity: "small",
      minutes: 1,
      costRow: "battery",
      cautions: ["battery", "old-battery"],
      code: code("date-code"),
    },
  ),
  ...(
    [
      [
        "electrics.power-seat",
        words("power seat", "electric seat"),
        "Every way, both ends.",
        "seat-hardware",
        "repair",
      ],
      [
        "electrics.antenna",
        words("antenna", "aerial", ["power antenna"]),
        "Up and down, straight, tight.",
        "radio",
        "small",
      ],
    ] as const
  ).map(([id, named, how, costRow, severity]) =>
    item(id, named, how, { ...mechanical, severity, equipment: true, minutes: 1, costRow, working: works }),
  ),
];
