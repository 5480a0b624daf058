import type { PositionSet } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";
import { places } from "./place.ts";

/** Places where numbers, codes and dates are read. */
export const paperSets: PositionSet[] = [
  places(
    "number-places",
    words("places of the number"),
    ["main-plate", words("main plate", undefined, ["VIN plate", "dash plate"]), "windshield"],
    ["body-tag", words("body tag", "body plate", ["cowl tag", "trim tag", "data plate"]), "engine-bay"],
    ["body-stamping", words("body stamping"), "engine-bay"],
    [
      "frame-stamping",
      words("frame stamping", "chassis stamping"),
      "under-left-rear",
      { construction: ["body-on-frame"] },
    ],
  ),
  places(
    "numbered-units",
    words("units with a partial number"),
    ["engine", words("engine"), "engine-bay"],
    ["gearbox", words("gearbox", undefined, ["transmission"]), "under-middle"],
  ),
  places(
    "major-units",
    words("engine, gearbox, axle"),
    ["engine", words("engine", undefined, ["motor"]), "engine-bay"],
    ["gearbox", words("gearbox", undefined, ["transmission"]), "under-middle"],
    ["axle", words("axle", undefined, ["rear end", "differential"]), "under-rear"],
  ),
  places(
    "cast-parts",
    words("cast parts"),
    ["block", words("engine block"), "engine-bay"],
    ["left-head", words("left cylinder head", undefined, ["front head"]), "engine-bay"],
    ["right-head", words("right cylinder head", undefined, ["rear head"]), "engine-bay"],
    ["intake", words("intake manifold", "inlet manifold"), "engine-bay"],
    ["exhaust-manifolds", words("exhaust manifolds"), "engine-bay"],
    ["gearbox", words("gearbox case"), "under-middle"],
    ["axle", words("axle housing", "axle casing"), "under-rear"],
  ),
  places(
    "dated-parts",
    words("dated parts"),
    ["block", words("engine block"), "engine-bay"],
    ["left-head", words("left cylinder head"), "engine-bay"],
    ["right-head", words("right cylinder head"), "engine-bay"],
    ["intake", words("intake manifold", "inlet manifold"), "engine-bay"],
    ["carburetor", words("carburetor", "carburettor"), "engine-bay", { fuelSystem: ["carburetor"] }],
    ["distributor", words("distributor"), "engine-bay"],
    ["alternator", words("alternator or generator", "alternator or dynamo"), "engine-bay"],
    ["gearbox", words("gearbox"), "under-middle"],
    ["axle", words("axle"), "under-rear"],
  ),
  places(
    "paper-entries",
    words("entries on papers, oldest first"),
    ["entry-1", words("first entry")],
    ["entry-2", words("second entry")],
    ["entry-3", words("third entry")],
    ["entry-4", words("fourth entry")],
    ["entry-5", words("fifth entry")],
    ["entry-6", words("sixth entry")],
  ),
];
