import type { PositionSet } from "@evenhand/shared/sheet";
import { cabinSets } from "./positions-cabin.ts";
import { cornerSets } from "./positions-corners.ts";
import { panelSets } from "./positions-panels.ts";
import { paperSets } from "./positions-papers.ts";
import { partSets } from "./positions-parts.ts";

/** Every set of positions an item of version 1 may name. */
export const positionSets: PositionSet[] = [
  ...paperSets,
  ...panelSets,
  ...cornerSets,
  ...cabinSets,
  ...partSets,
];
