import { writeFileSync } from "node:fs";
import type { BenchOptions, BenchRow } from "../row.ts";
import { curvePicture, DISTANCES } from "./curve.ts";
import { kindRows, lieRows, recordRows, secondLookRows, wholeRows } from "./rows-of-reports.ts";
import { itemRows, peopleRows } from "./rows-of-readings.ts";
import { asDeclared } from "./people.ts";
import { plantDistances, tallyReadings } from "./readings.ts";

/** Cars for each row where nobody asks for more: the whole study in less than two minutes at rest. */
const CARS = 40;

/**
 * How good the verdicts are in use: whole reports on cars of known truth, by people who err as `assumptions.ts` says, compared by the
 * service's own analysis; the same answers go to three rivals. The same number of cars gives the same figures.
 */
export const rows = ({ print, cars = CARS, picture }: BenchOptions): BenchRow[] => {
  print(`${cars} cars a row; people and cars as assumed in apps/cli/src/bench/verdicts/assumptions.ts`);
  const curve = tallyReadings(asDeclared, 2 * cars, plantDistances(0.5, DISTANCES));
  if (picture !== undefined) writeFileSync(picture, curvePicture(curve));
  return [
    ...itemRows(cars, print),
    ...peopleRows(cars, print),
    ...kindRows(cars, print),
    ...lieRows(cars, print),
    ...recordRows(cars, print),
    ...secondLookRows(cars, print),
    ...wholeRows(cars, print),
  ];
};
