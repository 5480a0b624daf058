import type { PositionSet } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";
import { places } from "./place.ts";

const leftFront = words("left front", undefined, ["driver's left front"]);
const leftRear = words("left rear");
const rightRear = words("right rear");
const rightFront = words("right front");

/** Corners, sides, axles and quarters, seen from outside and from underneath. */
export const cornerSets: PositionSet[] = [
  places(
    "corners",
    words("corners"),
    ["left-front", leftFront, "left-fender"],
    ["left-rear", leftRear, "left-quarter"],
    ["right-rear", rightRear, "right-quarter"],
    ["right-front", rightFront, "right-fender"],
  ),
  places(
    "corners-and-spare",
    words("corners and spare"),
    ["left-front", leftFront, "left-fender"],
    ["left-rear", leftRear, "left-quarter"],
    ["spare", words("spare"), "trunk"],
    ["right-rear", rightRear, "right-quarter"],
    ["right-front", rightFront, "right-fender"],
  ),
  places(
    "corners-under",
    words("corners, underneath"),
    ["left-front", leftFront, "under-left-front"],
    ["left-rear", leftRear, "under-left-rear"],
    ["right-rear", rightRear, "under-right-rear"],
    ["right-front", rightFront, "under-right-front"],
  ),
  places(
    "drum-corners",
    words("corners with drums"),
    ["left-front", leftFront, "under-left-front", { brakesFront: ["drum"] }],
    ["left-rear", leftRear, "under-left-rear", { brakesRear: ["drum"] }],
    ["right-rear", rightRear, "under-right-rear", { brakesRear: ["drum"] }],
    ["right-front", rightFront, "under-right-front", { brakesFront: ["drum"] }],
  ),
  places(
    "disc-corners",
    words("corners with discs"),
    ["left-front", leftFront, "under-left-front", { brakesFront: ["disc"] }],
    ["left-rear", leftRear, "under-left-rear", { brakesRear: ["disc"] }],
    ["right-rear", rightRear, "under-right-rear", { brakesRear: ["disc"] }],
    ["right-front", rightFront, "under-right-front", { brakesFront: ["disc"] }],
  ),
  places(
    "floor-quarters",
    words("quarters of the floor"),
    ["left-front", leftFront, "under-left-front"],
    ["left-rear", leftRear, "under-left-middle"],
    ["right-rear", rightRear, "under-right-middle"],
    ["right-front", rightFront, "under-right-front"],
  ),
  places(
    "sides",
    words("sides"),
    ["left", words("left"), "left-front-door"],
    ["right", words("right"), "right-front-door"],
  ),
  places(
    "sides-under",
    words("sides, underneath"),
    ["left", words("left"), "under-left-middle"],
    ["right", words("right"), "under-right-middle"],
  ),
  places(
    "axles",
    words("axles"),
    ["front-axle", words("front axle"), "under-front"],
    ["rear-axle", words("rear axle"), "under-rear"],
  ),
  places("ends", words("ends"), ["front", words("front"), "nose"], ["rear", words("rear"), "tail"]),
  places(
    "diagonals",
    words("diagonals"),
    ["left-front-right-rear", words("left front to right rear"), "under-middle"],
    ["right-front-left-rear", words("right front to left rear"), "under-middle"],
  ),
];
