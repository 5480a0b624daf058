import type { OpenMatterKind } from "@evenhand/shared/summary";

type Kind = {
  readonly matter: OpenMatterKind;
  /** How it is called. */
  readonly words: string;
  /** Items, or whole sections, that belong to it. */
  readonly members: readonly string[];
};

/**
 * What is one matter for the person who decides, in the order in which it is gone through where two are as grave. An item belongs to
 * the kind that names it, else to the one that names its section. Common practice, no source.
 */
export const MATTERS: readonly Kind[] = [
  {
    matter: "numbers",
    words: "the car's numbers",
    members: ["identity.vin", "identity.plate-fixing", "identity.pad"],
  },
  { matter: "title", words: "title and liens", members: ["identity"] },
  { matter: "water", words: "flood and water", members: ["interior.flood-line", "interior.silt"] },
  {
    matter: "structure",
    words: "structure and lift points",
    members: ["underbody", "body", "trunk"],
  },
  {
    matter: "brakes",
    words: "brakes",
    members: ["brakes", "road.braking", "driveline.parking-brake-cable", "driveline.lines"],
  },
  {
    matter: "steering",
    words: "steering, suspension and driveline",
    members: ["steering", "driveline", "road"],
  },
  { matter: "wheels", words: "wheels and tires", members: ["wheels"] },
  {
    matter: "fire",
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
  {
    matter: "equipment",
    words: "lamps, belts, glass and latches",
    members: ["electrics", "interior", "brightwork", "doors"],
  },
];
