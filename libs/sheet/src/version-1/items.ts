import type { Item } from "@evenhand/shared/sheet";
import { body } from "./body.ts";
import { friction, hydraulics, pedal } from "./brakes.ts";
import { engineTests } from "./engine-tests.ts";
import { engine } from "./engine.ts";
import { gaps } from "./gaps.ts";
import { numbers } from "./identity-numbers.ts";
import { documents } from "./identity-papers.ts";
import { road } from "./road.ts";
import { visit } from "./visit.ts";
import { tires, wheels } from "./wheels.ts";

/** All items, section by section, in the order of the sheet. */
export const items: Item[] = [
  ...visit,
  ...numbers,
  ...documents,
  ...body,
  ...gaps,
  ...pedal,
  ...friction,
  ...hydraulics,
  ...tires,
  ...wheels,
  ...engineTests,
  ...engine,
  ...road,
];
