import type { PositionSet } from "@evenhand/shared/sheet";
import { words } from "../version-1/draft.ts";
import { openBodies, places } from "../version-1/place.ts";
import { panelSets } from "../version-1/positions-panels.ts";
import { partSets } from "../version-1/positions-parts.ts";

/** Sets of the inspection sheet whose places mean the same here. */
const ofInspection = [...panelSets, ...partSets].filter(({ id }) =>
  ["panels", "glasses", "moving"].includes(id),
);

/** Every set of places a transport item names, in walking order. */
export const positionSets: PositionSet[] = [
  ...ofInspection,
  places(
    "wheels",
    words("wheels"),
    ["left-front", words("left front"), "left-fender"],
    ["left-rear", words("left rear"), "left-quarter"],
    ["right-rear", words("right rear"), "right-quarter"],
    ["right-front", words("right front"), "right-fender"],
  ),
  places(
    "outer-parts",
    words("outer parts"),
    ["front-bumper", words("front bumper and grille"), "nose"],
    ["front-lamps", words("front lamps"), "nose"],
    ["left-mirror", words("left mirror and trim", "left mirror and brightwork"), "left-front-door"],
    ["rear-bumper", words("rear bumper"), "tail"],
    ["rear-lamps", words("rear lamps"), "tail"],
    ["right-mirror", words("right mirror and trim", "right mirror and brightwork"), "right-front-door"],
    ["antenna", words("antenna", "aerial"), "hood"],
    ["soft-top", words("convertible top", "hood", ["soft top"]), "roof", openBodies],
  ),
  places(
    "cabin-parts",
    words("inside"),
    ["seats", words("seats"), "cabin"],
    ["dash", words("dash and wheel"), "cabin"],
    ["trim", words("door panels and headliner", "door cards and headlining"), "cabin"],
    ["carpets", words("carpets"), "cabin"],
    ["trunk", words("trunk", "boot"), "trunk"],
  ),
  places(
    "under-parts",
    words("underside, seen from outside"),
    ["front-lip", words("front lip and spoiler"), "under-front"],
    ["left-side", words("left rocker and jacking edge", "left sill and jacking edge"), "under-left-middle"],
    [
      "right-side",
      words("right rocker and jacking edge", "right sill and jacking edge"),
      "under-right-middle",
    ],
    ["exhaust", words("exhaust and tail pipes"), "under-tail"],
  ),
  places(
    "travels-with-it",
    words("what travels with the car"),
    ["papers", words("papers in the car"), "cabin"],
    ["spare-wheel", words("spare wheel"), "trunk"],
    ["jack-and-tools", words("jack and tools"), "trunk"],
    ["hub-caps", words("hub caps or wheel covers"), "left-fender"],
    ["floor-mats", words("floor mats"), "cabin"],
    ["covers", words("car cover, tonneau or hardtop"), "trunk"],
    ["loose-parts", words("boxes and loose parts"), "trunk"],
  ),
];
