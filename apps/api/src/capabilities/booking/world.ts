import {
  type Conflict,
  DEFAULT_RULES,
  type InspectorCalendar,
  type VisitRequest,
} from "@evenhand/booking/calendar";
import { INDEPENDENCE_YEAR_MS, judgeIndependence, type PastVisit } from "@evenhand/booking/independence";
import { type Interval, normalize } from "@evenhand/booking/interval";
import { instantOfLocal } from "@evenhand/booking/local-time";
import { greatCircleTravel } from "@evenhand/booking/travel";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import { CarDealing, Place, Skill } from "@evenhand/shared/booking";
import type { ShareOfWork } from "@evenhand/shared/http/booking";
import { InspectorFees, InterestSeen } from "@evenhand/shared/http/calendars";
import { Closure, SiteFees } from "@evenhand/shared/http/sites";
import { Named } from "@evenhand/shared/http/paging";
import { z } from "zod";
import { IdRow, readRows, type Source } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { type LaidOutHours, zoneOfHours } from "../calendars/index.ts";
import { barredFirms, visitsDone, worldAt } from "./world.queries.ts";

const MINUTE = 60_000;

/** Hours may be anything that was stored: one inspector's that cannot be laid out take nobody else's away. */
const StoredHours = z.unknown();

const WorldSite = z.object({
  id: z.string(),
  name: z.string(),
  address: z.string(),
  place: Place,
  hours: StoredHours,
  closures: z.array(Closure),
  fees: SiteFees,
  dealer: Named,
});
/** Start and end in epoch milliseconds, latitude and longitude in degrees. */
type JobAsNumbers = readonly [start: number, end: number, latitude: number, longitude: number];
const isJob = (job: unknown): job is JobAsNumbers =>
  Array.isArray(job) && job.length === 4 && job.every((each) => typeof each === "number");
/** Looked at in place: a page of hours reads the jobs of everybody, many thousands of them. */
const Jobs = z.custom<readonly JobAsNumbers[]>(
  (jobs) => Array.isArray(jobs) && jobs.every(isJob),
  "jobs of four numbers each",
);
const WorldInspector = z.object({
  id: z.string(),
  name: z.string(),
  firm: Named,
  hours: StoredHours,
  base: Place,
  radius: z.number(),
  speed: z.number(),
  notice: z.number(),
  skills: z.array(Skill),
  fees: InspectorFees,
  engagements: Jobs,
  interests: z.array(InterestSeen),
  dealings: z.array(z.object({ car: z.string(), dealing: CarDealing })),
});
export type WorldInspector = z.infer<typeof WorldInspector>;
const Taken = z.object({ start: z.number(), end: z.number() });
const WorldPlace = z.object({
  site: WorldSite,
  bays: z.array(z.object({ id: z.string(), taken: z.array(Taken) })),
  cars: z.array(
    z.object({
      id: z.string(),
      engagements: z.array(Taken.extend({ needsCold: z.boolean(), warms: z.boolean() })),
    }),
  ),
});
const WorldRow = z.object({ place: WorldPlace.nullable(), inspector: WorldInspector.nullable() });
export type World = z.infer<typeof WorldPlace> & { inspectors: WorldInspector[] };

export type WorldQuestion = {
  readonly site: string;
  readonly cars: readonly string[];
  readonly horizon: Interval;
  readonly now: number;
  /** An appointment whose own time counts as free. */
  readonly moving?: string | undefined;
  readonly inspector?: string | undefined;
  readonly barred: readonly string[];
};

/** Before and after the horizon: for a night's soak, and for jobs that travel has to reckon with. */
const MARGIN = 48 * 60 * MINUTE;

export async function readWorld(source: Source, question: WorldQuestion): Promise<World> {
  const { site, cars, horizon, now, moving, inspector, barred } = question;
  const { start, end } = { start: new Date(horizon.start - MARGIN), end: new Date(horizon.end + MARGIN) };
  const values = [site, start, end, new Date(now), cars, moving ?? null, inspector ?? null, barred];
  const rows = await readRows(source, WorldRow, { text: worldAt, values });
  const place = found(rows.find((row) => row.place !== null)?.place ?? undefined, "site");
  return { ...place, inspectors: rows.flatMap((row) => row.inspector ?? []) };
}

/** Inspection firms that share people with the dealer or the buyer: never offered. */
export async function readBarred(source: Source, organizations: readonly string[]): Promise<string[]> {
  const rows = await readRows(source, IdRow, { text: barredFirms, values: [organizations] });
  return rows.map(({ id }) => id).toSorted();
}

export type Wanted = {
  readonly plan: VisitPlan;
  readonly horizon: Interval;
  readonly currency: string;
  readonly skills: readonly Skill[];
};

/** What is looked for, as the rules of booking ask for it. */
export function toRequest(world: World, laidOut: LaidOutHours, wanted: Wanted): VisitRequest {
  const { site, bays, cars } = world;
  const { plan, currency, skills } = wanted;
  const horizon = { start: wanted.horizon.start - MARGIN, end: wanted.horizon.end + MARGIN };
  // First: a zone that is none is found here.
  const open = laidOut.open(site.hours, horizon);
  const zone = zoneOfHours(site.hours);
  const closures = site.closures.map(({ from, until }) => ({
    start: instantOfLocal(from, zone),
    end: instantOfLocal(until, zone),
  }));
  return {
    plan,
    currency,
    skills,
    cars,
    travel: greatCircleTravel,
    rules: DEFAULT_RULES,
    site: {
      id: site.id,
      place: site.place,
      open,
      closures: normalize(closures),
      daylight: laidOut.daylight(site.place, horizon),
      bays: bays.map(({ id, taken }) => ({ id, taken: normalize(taken) })),
      fees: site.fees,
    },
  };
}

const jobOf = ([start, end, latitude, longitude]: JobAsNumbers): Interval & { place: Place } => ({
  start,
  end,
  place: { latitude, longitude },
});

export function conflictsOf(world: World, inspector: WorldInspector, now: number): readonly Conflict[] {
  const cars = world.cars.map(({ id }) => id);
  return judgeIndependence({ ...inspector, now, dealer: world.site.dealer.id, cars, visits: [] }).conflicts;
}

export function toCalendar(
  world: World,
  inspector: WorldInspector,
  laidOut: LaidOutHours,
  { now, horizon }: { now: number; horizon: Interval },
): InspectorCalendar {
  const { id, base, radius, speed, notice, skills, fees, engagements, hours } = inspector;
  const long = { start: horizon.start - MARGIN, end: horizon.end + MARGIN };
  return {
    id,
    base,
    radius,
    speed,
    skills,
    fees,
    engagements: engagements.map(jobOf),
    notice: notice * MINUTE,
    hours: laidOut.open(hours, long),
    conflicts: conflictsOf(world, inspector, now),
  };
}

const VisitDone = z.object({ inspector: z.string(), dealer: z.string(), at: z.number() });

/** Visits done within the year, by inspector. */
export async function readVisits(
  source: Source,
  inspectors: readonly string[],
  now: number,
): Promise<Map<string, PastVisit[]>> {
  const since = new Date(now - INDEPENDENCE_YEAR_MS);
  const rows = await readRows(source, VisitDone, { text: visitsDone, values: [inspectors, since] });
  const visits = new Map<string, PastVisit[]>();
  for (const { inspector, dealer, at } of rows) {
    const own = visits.get(inspector) ?? [];
    own.push({ dealer, at });
    visits.set(inspector, own);
  }
  return visits;
}

export const shareOf = (dealer: string, visits: readonly PastVisit[], now: number): ShareOfWork =>
  judgeIndependence({ now, dealer, cars: [], interests: [], dealings: [], visits }).share;
