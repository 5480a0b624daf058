import { isIndependent, orderRefusal, type OrderRefusal } from "@evenhand/case/order-choice";
import type { OrderRequest } from "@evenhand/shared/http/orders";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, sql } from "../../platform/database/rows.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { findLiveOrder } from "./order-rows.ts";

const SharedRow = z.object({ shared: z.boolean() });

const Orderable = z.object({ dealerId: z.string(), listed: z.boolean(), newest: z.string().nullable() });
type Orderable = z.infer<typeof Orderable>;

async function findVehicle(tx: Transaction, actor: Actor, vehicle: string): Promise<Orderable> {
  const row = await findRow(
    tx,
    Orderable,
    sql`
    SELECT v.organization_id AS "dealerId", v.listed, (
      SELECT rv.id FROM report_version rv WHERE rv.vehicle_id = v.id AND rv.kind = 'statement'
      ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1) AS newest
    FROM vehicle v WHERE v.id = ${vehicle}::uuid AND (v.listed OR EXISTS (
      SELECT 1 FROM inspection_order o WHERE o.vehicle_id = v.id
        AND o.buyer_id = ANY(${actor.organizations("buyer")}::uuid[])))
    FOR SHARE OF v`,
  );
  return found(row, "car");
}

async function shareMembers(tx: Transaction, one: string, other: string): Promise<boolean> {
  const row = await findRow(
    tx,
    SharedRow,
    sql`
    SELECT EXISTS (SELECT 1 FROM membership a JOIN membership b ON a.account_id = b.account_id
      WHERE a.organization_id = ${one}::uuid AND b.organization_id = ${other}::uuid) AS shared`,
  );
  return row?.shared === true;
}

/** How a refusal reads to who orders. */
const refused = (refusal: OrderRefusal): ProblemError => {
  switch (refusal.because) {
    case "not-listed":
      return new ProblemError(
        "vehicle-not-listed",
        "The dealer has withdrawn the car; there is nothing to order.",
      );
    case "statement-superseded":
      return new ProblemError("statement-superseded", "Order against the newest statement; read it first.", {
        members: { statement: refusal.newest },
      });
    case "ordered-already":
      return new ProblemError("order-exists", "You have ordered this firm to inspect this car already.", {
        members: { order: refusal.order },
      });
  }
};

/** @throws ProblemError unless the car can be ordered to be inspected by this firm against this statement */
export async function findOrderable(
  tx: Transaction,
  actor: Actor,
  vehicle: string,
  { inspector, statement }: OrderRequest,
): Promise<void> {
  const { listed, newest } = await findVehicle(tx, actor, vehicle);
  const buyers = actor.organizations("buyer");
  const liveOrder = await findLiveOrder(tx, { vehicle, firm: inspector, buyers });
  const refusal = orderRefusal({ listed, newestStatement: newest, liveOrder }, statement);
  if (refusal !== null) throw refused(refusal);
  const firm = await tx.organization.findFirst({
    where: { id: inspector, kind: "inspector" },
    select: { id: true },
  });
  found(firm, "inspection firm");
}

/** @throws ProblemError `not-independent` where the firm shares people with the dealer or with the buyer */
export async function checkIndependence(
  tx: Transaction,
  order: { vehicleId: string; inspectorId: string; buyerId: string },
): Promise<void> {
  const vehicle = found(
    await tx.vehicle.findUnique({ where: { id: order.vehicleId }, select: { organizationId: true } }),
    "car",
  );
  const shared = {
    withDealer: await shareMembers(tx, order.inspectorId, vehicle.organizationId),
    withBuyer: await shareMembers(tx, order.inspectorId, order.buyerId),
  };
  if (isIndependent(shared)) return;
  throw new ProblemError(
    "not-independent",
    "Somebody of your firm also belongs to the dealer or the buyer. Decline, so that another firm can be asked.",
  );
}
