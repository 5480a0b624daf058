import type { Severity } from "@evenhand/shared/severity";
import type { FaultSeverity } from "@evenhand/shared/sheet";

/**
 * How grave a fault is by kind, extent in mm and place; the first row that fits counts, and after them the kind's own. Common
 * practice, no source: an extent is the smallest from which an inspector would call it so.
 */
const row = (severity: Severity, kinds?: string[], from?: number, positions?: string[]): FaultSeverity => ({
  severity,
  ...(kinds === undefined ? {} : { kinds }),
  ...(from === undefined ? {} : { from }),
  ...(positions === undefined ? {} : { positions }),
});

/** Nothing here is more than a trifle. */
export const trifles = [row("small")];
/** Everything here is money. */
export const repairs = [row("repair")];
/** Brake and fuel hoses: whatever is wrong with one can end in a fire or without brakes. */
export const dangers = [row("danger")];

const rockers = ["left-rocker", "right-rocker"];

/** Outer panels. Rockers carry the car on most bodies: a hole there is more than a panel's. */
export const panelSeverities = [
  row("danger", ["perforation"], undefined, rockers),
  row("worth", ["perforation", "filler", "patch"]),
  row("repair", ["dent"], 100),
  row("small", ["dent"]),
  row("repair", ["corrosion", "blister"], 15),
  row("small", ["corrosion", "blister"]),
  row("repair", ["crack", "crazing"], 50),
  row("small", ["crack", "crazing"]),
  row("repair", ["scratch", "fading", "overspray", "run-or-sag", "sink-mark"], 300),
];

/** A chip of 2 mm is a trifle, one of a coin's size is filled or the pane is changed; a crack in the windshield is in the driver's view sooner or later. */
export const glassSeverities = [
  row("danger", ["crack"], undefined, ["windshield"]),
  row("repair", ["crack", "missing-piece"]),
  row("repair", ["chip"], 20, ["windshield"]),
  row("repair", ["scratch", "delamination"], 150, ["windshield"]),
  row("small"),
];

export const brightSeverities = [row("repair", ["bend", "crack"]), row("repair", ["dent"], 50), row("small")];

export const doorSeverities = [row("worth", ["filler"]), row("repair")];

/** Patches in a jamb, and paint where the maker sprayed none, speak of a repair behind them. */
export const jambSeverities = [
  row("worth", ["patch", "overspray"]),
  row("repair", ["corrosion"], 15),
  row("small"),
];

/** Sheet that carries little: floors, wheelhouses, channels. */
export const floorSeverities = [
  row("worth", ["perforation", "filler", "weld-crack"]),
  row("worth", ["corrosion", "patch", "buckle"], 200),
  row("repair", ["corrosion", "patch", "buckle", "bend", "crack"]),
  row("repair", ["dent"], 80),
  row("small"),
];

/** What holds axles, springs and passengers: a hole or a crack is a danger, a hand's breadth of rust is the price. */
export const structureSeverities = [
  row("danger", ["perforation", "crack", "weld-crack"]),
  row("worth", ["buckle", "bend", "patch", "filler"]),
  row("worth", ["corrosion"], 100),
  row("repair", ["corrosion", "crushed-seam"]),
  row("repair", ["dent"], 50),
  row("small"),
];

/** A tower that has moved takes the wheel with it. */
export const towerSeverities = [row("danger", ["buckle"]), ...structureSeverities];

export const jackingSeverities = [
  row("worth", ["buckle"], 100),
  row("repair", ["buckle", "crushed-seam", "bend"]),
  row("repair", ["dent"], 80),
  row("small"),
];

export const shaftSeverities = [
  row("danger", ["crack", "bend"]),
  row("repair", ["dent", "missing-piece"]),
  row("small"),
];

export const bootSeverities = [row("repair")];

/** A hole before the tail pipe can bring exhaust gas into the cabin. */
export const exhaustSeverities = [
  row("danger", ["perforation", "blow-hole", "crack", "missing-piece"], undefined, [
    "manifolds",
    "head-pipes",
  ]),
  row("repair", ["perforation", "blow-hole", "crack", "missing-piece"]),
  row("small"),
];

export const tankSeverities = [
  row("danger", ["perforation", "crack"]),
  row("repair", ["corrosion", "patch"]),
  row("repair", ["dent"], 50),
  row("small"),
];

export const lineSeverities = [row("danger", ["corrosion", "perforation", "chafe"]), row("repair")];

export const springSeverities = [row("danger", ["crack", "cut", "missing-piece", "bend"]), row("small")];

/** A spare rolls when it must: what would end the road at a corner is money in the trunk. */
export const tireSeverities = [row("repair", undefined, undefined, ["spare"]), row("danger")];

export const wheelSeverities = [
  row("repair", ["crack", "missing-piece", "bend"], undefined, ["spare"]),
  row("danger", ["crack", "missing-piece"]),
  row("repair", ["bend", "dent"]),
  row("small"),
];
