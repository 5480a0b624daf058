import { Injectable } from "@nestjs/common";
import { endsWithVisit, orderOfVisit, type OrderableCar } from "@evenhand/case/order-choice";
import { ORDER_STATES } from "@evenhand/case/order-states";
import { decideMove } from "@evenhand/case/state-table";
import { OrderState } from "@evenhand/shared/http/orders";
import { z } from "zod";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { checkIndependence } from "./order-checks.ts";
import { findLiveOrder, insertOrder } from "./order-rows.ts";

const Newest = z.object({ newestStatement: z.string(), listed: z.boolean() });
type Newest = Pick<OrderableCar, "newestStatement" | "listed">;

export type VisitOrder = {
  vehicle: string;
  buyer: string;
  /** The inspection firm. */
  firm: string;
  account: string;
};

const Live = z.object({
  id: z.string(),
  vehicleId: z.string(),
  buyerId: z.string(),
  inspectorId: z.string(),
  state: OrderState,
});
type Live = z.infer<typeof Live>;

/** Orders as a booked visit moves them: made with it, accepted with it, ended with it. */
@Injectable()
export class VisitOrdersService {
  constructor(
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  /** The buyer's live order with this firm on the car, or a new one against the newest statement, frozen from here on. */
  async orderFor(tx: Transaction, { vehicle, buyer, firm, account }: VisitOrder): Promise<string> {
    const liveOrder = await findLiveOrder(tx, { vehicle, firm, buyers: [buyer] });
    const choice = orderOfVisit({ ...(await statementFor(tx, vehicle, buyer)), liveOrder });
    if (choice.of === "standing") return choice.order;
    if (choice.of === "none")
      throw new ProblemError(
        "vehicle-not-listed",
        "The dealer has withdrawn the car; there is nothing to inspect.",
      );
    const id = this.ids.next();
    const { statement } = choice;
    await insertOrder(tx, { id, vehicle, buyer, firm, statement, account, at: this.clock.now() });
    return id;
  }

  /** @throws ProblemError `not-independent` where the firm shares people with the dealer or with the buyer */
  async accept(tx: Transaction, id: string, account: string, interests: string[]): Promise<void> {
    const order = await lock(tx, id);
    const moved = decideMove(ORDER_STATES, order.state, "accept", "inspector");
    if (moved.kind === "refused") return;
    await checkIndependence(tx, order);
    await tx.inspectionOrder.update({
      where: { id },
      data: {
        state: moved.to,
        interests,
        acceptedBy: account,
        acceptedAt: this.clock.now(),
        revision: { increment: 1 },
      },
    });
  }

  /** Ends an order with its visit, unless something was found already: what is begun can still be sealed. */
  async end(tx: Transaction, id: string, to: "declined" | "cancelled", reason: string): Promise<void> {
    const order = await lock(tx, id);
    const report = await tx.report.findFirst({ where: { orderId: id }, select: { id: true } });
    if (!endsWithVisit(order.state, { hasReport: report !== null })) return;
    await tx.inspectionOrder.update({
      where: { id },
      data: { state: to, reason, endedAt: this.clock.now(), revision: { increment: 1 } },
    });
  }
}

async function lock(tx: Transaction, id: string): Promise<Live> {
  const order = await findRow(
    tx,
    Live,
    sql`
    SELECT id, vehicle_id AS "vehicleId", buyer_id AS "buyerId", inspector_id AS "inspectorId", state::text AS state
    FROM inspection_order WHERE id = ${id}::uuid FOR UPDATE`,
  );
  return found(order, "order");
}

/** What is looked at again is set against the statement that is disputed, whatever was sealed since; else against the newest. */
async function statementFor(tx: Transaction, vehicle: string, buyer: string): Promise<Newest> {
  const disputed = await findRow(
    tx,
    Newest,
    sql`
    SELECT k.a_id AS "newestStatement", true AS listed FROM release r JOIN comparison k ON k.id = r.at_comparison_id
    WHERE r.vehicle_id = ${vehicle}::uuid AND r.buyer_id = ${buyer}::uuid AND r.state = 'looking-again'
    ORDER BY r.id DESC LIMIT 1`,
  );
  return disputed ?? newestStatement(tx, vehicle);
}

async function newestStatement(tx: Transaction, vehicle: string): Promise<Newest> {
  const row = await findRow(
    tx,
    Newest,
    sql`
    SELECT rv.id AS "newestStatement", v.listed
    FROM vehicle v JOIN report_version rv ON rv.vehicle_id = v.id AND rv.kind = 'statement'
    WHERE v.id = ${vehicle}::uuid ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1`,
  );
  return row ?? { listed: false, newestStatement: null };
}
