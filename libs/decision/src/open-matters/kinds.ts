import type { OpenMatterKind } from "@evenhand/shared/summary";

type Kind = {
  /** How it is called. */
  readonly words: string;
  /** Items, or whole sections, that belong to it. */
  readonly members: readonly string[];
};

/**
 * What is one matter for the person who decides, in the order in which it is gone through where two are as grave. An item belongs to
 * the kind that names it, else to the one that names its section. Common practice, no source.
 */
export const MATTERS: Readonly<Record<OpenMatterKind, Kind>> = {
  numbers: { words: "the car's numbers", members: ["identity.vin", "identity.plate-fixing", "identity.pad"] },
  title: { words: "title and liens", members: ["identity"] },
  water: { words: "flood and water", members: ["interior.flood-line", "interior.silt"] },
  structure: {
    words: "structure and lift points",
    members: ["underbody", "body", "trunk"],
  },
  brakes: {
    words: "brakes",
    members: ["brakes", "road.braking", "driveline.parking-brake-cable", "driveline.lines"],
  },
  steering: {
    words: "steering, suspension and driveline",
    members: ["steering", "driveline", "road"],
  },
  wheels: { words: "wheels and tires", members: ["wheels"] },
  fire: {
    words: "fuel, exhaust and wiring",
    members: [
      "engine",
      "interior.smell",
      "electrics.polarity",
      "electrics.dash-wiring",
      "electrics.fuse-box",
      "driveline.tank-outside",
      "driveline.fuel-hoses",
      "driveline.fuel-hose-date",
      "driveline.exhaust",
    ],
  },
  equipment: {
    words: "lamps, belts, glass and latches",
    members: ["electrics", "interior", "brightwork", "doors"],
  },
};
