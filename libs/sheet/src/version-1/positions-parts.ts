import type { PositionSet } from "@evenhand/shared/sheet";
import { words } from "./draft.ts";
import { places } from "./place.ts";

/** Cylinders, driveline, steering and other parts that come in several. */
export const partSets: PositionSet[] = [
  {
    id: "cylinders",
    words: words("cylinders"),
    positions: [],
    numbered: { prefix: "cylinder", words: "cylinder", countFrom: "cylinders" },
  },
  places(
    "ball-joints",
    words("ball joints"),
    ["left-upper", words("left upper"), "under-left-front"],
    ["left-lower", words("left lower"), "under-left-front"],
    ["right-lower", words("right lower"), "under-right-front"],
    ["right-upper", words("right upper"), "under-right-front"],
  ),
  places(
    "tie-rod-ends",
    words("tie-rod ends", "track-rod ends"),
    ["left-outer", words("left outer"), "under-left-front"],
    ["left-inner", words("left inner"), "under-left-front"],
    ["right-inner", words("right inner"), "under-right-front"],
    ["right-outer", words("right outer"), "under-right-front"],
  ),
  places(
    "driveshaft-joints",
    words("driveshaft joints", "propshaft joints"),
    ["front-joint", words("front joint"), "under-middle"],
    ["rear-joint", words("rear joint"), "under-rear"],
  ),
  places(
    "leak-sources",
    words("sources of leaks"),
    ["engine-front", words("engine front seal and timing cover"), "under-front"],
    ["valve-covers", words("valve covers", "rocker covers"), "engine-bay"],
    ["oil-pan", words("oil pan", "sump"), "under-front"],
    ["rear-main-seal", words("rear main seal", "crankshaft rear seal"), "under-middle"],
    ["gearbox", words("gearbox", undefined, ["transmission"]), "under-middle"],
    ["axle", words("axle", undefined, ["differential"]), "under-rear"],
    ["coolant", words("cooling system"), "under-front"],
    ["power-steering", words("power steering"), "under-front"],
    ["brake-hydraulics", words("brake hydraulics"), "under-middle"],
    ["fuel", words("fuel system"), "under-rear"],
  ),
  places(
    "exhaust-parts",
    words("exhaust by part"),
    ["manifolds", words("exhaust manifolds", undefined, ["headers"]), "engine-bay"],
    ["head-pipes", words("head pipes", "downpipes"), "under-front"],
    ["mufflers", words("mufflers", "silencers"), "under-middle"],
    ["tail-pipes", words("tail pipes"), "under-tail"],
    ["hangers", words("hangers"), "under-rear"],
  ),
  places(
    "mounts",
    words("mounts", "mountings"),
    ["engine-left", words("engine, left"), "engine-bay"],
    ["engine-right", words("engine, right"), "engine-bay"],
    ["gearbox", words("gearbox", undefined, ["transmission"]), "under-middle"],
  ),
  places(
    "lines",
    words("fuel and brake lines", "fuel and brake pipes"),
    ["fuel-line", words("fuel line", "fuel pipe"), "under-middle"],
    ["brake-line-front", words("brake lines, front", "brake pipes, front"), "under-front"],
    ["brake-line-rear", words("brake lines, rear", "brake pipes, rear"), "under-rear"],
  ),
  places(
    "rails",
    words("rails by quarter"),
    ["left-front", words("left front rail", "left front chassis leg"), "under-left-front"],
    ["left-rear", words("left rear rail", "left rear chassis leg"), "under-left-rear"],
    ["right-rear", words("right rear rail", "right rear chassis leg"), "under-right-rear"],
    ["right-front", words("right front rail", "right front chassis leg"), "under-right-front"],
  ),
  places(
    "cross-members",
    words("cross-members"),
    ["front", words("front"), "under-front"],
    ["gearbox", words("gearbox", undefined, ["transmission"]), "under-middle"],
    ["rear", words("rear"), "under-rear"],
  ),
];
