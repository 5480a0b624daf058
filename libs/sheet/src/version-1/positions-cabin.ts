import type { PositionSet } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";
import { openBodies, places, rearDoors } from "./place.ts";

/** Lamps, seats, belts and windows. */
export const cabinSets: PositionSet[] = [
  places(
    "lamps",
    words("lamps", "lights"),
    ["left-headlamp", words("left headlamp", undefined, ["left headlight", "low beam", "high beam"]), "nose"],
    ["right-headlamp", words("right headlamp", undefined, ["right headlight"]), "nose"],
    ["left-front-parking", words("left front parking lamp", "left sidelight"), "nose"],
    ["right-front-parking", words("right front parking lamp", "right sidelight"), "nose"],
    ["left-front-turn", words("left front turn signal", "left front indicator"), "nose"],
    ["right-front-turn", words("right front turn signal", "right front indicator"), "nose"],
    [
      "left-repeater",
      words("left side repeater", undefined, ["left side marker"]),
      "left-fender",
      { repeaters: ["yes"] },
    ],
    [
      "right-repeater",
      words("right side repeater", undefined, ["right side marker"]),
      "right-fender",
      { repeaters: ["yes"] },
    ],
    ["left-tail", words("left tail lamp", "left rear light"), "tail"],
    ["right-tail", words("right tail lamp", "right rear light"), "tail"],
    ["left-stop", words("left stop lamp", "left brake light"), "tail"],
    ["right-stop", words("right stop lamp", "right brake light"), "tail"],
    ["left-rear-turn", words("left rear turn signal", "left rear indicator"), "tail"],
    ["right-rear-turn", words("right rear turn signal", "right rear indicator"), "tail"],
    ["reverse", words("backup lamps", "reversing lights"), "tail"],
    ["plate", words("license plate lamp", "number plate light"), "tail"],
    ["interior", words("interior lamps", undefined, ["dome light", "courtesy light"]), "cabin"],
    ["instrument", words("instrument lamps", undefined, ["dash lights"]), "cabin"],
  ),
  places(
    "seats",
    words("seats"),
    ["left-front", words("left front seat"), "cabin"],
    [
      "rear",
      words("rear seat", undefined, ["back seat", "rear bench"]),
      "cabin",
      { body: ["coupe", "sedan", "convertible", "wagon", "van"] },
    ],
    ["right-front", words("right front seat"), "cabin"],
  ),
  places(
    "belts",
    words("seat belts"),
    ["left-front", words("left front belt"), "cabin"],
    [
      "left-rear",
      words("left rear belt"),
      "cabin",
      { body: ["coupe", "sedan", "convertible", "wagon", "van"] },
    ],
    [
      "right-rear",
      words("right rear belt"),
      "cabin",
      { body: ["coupe", "sedan", "convertible", "wagon", "van"] },
    ],
    ["right-front", words("right front belt"), "cabin"],
  ),
  places(
    "windows",
    words("windows that open"),
    ["left-front-window", words("left front window"), "left-front-door"],
    ["left-rear-window", words("left rear window"), "left-rear-door", rearDoors],
    ["right-rear-window", words("right rear window"), "right-rear-door", rearDoors],
    ["right-front-window", words("right front window"), "right-front-door"],
  ),
  places(
    "pedals",
    words("pedals"),
    ["clutch", words("clutch pedal"), "cabin", { gearbox: ["manual"] }],
    ["brake", words("brake pedal"), "cabin"],
    ["accelerator", words("accelerator pedal", undefined, ["gas pedal", "throttle pedal"]), "cabin"],
  ),
  places(
    "carpets",
    words("carpets"),
    ["left-front", words("left front carpet"), "cabin"],
    [
      "left-rear",
      words("left rear carpet"),
      "cabin",
      { body: ["coupe", "sedan", "convertible", "wagon", "van"] },
    ],
    [
      "right-rear",
      words("right rear carpet"),
      "cabin",
      { body: ["coupe", "sedan", "convertible", "wagon", "van"] },
    ],
    ["right-front", words("right front carpet"), "cabin"],
  ),
  places(
    "top-parts",
    words("convertible top", "hood", ["soft top", "folding roof"]),
    ["fabric", words("fabric"), "roof", openBodies],
    ["rear-screen", words("top's rear window", "hood's rear screen"), "roof", openBodies],
    ["frame", words("frame"), "roof", openBodies],
  ),
];
