import { Injectable } from "@nestjs/common";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import type { VehicleChange, VehicleQuery, VehicleRequest } from "@evenhand/shared/http/vehicles";
import type { Vehicle } from "@evenhand/shared/report";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor } from "../../platform/database/page.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { searchPatterns, vehicleDetail, vehicleLists } from "./vehicles.queries.ts";

/** The columns that lists and searches go by. */
const columnsOf = (vehicle: Vehicle) => ({
  make: vehicle.make,
  model: vehicle.model,
  modelYear: vehicle.modelYear,
  identification: vehicle.identification,
  document: vehicle,
  search: [vehicle.make, vehicle.model, vehicle.modelYear, vehicle.identification].join(" ").toLowerCase(),
});

@Injectable()
export class VehiclesService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  /** A dealer alone sees their own cars; everybody else what is listed and what they have work on. */
  async list(actor: Actor, query: VehicleQuery): Promise<JsonText> {
    const onlyOwn = actor.kinds.every((kind) => kind === "dealer");
    const values: unknown[] = [actor.organizations(), readCursor(query), query.limit];
    const lists = onlyOwn
      ? [vehicleLists.own, vehicleLists.ownSearched]
      : [vehicleLists.seen, vehicleLists.seenSearched];
    const text = (query.q === undefined ? lists[0] : lists[1]) ?? "";
    if (query.q !== undefined) values.push(searchPatterns(query.q));
    const [row] = await this.database.rows<{ body: string }>({ text, values });
    return new JsonText(row?.body ?? "");
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await this.database.findRow<{ body: string; revision: number }>({
      name: "vehicle",
      text: vehicleDetail,
      values: [actor.organizations(), id],
    });
    const { body, revision } = found(row, "car");
    return new JsonText(body, String(revision));
  }

  async create(actor: Actor, request: VehicleRequest): Promise<CreatedDraft> {
    if (!actor.organizations("dealer").includes(request.organization)) throw notFound("organization");
    const [id, now] = [this.ids.next(), this.clock.now()];
    await this.database.transaction((tx) =>
      tx.vehicle.create({
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
      }),
    );
    return { id, revision: 1 };
  }

  async change(actor: Actor, id: string, meant: number, change: VehicleChange): Promise<CreatedDraft> {
    return this.database.transaction(async (tx) => {
      const vehicle = await lockOwn(tx, actor, id);
      checkRevision(vehicle.revision, meant);
      if (change.listed === true) await this.checkListable(tx, id);
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

  /** A new sealed statement lists the car, and lists it again after a fault was accepted. */
  async listWithStatement(tx: Transaction, id: string): Promise<void> {
    await this.setListed(tx, id, true);
  }

  /** A fault accepted as true withdraws the listing until a new statement answers it. */
  async withdraw(tx: Transaction, id: string): Promise<void> {
    await this.setListed(tx, id, false);
  }

  private async setListed(tx: Transaction, id: string, listed: boolean): Promise<void> {
    await tx.vehicle.updateMany({
      where: { id, listed: !listed },
      data: { listed, revision: { increment: 1 }, updatedAt: this.clock.now() },
    });
  }

  private async checkListable(tx: Transaction, id: string): Promise<void> {
    const newest = await tx.reportVersion.findFirst({
      where: { vehicleId: id, kind: "statement" },
      orderBy: { sealedAt: "desc" },
      select: { sealedAt: true },
    });
    const accepted = await tx.release.findFirst({
      where: { vehicleId: id, state: "accepted", answeredAt: { gt: newest?.sealedAt ?? new Date(0) } },
      select: { id: true },
    });
    if (newest === null || accepted !== null)
      throw new ProblemError(
        "nothing-to-list",
        "Seal a statement that answers every fault you accepted; sealing it lists the car.",
      );
  }
}

async function lockOwn(tx: Transaction, actor: Actor, id: string): Promise<{ revision: number }> {
  const [vehicle] = await tx.$queryRaw<{ revision: number }[]>`
    SELECT revision FROM vehicle
    WHERE id = ${id}::uuid AND organization_id = ANY(${actor.organizations("dealer")}::uuid[]) FOR UPDATE`;
  return found(vehicle, "car");
}
