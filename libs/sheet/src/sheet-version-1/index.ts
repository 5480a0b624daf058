import type { Sheet } from "@evenhand/shared/sheet";
import { cautions } from "../version-1/cautions.ts";
import { conditions } from "../version-1/conditions.ts";
import { costRows } from "../version-1/cost-rows.ts";
import { drawings } from "../version-1/drawings.ts";
import { faultKinds } from "../version-1/fault-kinds.ts";
import { frozen } from "../version-1/frozen.ts";
import { items } from "../version-1/items.ts";
import { positionSets } from "../version-1/positions.ts";
import { sections } from "../version-1/sections.ts";
import { standingPlaces, stations } from "../version-1/stations.ts";

/**
 * The inspection sheet `evenhand`, version 1, frozen. Figures are in each item's base unit; a figure without another source is
 * common practice that a firm may change. It is written as complete data, so that importing it parses nothing; a test parses it.
 *
 * @example
 * sheetVersion1.items.find((item) => item.id === "wheels.tread-depth")?.reading?.unit; // "1/32in"
 */
export const sheetVersion1: Sheet = frozen<Sheet>({
  id: "evenhand",
  version: 1,
  title: "Evenhand inspection sheet",
  sections,
  positionSets,
  drawings,
  faultKinds,
  cautions,
  places: standingPlaces,
  stations,
  conditions,
  costRows,
  items,
});
