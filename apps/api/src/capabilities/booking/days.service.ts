import { Injectable } from "@nestjs/common";
import { dayRoute } from "@evenhand/booking/day-route";
import { type Interval, intersect, normalize } from "@evenhand/booking/interval";
import { instantOfLocal, localDays } from "@evenhand/booking/local-time";
import { Place } from "@evenhand/shared/booking";
import {
  type DaysQuery,
  EngagementSeen,
  type InspectorDays,
  type SiteDays,
} from "@evenhand/shared/http/booking/calendar-views";
import { Closure } from "@evenhand/shared/http/sites";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { findRow } from "../../platform/database/rows.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { checkDates, LaidOutHours, toStretch, zoneOfHours } from "../calendars/index.ts";
import { liveStates } from "./world.queries.ts";

const Engagement = EngagementSeen.omit({ travelBefore: true, travelAfter: true });
type Engagement = z.infer<typeof Engagement>;
/** Hours may be anything that was stored; what cannot be laid out is told where it is. */
const InspectorRow = z.object({
  body: z.object({ hours: z.unknown(), base: Place, speed: z.number(), engagements: z.array(Engagement) }),
});
const SiteRow = z.object({
  body: z.object({
    hours: z.unknown(),
    place: Place,
    closures: z.array(Closure),
    bays: z.array(z.object({ id: z.string(), name: z.string(), engagements: z.array(Engagement) })),
  }),
});

const siteOf = (s: string) => `json_build_object('id', ${s}.id, 'name', ${s}.name,
  'place', json_build_object('latitude', ${s}.latitude, 'longitude', ${s}.longitude))`;
const engaged = (times: string) => `json_build_object('appointment', a.id, 'state', a.state,
  'start', instant(${times}.starts_at), 'end', instant(${times}.ends_at), 'site', ${siteOf("s")})`;
const live = `a.state IN ${liveStates.replace(")", ", 'reported')")} AND NOT (a.state = 'held' AND a.deadline <= $5)`;

/** `$1` organizations, `$2` the calendar, `$3` and `$4` from and until, `$5` now. */
const inspectorTime = `SELECT json_build_object('hours', c.hours, 'speed', c.speed,
    'base', json_build_object('latitude', c.latitude, 'longitude', c.longitude),
    'engagements', coalesce((SELECT json_agg(${engaged("a")} ORDER BY a.starts_at)
      FROM appointment a JOIN site s ON s.id = a.site_id
      WHERE a.inspector_id = c.id AND a.requested_at IS NOT NULL AND a.ends_at > $3 AND a.starts_at < $4 AND ${live}), '[]')) AS body
  FROM inspector_calendar c WHERE c.id = $2 AND c.organization_id = ANY($1::uuid[])`;

const siteTime = `SELECT json_build_object('hours', s.hours, 'closures', s.closures,
    'place', json_build_object('latitude', s.latitude, 'longitude', s.longitude),
    'bays', coalesce((SELECT json_agg(json_build_object('id', b.id, 'name', b.name, 'engagements', coalesce((
        SELECT json_agg(${engaged("ab")} ORDER BY ab.starts_at)
        FROM appointment_bay ab JOIN appointment a ON a.id = ab.appointment_id
        WHERE ab.bay_id = b.id AND ab.ends_at > $3 AND ab.starts_at < $4 AND ${live}), '[]')) ORDER BY b.id)
      FROM bay b WHERE b.site_id = s.id AND NOT b.retired), '[]')) AS body
  FROM site s WHERE s.id = $2 AND s.organization_id = ANY($1::uuid[])`;

const within = (engagements: readonly EngagementSeen[], day: Interval): EngagementSeen[] =>
  engagements.filter(({ start, end }) => Date.parse(end) > day.start && Date.parse(start) < day.end);

/** Days as they are laid out on the calendar: for the week view, and for the inspector's day with its route. */
@Injectable()
export class DaysService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly laidOut: LaidOutHours,
  ) {}

  async ofInspector(actor: Actor, id: string, { from, until }: DaysQuery): Promise<InspectorDays> {
    checkDates(from, until, this.clock.now().getTime());
    const organizations = actor.organizations("inspector");
    const values = this.values(organizations, id, { from, until });
    const row = await findRow(this.database, InspectorRow, { text: inspectorTime, values });
    const { hours, base, speed, engagements } = found(row, "calendar").body;
    const routed = withTravel(engagements, base, speed);
    const zone = zoneOfHours(hours);
    const days = localDays(from, until, zone).map(({ date, day }) => {
      return {
        date,
        day: toStretch(day),
        open: this.laidOut.open(hours, day).map(toStretch),
        away: this.laidOut.away(hours, day).map(toStretch),
        daylight: this.laidOut.daylight(base, day).map(toStretch),
        engagements: within(routed, day),
      };
    });
    return { zone, days };
  }

  async ofSite(actor: Actor, id: string, { from, until }: DaysQuery): Promise<SiteDays> {
    checkDates(from, until, this.clock.now().getTime());
    const values = this.values(actor.organizations("dealer"), id, { from, until });
    const row = await findRow(this.database, SiteRow, { text: siteTime, values });
    const { hours, place, closures, bays } = found(row, "site").body;
    const zone = zoneOfHours(hours);
    const closed = normalize(
      closures.map((each) => ({
        start: instantOfLocal(each.from, zone),
        end: instantOfLocal(each.until, zone),
      })),
    );
    const days = localDays(from, until, zone).map(({ date, day }) => {
      return {
        date,
        day: toStretch(day),
        open: this.laidOut.open(hours, day).map(toStretch),
        closed: intersect(closed, [day]).map(toStretch),
        daylight: this.laidOut.daylight(place, day).map(toStretch),
        bays: bays.map(({ id: bay, name, engagements }) => ({
          id: bay,
          name,
          engagements: within(engagements.map(withoutTravel), day),
        })),
      };
    });
    return { zone, days };
  }

  private values(organizations: string[], id: string, { from, until }: DaysQuery): unknown[] {
    const margin = 2 * 86_400_000;
    const [begin, end] = [new Date(Date.parse(from) - margin), new Date(Date.parse(until) + margin)];
    return [organizations, id, begin, end, this.clock.now()];
  }
}

const withoutTravel = (engagement: Engagement): EngagementSeen => ({
  ...engagement,
  travelBefore: null,
  travelAfter: null,
});

/** Minutes of driving to each job from the one before or the base, and after the last one back. */
function withTravel(engagements: readonly Engagement[], base: Place, speed: number): EngagementSeen[] {
  const jobs = engagements.map(({ start, end, site }) => ({
    start: Date.parse(start),
    end: Date.parse(end),
    place: site.place,
  }));
  const legs = dayRoute(jobs, base, speed);
  return engagements.map((engagement, index) => ({ ...withoutTravel(engagement), ...legs[index] }));
}
