import { Injectable } from "@nestjs/common";
import type { CarPlaceRequest, SiteChange, SiteRequest } from "@evenhand/shared/http/sites";
import type { CreatedDraft, PageQuery } from "@evenhand/shared/http/paging";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { BodyRow, findRow, RevisedBodyRow, sql } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, notFound } from "../../platform/problems/problem-error.ts";
import { checkHours } from "../calendars/index.ts";
import { carPlace, siteDetail, siteList } from "./sites.queries.ts";

const LockedSite = z.object({ revision: z.number() });

type BayRow = { id: string | null; name: string };

/** Where dealers' cars stand: opening hours, lifts, closures. Nothing here names an inspector. */
@Injectable()
export class SitesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "site-list",
      text: siteList,
      values: [actor.organizations("dealer"), readCursor(query), query.limit],
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "site",
      text: siteDetail,
      values: [actor.organizations("dealer"), id],
    });
    const { body, revision } = found(row, "site");
    return new JsonText(body, String(revision));
  }

  async create(
    tx: Transaction,
    actor: Actor,
    { organization, bays, place, fees, ...site }: SiteRequest,
  ): Promise<CreatedDraft> {
    if (!actor.organizations("dealer").includes(organization)) throw notFound("organization");
    await checkHours(site.hours, this.clock.now().getTime());
    const id = this.ids.next();
    await tx.site.create({
      data: {
        ...site,
        ...place,
        ...fees,
        id,
        organizationId: organization,
        revision: 1,
        createdAt: this.clock.now(),
      },
    });
    await this.keepBays(
      tx,
      id,
      bays.map((name) => ({ id: null, name })),
    );
    return { id, revision: 1 };
  }

  async change(actor: Actor, id: string, meant: number, change: SiteChange): Promise<CreatedDraft> {
    const { bays, place, fees, ...site } = change;
    if (site.hours !== undefined) await checkHours(site.hours, this.clock.now().getTime());
    return this.database.transaction(async (tx) => {
      const { revision: now } = await lockOwn(tx, actor, id);
      checkRevision(now, meant);
      const { revision } = await tx.site.update({
        where: { id },
        data: { ...site, ...place, ...fees, revision: { increment: 1 } },
      });
      if (bays !== undefined) await this.keepBays(tx, id, bays);
      return { id, revision };
    });
  }

  async placeOf(actor: Actor, vehicle: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      name: "car-place",
      text: carPlace,
      values: [actor.organizations(), vehicle],
    });
    return new JsonText(found(row, "car").body);
  }

  async putPlace(actor: Actor, vehicle: string, { site }: CarPlaceRequest): Promise<JsonText> {
    await this.database.transaction(async (tx) => {
      const own = { in: actor.organizations("dealer") };
      const car = found(
        await tx.vehicle.findFirst({
          where: { id: vehicle, organizationId: own },
          select: { organizationId: true },
        }),
        "car",
      );
      const where = { id: site, organizationId: car.organizationId };
      found(await tx.site.findFirst({ where, select: { id: true } }), "site");
      await tx.vehiclePlace.upsert({
        where: { vehicleId: vehicle },
        create: { vehicleId: vehicle, siteId: site },
        update: { siteId: site },
      });
    });
    return this.placeOf(actor, vehicle);
  }

  /** The lifts in use become these; one left out keeps what is booked on it and takes nothing new. */
  private async keepBays(tx: Transaction, siteId: string, bays: readonly BayRow[]): Promise<void> {
    const kept = bays.flatMap(({ id }) => (id === null ? [] : [id]));
    await tx.bay.updateMany({ where: { siteId, id: { notIn: kept } }, data: { retired: true } });
    for (const { id, name } of bays) {
      if (id === null) await tx.bay.create({ data: { id: this.ids.next(), siteId, name, retired: false } });
      else await tx.bay.updateMany({ where: { siteId, id }, data: { name, retired: false } });
    }
  }
}

async function lockOwn(tx: Transaction, actor: Actor, id: string): Promise<{ revision: number }> {
  const site = await findRow(
    tx,
    LockedSite,
    sql`
    SELECT revision FROM site WHERE id = ${id}::uuid
      AND organization_id = ANY(${actor.organizations("dealer")}::uuid[]) FOR UPDATE`,
  );
  return found(site, "site");
}
