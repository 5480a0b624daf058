import { Injectable } from "@nestjs/common";
import {
  type OrderAcceptance,
  type OrderEnding,
  type OrderQuery,
  type OrderRequest,
  OrderState,
} from "@evenhand/shared/http/orders";
import { ORDER_STATES, type OrderMove, type OrderParty } from "@evenhand/case/order-states";
import { decideMove } from "@evenhand/case/state-table";
import type { CreatedDraft } from "@evenhand/shared/http/paging";
import type { NewsKind } from "@evenhand/shared/http/notices";
import { z } from "zod";
import { checkRevision } from "../../platform/access/parameters.ts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import type { Prisma } from "../../platform/database/generated/client.ts";
import { Ids } from "../../platform/database/ids.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, RevisedBodyRow, sql } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { AdmissionsService } from "../admissions/index.ts";
import { OpenCases } from "../cases/index.ts";
import { NoticesService } from "../notices/index.ts";
import { checkIndependence, findOrderable } from "./order-checks.ts";
import { insertOrder } from "./order-rows.ts";
import { orderDetail, orderList } from "./orders.queries.ts";

const LockedOrder = z.object({
  id: z.string(),
  vehicleId: z.string(),
  buyerId: z.string(),
  inspectorId: z.string(),
  statementId: z.string(),
  state: OrderState,
  revision: z.number(),
});
export type LockedOrder = z.infer<typeof LockedOrder>;

const newsOf: Partial<Record<OrderMove, NewsKind>> = {
  accept: "order-accepted",
  decline: "order-declined",
  cancel: "order-cancelled",
};

@Injectable()
export class OrdersService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly notices: NoticesService,
    private readonly admissions: AdmissionsService,
    private readonly cases: OpenCases,
    private readonly record: RecordChain,
  ) {}

  async list(actor: Actor, query: OrderQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "order-list",
      text: orderList,
      values: [
        actor.organizations(),
        readCursor(query),
        query.limit,
        query.state ?? null,
        query.vehicle ?? null,
      ],
    });
  }

  async get(actor: Actor, id: string): Promise<JsonText> {
    const row = await findRow(this.database, RevisedBodyRow, {
      name: "order",
      text: orderDetail,
      values: [actor.organizations(), id],
    });
    const { body, revision } = found(row, "order");
    return new JsonText(body, String(revision));
  }

  /** Freezes the statement: what is found will be set against this version, whatever is sealed later. */
  async create(tx: Transaction, actor: Actor, vehicle: string, request: OrderRequest): Promise<CreatedDraft> {
    const buyer = found(actor.organizations("buyer")[0], "buyer");
    await findOrderable(tx, actor, vehicle, request);
    await this.admissions.requireAdmitted(tx, request.inspector);
    await this.cases.open(tx, buyer, [vehicle]);
    const id = this.ids.next();
    await insertOrder(tx, {
      id,
      vehicle,
      buyer,
      firm: request.inspector,
      statement: request.statement,
      account: actor.account,
      at: this.clock.now(),
    });
    this.record.append(tx, {
      kind: "order.made",
      organizations: [buyer, request.inspector],
      subject: id,
      actor: actor.account,
      content: { vehicle, statement: request.statement },
    });
    await this.notices.tell(tx, {
      organization: request.inspector,
      kind: "order-received",
      subject: id,
      vehicle,
    });
    return { id, revision: 1 };
  }

  /** The inspector declares independence; from here until sealing no statement's answer reaches the firm. */
  async accept(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    { interests }: OrderAcceptance,
  ): Promise<CreatedDraft> {
    return this.move(tx, actor, id, meant, "accept", async (order) => {
      await this.admissions.requireAdmitted(tx, order.inspectorId);
      await checkIndependence(tx, order);
      return { interests, acceptedBy: actor.account, acceptedAt: this.clock.now() };
    });
  }

  async decline(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    ending: OrderEnding,
  ): Promise<CreatedDraft> {
    return this.end(tx, actor, id, meant, "decline", ending);
  }

  async cancel(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    ending: OrderEnding,
  ): Promise<CreatedDraft> {
    return this.end(tx, actor, id, meant, "cancel", ending);
  }

  /** The order as its inspector works on it, held until the transaction ends. */
  async lockForInspector(tx: Transaction, actor: Actor, id: string): Promise<LockedOrder> {
    return lock(tx, id, "inspector", actor.organizations("inspector"));
  }

  /** Its inspection is sealed: the firm may read statements again. */
  async markReported(tx: Transaction, order: LockedOrder): Promise<void> {
    const state = stateAfter(order, "report", "inspector");
    await tx.inspectionOrder.update({
      where: { id: order.id },
      data: { state, revision: { increment: 1 }, endedAt: this.clock.now() },
    });
  }

  private async end(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    move: "decline" | "cancel",
    { reason }: OrderEnding,
  ): Promise<CreatedDraft> {
    return this.move(tx, actor, id, meant, move, async () => ({ reason, endedAt: this.clock.now() }));
  }

  private async move(
    tx: Transaction,
    actor: Actor,
    id: string,
    meant: number,
    move: OrderMove,
    change: (order: LockedOrder) => Promise<Prisma.InspectionOrderUncheckedUpdateInput>,
  ): Promise<CreatedDraft> {
    const by: OrderParty = move === "cancel" ? "buyer" : "inspector";
    const order = await lock(tx, id, by, actor.organizations(by));
    checkRevision(order.revision, meant);
    const state = stateAfter(order, move, by);
    const data = { ...(await change(order)), state, revision: { increment: 1 } };
    const { revision } = await tx.inspectionOrder.update({ where: { id }, data });
    this.record.append(tx, {
      kind: "order.moved",
      organizations: [order.buyerId, order.inspectorId],
      subject: id,
      actor: actor.account,
      content: { move, state, revision },
    });
    await this.tellOther(tx, order, move, by);
    return { id, revision };
  }

  private async tellOther(
    tx: Transaction,
    order: LockedOrder,
    move: OrderMove,
    by: OrderParty,
  ): Promise<void> {
    const kind = newsOf[move];
    if (kind === undefined) return;
    const organization = by === "buyer" ? order.inspectorId : order.buyerId;
    await this.notices.tell(tx, { organization, kind, subject: order.id, vehicle: order.vehicleId });
  }
}

async function lock(
  tx: Transaction,
  id: string,
  by: OrderParty,
  organizations: string[],
): Promise<LockedOrder> {
  const order = await findRow(
    tx,
    LockedOrder,
    sql`
    SELECT id, vehicle_id AS "vehicleId", buyer_id AS "buyerId", inspector_id AS "inspectorId",
      statement_id AS "statementId", state::text AS state, revision
    FROM inspection_order WHERE id = ${id}::uuid
      AND CASE WHEN ${by} = 'buyer' THEN buyer_id ELSE inspector_id END = ANY(${organizations}::uuid[])
    FOR UPDATE`,
  );
  return found(order, "order");
}

function stateAfter(order: LockedOrder, move: OrderMove, by: OrderParty): OrderState {
  const moved = decideMove(ORDER_STATES, order.state, move, by);
  if (moved.kind === "moved") return moved.to;
  throw new ProblemError(
    "order-state",
    `The order is ${order.state}; that cannot be done with it any more.`,
    {
      members: { state: order.state },
    },
  );
}
