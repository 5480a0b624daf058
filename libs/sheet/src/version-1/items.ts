import type { Item } from "@evenhand/shared/sheet";
import { body } from "./body.ts";
import { brightwork } from "./brightwork.ts";
import { doors } from "./doors.ts";
import { driveline, plumbing } from "./driveline.ts";
import { equipment, supply } from "./electrics.ts";
import { interior } from "./interior.ts";
import { steering } from "./steering.ts";
import { trunk } from "./trunk.ts";
import { underbody } from "./underbody.ts";
import { friction, hydraulics, pedal } from "./brakes.ts";
import { engineTests } from "./engine-tests.ts";
import { engine } from "./engine.ts";
import { gaps } from "./gaps.ts";
import { numbers } from "./identity-numbers.ts";
import { documents } from "./identity-papers.ts";
import { road } from "./road.ts";
import { visit } from "./visit.ts";
import { tires, wheels } from "./wheels.ts";
import { bodySpots, structureSpots } from "./weak-spots.ts";
import { brakeKinds, drivelineKinds, steeringKinds, wheelKinds } from "./chassis-kinds.ts";
import { engineSupply } from "./engine-supply.ts";
import { histories, opinion } from "./identity-history.ts";
import { sections } from "./sections.ts";
import { withVisitOrder } from "./visit-order.ts";
import { withYardstick } from "./yardsticks.ts";

const written: Item[] = [
  ...visit,
  ...numbers,
  ...documents,
  ...body,
  ...gaps,
  ...brightwork,
  ...doors,
  ...trunk,
  ...interior,
  ...equipment,
  ...supply,
  ...underbody,
  ...driveline,
  ...plumbing,
  ...steering,
  ...pedal,
  ...friction,
  ...hydraulics,
  ...tires,
  ...wheels,
  ...engineTests,
  ...engine,
  ...road,
  ...histories,
  ...opinion,
  ...bodySpots,
  ...structureSpots,
  ...steeringKinds,
  ...drivelineKinds,
  ...brakeKinds,
  ...wheelKinds,
  ...engineSupply,
];

const sectionOf = new Map<string, number>(sections.map(({ id, number }) => [id, number]));

/** All items, section by section, in the order of the sheet. */
export const items: Item[] = written
  .toSorted((a, b) => (sectionOf.get(a.section) ?? 0) - (sectionOf.get(b.section) ?? 0))
  .map(withYardstick)
  .map(withVisitOrder);
