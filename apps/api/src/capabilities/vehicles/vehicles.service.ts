import { Injectable } from "@nestjs/common";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import type { ListingChange } from "@evenhand/shared/http/publishing";
import type { VehicleChange, VehicleQuery, VehicleRequest } from "@evenhand/shared/http/vehicles";
import type { Vehicle } from "@evenhand/shared/report";
import { z } from "zod";
import { findNoted, NotedRevisedBodyRow } from "../../platform/access/exposure.ts";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { dayLimit, dayMs, oneAtATime } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { readOpenFaults } from "./open-faults.ts";
import { searchedVehicles, searchPatterns, vehicleDetail, vehicleLists } from "./vehicles.queries.ts";

/** The columns that lists and searches go by. */
const columnsOf = (vehicle: Vehicle) => ({
  make: vehicle.make,
  model: vehicle.model,
  modelYear: vehicle.modelYear,
  identification: vehicle.identification,
  document: vehicle,
  search: [vehicle.make, vehicle.model, vehicle.modelYear, vehicle.identification].join(" ").toLowerCase(),
});

/** Cars one dealer enters within a day. Common practice, no source. */
const carsADay = 500;

async function keepWithinTheDay(tx: Transaction, organization: string, now: Date): Promise<void> {
  await oneAtATime(tx, "cars", organization);
  const entered = await tx.vehicle.count({
    where: { organizationId: organization, createdAt: { gt: new Date(now.getTime() - dayMs) } },
  });
  if (entered >= carsADay)
    throw dayLimit(
      `${carsADay} cars were entered for this dealer within a day, as many as may be. Enter the next ones tomorrow.`,
    );
}

type ListingCause = ListingChange["cause"];
export type Published = { readonly listed: boolean; readonly reason?: string };

@Injectable()
export class VehiclesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly record: RecordChain,
  ) {}

  /** A dealer alone sees their own cars; everybody else what is listed and what they have work on. */
  async list(actor: Actor, query: VehicleQuery): Promise<JsonText> {
    const onlyOwn = actor.kinds.every((kind) => kind === "dealer");
    const values: unknown[] = [actor.organizations(), readCursor(query), query.limit];
    const list = onlyOwn ? "own" : "seen";
    if (query.q === undefined)
      return readPage(this.database, { name: `vehicle-list-${list}`, text: vehicleLists[list], values });
    // Not prepared: how to look for words depends on how rare they are.
    const patterns = searchPatterns(query.q);
    const text = searchedVehicles(list, patterns.length);
    return readPage(this.database, { text, values: [...values, ...patterns] });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findNoted(this.database, NotedRevisedBodyRow, {
      name: "vehicle",
      read: vehicleDetail,
      values: [actor.organizations(), id, actor.account],
      now: this.clock.now(),
    });
    const { body, revision } = found(row, "car");
    return new JsonText(body, String(revision));
  }

  async create(tx: Transaction, actor: Actor, request: VehicleRequest): Promise<CreatedDraft> {
    if (!actor.organizations("dealer").includes(request.organization)) throw notFound("organization");
    const [id, now] = [this.ids.next(), this.clock.now()];
    await keepWithinTheDay(tx, request.organization, now);
    await tx.vehicle.create({
      data: {
        id,
        organizationId: request.organization,
        ...columnsOf(request.vehicle),
        askingMinor: request.asking?.minor ?? null,
        askingCurrency: request.asking?.currency ?? null,
        words: request.words ?? null,
        listed: false,
        revision: 1,
        createdAt: now,
        updatedAt: now,
      },
    });
    return { id, revision: 1 };
  }

  async change(actor: Actor, id: string, meant: number, change: VehicleChange): Promise<CreatedDraft> {
    return this.database.transaction(async (tx) => {
      const vehicle = await lockOwn(tx, actor, id);
      checkRevision(vehicle.revision, meant);
      if (change.listed === true) await this.checkListable(tx, id);
      if (change.listed !== undefined && change.listed !== vehicle.listed)
        await this.noteListed(tx, id, vehicle.organization, change.listed, {
          cause: change.listed ? "published" : "withdrawn",
          account: actor.account,
        });
      const { revision } = await tx.vehicle.update({
        where: { id },
        data: {
          ...(change.vehicle === undefined ? {} : columnsOf(change.vehicle)),
          ...(change.asking === undefined
            ? {}
            : { askingMinor: change.asking?.minor ?? null, askingCurrency: change.asking?.currency ?? null }),
          words: change.words,
          listed: change.listed,
          revision: { increment: 1 },
          updatedAt: this.clock.now(),
        },
      });
      return { id, revision };
    });
  }

  /** A new sealed statement lists the car; after a fault was accepted, one that answers it. */
  async listWithStatement(tx: Transaction, id: string): Promise<void> {
    if ((await readOpenFaults(tx, id)).length === 0) await this.setListed(tx, id, true, "sealed");
  }

  /** A fault accepted as true withdraws the listing until a new statement answers it. */
  async withdraw(tx: Transaction, id: string): Promise<void> {
    await this.setListed(tx, id, false, "fault");
  }

  /** The dealer lists the car, or withdraws it and says why. @returns the car's revision */
  async publish(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    wanted: Published,
  ): Promise<CreatedDraft> {
    const vehicle = await lockOwn(tx, actor, id);
    checkRevision(vehicle.revision, meant);
    if (wanted.listed) await this.checkListable(tx, id);
    const cause = wanted.listed ? "published" : "withdrawn";
    const changed = await this.setListed(tx, id, wanted.listed, cause, wanted.reason, actor.account);
    return { id, revision: vehicle.revision + (changed ? 1 : 0) };
  }

  private async setListed(
    tx: Transaction,
    id: string,
    listed: boolean,
    cause: ListingCause,
    reason: string | null = null,
    accountId: string | null = null,
  ): Promise<boolean> {
    const row = await findRow(
      tx,
      Listed,
      sql`
      UPDATE vehicle SET listed = ${listed}, revision = revision + 1, updated_at = ${this.clock.now()}
      WHERE id = ${id}::uuid AND listed <> ${listed} RETURNING organization_id AS organization`,
    );
    if (row === null) return false;
    await this.noteListed(tx, id, row.organization, listed, { cause, reason, account: accountId });
    return true;
  }

  private async noteListed(
    tx: Transaction,
    id: string,
    organization: string,
    listed: boolean,
    {
      cause,
      reason = null,
      account,
    }: { cause: ListingCause; reason?: string | null; account: string | null },
  ): Promise<void> {
    const change = { id: this.ids.next(), vehicleId: id, at: this.clock.now(), listed, cause, reason };
    await tx.listingChange.create({ data: { ...change, accountId: account } });
    this.record.append(tx, {
      kind: listed ? "listing.published" : "listing.withdrawn",
      organizations: [organization],
      subject: id,
      actor: account,
      content: { cause, change: change.id },
    });
  }

  private async checkListable(tx: Transaction, id: string): Promise<void> {
    const where = { vehicleId: id, kind: "statement" as const };
    if ((await tx.reportVersion.count({ where })) === 0)
      throw new ProblemError("nothing-to-list", "Seal a statement first; sealing it lists the car.");
    const openFaults = await readOpenFaults(tx, id);
    if (openFaults.length > 0)
      throw new ProblemError(
        "faults-unanswered",
        "Seal a statement that answers every fault you accepted; sealing it lists the car.",
        { members: { openFaults } },
      );
  }
}

const Listed = z.object({ organization: z.string() });
const Own = Listed.extend({ revision: z.number(), listed: z.boolean() });
type Own = z.infer<typeof Own>;

async function lockOwn(tx: Transaction, actor: Actor, id: string): Promise<Own> {
  const vehicle = await findRow(
    tx,
    Own,
    sql`
    SELECT revision, listed, organization_id AS organization FROM vehicle
    WHERE id = ${id}::uuid AND organization_id = ANY(${actor.organizations("dealer")}::uuid[]) FOR UPDATE`,
  );
  return found(vehicle, "car");
}
