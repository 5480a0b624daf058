import type { Sheet } from "@evenhand/shared/sheet";
import { cautions } from "../transport-1/cautions.ts";
import { circumstances } from "../transport-1/circumstances.ts";
import { damage } from "../transport-1/damage.ts";
import { figures, movingAndLashing } from "../transport-1/figures.ts";
import { positionSets } from "../transport-1/positions.ts";
import { sections } from "../transport-1/sections.ts";
import { frozen } from "../version-1/frozen.ts";
import { drawings } from "../version-1/drawings.ts";
import { faultKinds } from "../version-1/fault-kinds.ts";
import { standingPlaces, stations } from "../version-1/stations.ts";

const items = [...circumstances, ...figures, ...movingAndLashing, ...damage];

const asked = new Set(items.flatMap(({ faults }) => faults?.kinds ?? []));
const drawn = new Set(items.flatMap(({ faults }) => faults?.drawing ?? []));

/**
 * The transport sheet, version 1, frozen: what the driver who takes a car away, or brings it, writes down with whoever hands it over.
 * Fifteen to twenty minutes beside the car. Places and faults are called as on the inspection sheet. It is no roadworthiness certificate,
 * and stands beside the carrier's own paper, never in its place.
 *
 * @example
 * transportSheet1.items.find((item) => item.id === "identity.odometer")?.reading?.unit; // "mi"
 */
export const transportSheet1: Sheet = frozen<Sheet>({
  id: "transport",
  version: 1,
  title: "Evenhand transport sheet",
  sections,
  positionSets,
  drawings: drawings.filter(({ id }) => drawn.has(id)),
  faultKinds: faultKinds.filter(({ id }) => asked.has(id)),
  cautions,
  places: standingPlaces,
  stations,
  conditions: [],
  costRows: [],
  items,
});
