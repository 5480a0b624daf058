import { instantOfLocal } from "@evenhand/booking/local-time";
import { normalize } from "@evenhand/booking/interval";
import { USUAL_HOURS, workingDeadline } from "@evenhand/booking/working-deadline";
import { WeeklyHours } from "@evenhand/shared/booking";
import { Closure } from "@evenhand/shared/http/sites";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { siteOfVehicle } from "../sites/index.ts";

const HOUR = 3_600_000;
const SiteTime = z.object({ hours: WeeklyHours, closures: z.array(Closure) });

/** `$1` the car. */
const siteTime = `SELECT s.hours, s.closures FROM vehicle v JOIN site s ON s.id = ${siteOfVehicle("v")} WHERE v.id = $1::uuid`;

/** When so many working hours have gone by at the site where the car stands. */
export async function deadlineIn(tx: Transaction, vehicle: string, now: Date, hours: number): Promise<Date> {
  const site = await findRow(tx, SiteTime, { text: siteTime, values: [vehicle] });
  const { hours: open, closures } = site ?? { hours: USUAL_HOURS, closures: [] };
  const closed = closures.map(({ from, until }) => ({
    start: instantOfLocal(from, open.zone),
    end: instantOfLocal(until, open.zone),
  }));
  return new Date(workingDeadline(now.getTime(), hours * HOUR, open, normalize(closed)));
}
