import { Injectable, Logger } from "@nestjs/common";
import type { InspectorCalendar } from "@evenhand/booking/calendar";
import { explainDay } from "@evenhand/booking/explain-day";
import { findOffers, type OfferPosition } from "@evenhand/booking/free-hours";
import { INDEPENDENCE_YEAR_MS } from "@evenhand/booking/independence";
import type { Interval } from "@evenhand/booking/interval";
import { greatCircleTravel } from "@evenhand/booking/travel";
import type { VisitPlan } from "@evenhand/booking/visit-plan";
import type { Skill } from "@evenhand/shared/booking";
import type { DayExplained, OfferingInspector, Offers } from "@evenhand/shared/http/booking";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { HoursUnreadable, LaidOutHours, toStretch, zoneOfHours } from "../calendars/index.ts";
import { instant, offerBody, refusedBody } from "./bodies.ts";
import { planBody } from "./brief-items.ts";
import {
  readVisits,
  readWorld,
  shareOf,
  toCalendar,
  toRequest,
  type World,
  type WorldInspector,
} from "./world.ts";

/** Hours that are looked for: everything the answer depends on beside the hour it is and what is booked. */
export type Search = {
  readonly site: string;
  readonly cars: readonly string[];
  readonly plan: VisitPlan;
  readonly barred: readonly string[];
  readonly skills: readonly Skill[];
  /** Without it the site's own. */
  readonly currency?: string | undefined;
  readonly inspector?: string | undefined;
  readonly moving?: string | undefined;
};
export type Page = {
  readonly horizon: Interval;
  readonly limit: number;
  readonly after?: OfferPosition | undefined;
};

const cursorOf = ({ total, start, inspector }: OfferPosition): string =>
  Buffer.from(JSON.stringify([total, start, inspector])).toString("base64url");

@Injectable()
export class OfferSearch {
  private readonly logger = new Logger("offers");
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly laidOut: LaidOutHours,
  ) {}

  async offers(search: Search, { horizon, limit, after }: Page): Promise<Offers> {
    const now = this.clock.now().getTime();
    const world = await readWorld(this.database, { ...search, horizon, now });
    const currency = search.currency ?? world.site.fees.currency;
    const request = toRequest(world, this.laidOut, { ...search, currency, horizon });
    const calendars = this.calendarsOf(world, world.inspectors, { now, horizon });
    const question = { now, horizon, limit, ...(after === undefined ? {} : { after }) };
    const { offers, more } = findOffers(request, calendars, question);
    const last = offers.at(-1);
    const named = world.inspectors.filter(({ id }) => offers.some(({ inspector }) => inspector === id));
    return {
      zone: zoneOfHours(world.site.hours),
      site: siteBody(world),
      dealer: world.site.dealer,
      plan: planBody(search.plan),
      offers: offers.map((offer) => offerBody(offer, metersTo(world, offer.inspector))),
      inspectors: await this.describe(world, named, now),
      next:
        more && last !== undefined
          ? cursorOf({ total: last.cost.total, start: last.start, inspector: last.inspector })
          : null,
    };
  }

  async explain(search: Search, day: Interval): Promise<DayExplained> {
    const now = this.clock.now().getTime();
    const world = await readWorld(this.database, { ...search, horizon: day, now });
    const currency = search.currency ?? world.site.fees.currency;
    const request = toRequest(world, this.laidOut, { ...search, currency, horizon: day });
    const near = nearest(world);
    const calendars = this.calendarsOf(world, near, { now, horizon: day });
    return {
      zone: zoneOfHours(world.site.hours),
      day: toStretch(day),
      hours: explainDay(request, calendars, { now, day }).map(({ start, offeredBy, site, inspectors }) => ({
        start: instant(start),
        offeredBy: [...offeredBy],
        site: site.map(refusedBody),
        inspectors: inspectors.map(({ inspector, reasons }) => ({
          inspector,
          reasons: reasons.map(refusedBody),
        })),
      })),
      inspectors: near.map(({ id, name, firm }) => ({ id, name, firm })),
    };
  }

  /** One inspector whose stored hours cannot be laid out is left out and logged, and takes nobody else's hours away. */
  private calendarsOf(
    world: World,
    inspectors: readonly WorldInspector[],
    at: { now: number; horizon: Interval },
  ): InspectorCalendar[] {
    return inspectors.flatMap((inspector) => {
      try {
        return [toCalendar(world, inspector, this.laidOut, at)];
      } catch (error) {
        if (!(error instanceof HoursUnreadable)) throw error;
        this.logger.warn(`inspector ${inspector.id} is left out: ${String(error.cause)}`);
        return [];
      }
    });
  }

  private async describe(world: World, named: WorldInspector[], now: number): Promise<OfferingInspector[]> {
    const ids = named.map(({ id }) => id);
    const visits = await readVisits(this.database, ids, now);
    return named.map(({ id, name, firm, skills, interests }) => ({
      id,
      name,
      firm,
      skills,
      shareOfWork: shareOf(world.site.dealer.id, visits.get(id) ?? [], now),
      past: interests.filter(
        ({ endedAt }) => endedAt !== null && Date.parse(endedAt) <= now - INDEPENDENCE_YEAR_MS,
      ),
    }));
  }
}

const siteBody = ({ site: { id, name, address, place } }: World) => ({ id, name, address, place });

const metersFrom = ({ site }: World, { base, speed }: WorldInspector): number =>
  greatCircleTravel(base, site.place, speed).meters;

function metersTo(world: World, inspector: string): number {
  const found = world.inspectors.find(({ id }) => id === inspector);
  return found === undefined ? 0 : metersFrom(world, found);
}

/** A day is explained for so many inspectors, the nearest ones. */
const explained = 50;

const nearest = (world: World): WorldInspector[] =>
  world.inspectors
    .map((inspector) => ({ inspector, meters: metersFrom(world, inspector) }))
    .sort((a, b) => a.meters - b.meters)
    .slice(0, explained)
    .map(({ inspector }) => inspector);
