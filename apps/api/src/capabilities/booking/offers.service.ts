import { Injectable } from "@nestjs/common";
import type { OfferPosition } from "@evenhand/booking/free-hours";
import { compiledSheet as sheet } from "@evenhand/record/report-document";
import { localDay } from "@evenhand/booking/local-time";
import { briefOf } from "@evenhand/booking/visit-brief";
import type {
  BriefRequest,
  BriefSeen,
  DayExplained,
  DayQuery,
  OfferQuery,
  Offers,
} from "@evenhand/shared/http/booking";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { findRow, run, sql } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { checkDates, checkDay, dateIn, readableZone } from "../calendars/index.ts";
import { OpenCases } from "../cases/index.ts";
import { briefBody, checkChosen, requirePlan } from "./brief-items.ts";
import { OfferSearch, type Search } from "./offer-search.ts";
import { StoredPlan } from "./stored.ts";
import { buyerOf, readBriefedCars, readCars } from "./visit-cars.ts";
import { readBarred } from "./world.ts";

const DAY = 86_400_000;
const Moving = z.object({
  site: z.string(),
  inspector: z.string(),
  plan: StoredPlan,
  currency: z.string(),
  zone: z.string().nullable(),
  cars: z.array(z.string()),
});
const ZoneRow = z.object({ zone: z.string().nullable() });
/** `$1` organizations, `$2` the appointment. */
const movingVisit = `SELECT a.site_id AS site, a.inspector_id AS inspector, a.plan, a.cost->>'currency' AS currency,
    s.hours->>'zone' AS zone, ARRAY(SELECT c.vehicle_id FROM appointment_car c WHERE c.appointment_id = a.id ORDER BY c.place) AS cars
  FROM appointment a JOIN site s ON s.id = a.site_id WHERE a.id = $2 AND a.buyer_id = ANY($1::uuid[])`;

const Position = z.tuple([z.int(), z.int(), z.uuid()]);

function readPosition(after: string | undefined): OfferPosition | undefined {
  if (after === undefined) return undefined;
  try {
    const [total, start, inspector] = Position.parse(
      JSON.parse(Buffer.from(after, "base64url").toString("utf8")),
    );
    return { total, start, inspector };
  } catch (error) {
    throw new ProblemError("invalid-fields", "The page's beginning is not one this list gave out.", {
      problems: [
        {
          at: "query/after",
          reason: error instanceof Error ? "the `next` of the page before" : "unreadable",
        },
      ],
    });
  }
}

/** What a buyer wants looked at, and the hours at which it can be. */
@Injectable()
export class OffersService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly search: OfferSearch,
    private readonly cases: OpenCases,
  ) {}

  async brief(actor: Actor, vehicle: string): Promise<BriefSeen> {
    const [car] = await readBriefedCars(this.database, actor, [vehicle]);
    const { form, depth, items, briefRevision } = found(car, "car");
    const chosen = items.filter(({ core }) => !core).map(({ item }) => item);
    return briefBody(vehicle, briefRevision, briefOf(sheet, form, depth, chosen));
  }

  async putBrief(
    actor: Actor,
    vehicle: string,
    meant: number,
    { depth, items }: BriefRequest,
  ): Promise<BriefSeen> {
    return this.database.transaction((tx) => this.putBriefIn(tx, actor, vehicle, meant, { depth, items }));
  }

  /** The same, as part of a larger change. */
  async putBriefIn(
    tx: Transaction,
    actor: Actor,
    vehicle: string,
    meant: number,
    { depth, items }: BriefRequest,
  ): Promise<BriefSeen> {
    const buyer = buyerOf(actor);
    await run(tx, sql`SELECT pg_advisory_xact_lock(hashtextextended(${`brief ${vehicle} ${buyer}`}, 0))`);
    const [car] = await readBriefedCars(tx, actor, [vehicle]);
    const { form, briefRevision } = found(car, "car");
    checkRevision(briefRevision, meant);
    checkChosen(form, items);
    await this.cases.open(tx, buyer, [vehicle]);
    const revision = briefRevision + 1;
    const data = { depth, items, revision, updatedBy: actor.account, updatedAt: this.clock.now() };
    await tx.brief.upsert({
      where: { vehicleId_buyerId: { vehicleId: vehicle, buyerId: buyer } },
      create: { vehicleId: vehicle, buyerId: buyer, ...data },
      update: data,
    });
    return briefBody(vehicle, revision, briefOf(sheet, form, depth, items));
  }

  async list(actor: Actor, vehicle: string, query: OfferQuery): Promise<Offers> {
    const { search, zone } = await this.prepare(actor, vehicle, query);
    const now = this.clock.now().getTime();
    const from = query.from ?? dateIn(now, zone);
    const until = query.until ?? new Date(Date.parse(from) + 29 * DAY).toISOString().slice(0, 10);
    checkDates(from, until, now);
    const horizon = { start: localDay(from, zone).start, end: localDay(until, zone).end };
    return this.search.offers(search, { horizon, limit: query.limit, after: readPosition(query.after) });
  }

  async explain(actor: Actor, vehicle: string, query: DayQuery): Promise<DayExplained> {
    const { search, zone } = await this.prepare(actor, vehicle, query);
    checkDay(query.date, this.clock.now().getTime());
    return this.search.explain(search, localDay(query.date, zone));
  }

  private async prepare(
    actor: Actor,
    vehicle: string,
    query: Omit<DayQuery, "date">,
  ): Promise<{ search: Search; zone: string }> {
    if (query.moving !== undefined) return this.prepareMoving(actor, query.moving, query);
    const cars = await readCars(this.database, actor, [vehicle, ...(query.with ?? [])]);
    const [{ dealer, site }] = cars;
    const row = await findRow(this.database, ZoneRow, {
      text: "SELECT hours->>'zone' AS zone FROM site WHERE id = $1",
      values: [site],
    });
    const search: Search = {
      site,
      cars: cars.map(({ id }) => id),
      plan: requirePlan(cars),
      barred: await readBarred(this.database, [dealer, ...actor.organizations("buyer")]),
      skills: query.skills ?? [],
      currency: query.currency,
      inspector: query.inspector,
    };
    return { search, zone: readableZone(found(row, "site").zone) };
  }

  /** The same visit at another hour: its own cars, brief and inspector. */
  private async prepareMoving(
    actor: Actor,
    moving: string,
    { skills = [] }: Pick<DayQuery, "skills">,
  ): Promise<{ search: Search; zone: string }> {
    const row = await findRow(this.database, Moving, {
      text: movingVisit,
      values: [actor.organizations("buyer"), moving],
    });
    const { zone, ...visit } = found(row, "appointment");
    return { search: { ...visit, barred: [], skills, moving }, zone: readableZone(zone) };
  }
}
