import {
  type Conflict,
  DEFAULT_RULES,
  type InspectorCalendar,
  type VisitRequest,
} from "@evenhand/booking/calendar";
import { INDEPENDENCE_YEAR, judgeIndependence, type PastVisit } from "@evenhand/booking/independence";
import { type Interval, normalize } from "@evenhand/booking/interval";
import { instantOfLocal } from "@evenhand/booking/local-time";
import { greatCircleTravel } from "@evenhand/booking/travel";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import type { CarDealing, Place, Skill, WeeklyHours } from "@evenhand/shared/booking";
import type { ShareOfWork } from "@evenhand/shared/http/booking";
import type { Closure, InspectorFees, InterestSeen, SiteFees } from "@evenhand/shared/http/calendars";
import type { Named } from "@evenhand/shared/http/paging";
import type { Reader } from "../../platform/database/reader.ts";
import { found } from "../../platform/problems/problem-error.ts";
import type { LaidOutHours } from "../calendars/index.ts";
import { barredFirms, visitsDone, worldAt } from "./world.queries.ts";

const MINUTE = 60_000;

export type WorldSite = {
  id: string;
  name: string;
  address: string;
  place: Place;
  hours: WeeklyHours;
  closures: Closure[];
  fees: SiteFees;
  dealer: Named;
};
/** Start and end in epoch milliseconds, latitude and longitude in degrees. */
type JobAsNumbers = readonly [start: number, end: number, latitude: number, longitude: number];
export type WorldInspector = {
  id: string;
  name: string;
  firm: Named;
  hours: WeeklyHours;
  base: Place;
  radius: number;
  speed: number;
  notice: number;
  skills: Skill[];
  fees: InspectorFees;
  engagements: JobAsNumbers[];
  interests: InterestSeen[];
  dealings: { car: string; dealing: CarDealing }[];
};
type CarTime = { id: string; engagements: (Interval & { needsCold: boolean; warms: boolean })[] };
export type World = {
  site: WorldSite;
  bays: { id: string; taken: Interval[] }[];
  cars: CarTime[];
  inspectors: WorldInspector[];
};

type WorldRow = { place: Omit<World, "inspectors"> | null; inspector: WorldInspector | null };

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

export async function readWorld(read: Reader, question: WorldQuestion): Promise<World> {
  const { site, cars, horizon, now, moving, inspector, barred } = question;
  const rows = await read<WorldRow>(worldAt, [
    site,
    new Date(horizon.start - MARGIN),
    new Date(horizon.end + MARGIN),
    new Date(now),
    cars,
    moving ?? null,
    inspector ?? null,
    barred,
  ]);
  const place = found(rows.find((row) => row.place !== null)?.place ?? undefined, "site");
  return { ...place, inspectors: rows.flatMap((row) => row.inspector ?? []) };
}

/** Inspection firms that share people with the dealer or the buyer: never offered. */
export async function readBarred(read: Reader, organizations: readonly string[]): Promise<string[]> {
  return (await read<{ id: string }>(barredFirms, [organizations])).map(({ id }) => id).toSorted();
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
  const closures = site.closures.map(({ from, until }) => ({
    start: instantOfLocal(from, site.hours.zone),
    end: instantOfLocal(until, site.hours.zone),
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

/** Visits done within the year, by inspector. */
export async function readVisits(
  read: Reader,
  inspectors: readonly string[],
  now: number,
): Promise<Map<string, PastVisit[]>> {
  const since = new Date(now - INDEPENDENCE_YEAR);
  const rows = await read<{ inspector: string; dealer: string; at: unknown }>(visitsDone, [
    inspectors,
    since,
  ]);
  const visits = new Map<string, PastVisit[]>();
  for (const { inspector, dealer, at } of rows) {
    const own = visits.get(inspector) ?? [];
    own.push({ dealer, at: Number(at) });
    visits.set(inspector, own);
  }
  return visits;
}

export const shareOf = (dealer: string, visits: readonly PastVisit[], now: number): ShareOfWork =>
  judgeIndependence({ now, dealer, cars: [], interests: [], dealings: [], visits }).share;
