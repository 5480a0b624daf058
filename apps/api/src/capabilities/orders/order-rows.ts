import { LIVE_ORDERS } from "@evenhand/case/order-states";
import type { Transaction } from "../../platform/database/database.ts";

export type NewOrder = {
  readonly id: string;
  readonly vehicle: string;
  readonly buyer: string;
  /** The inspection firm. */
  readonly firm: string;
  readonly statement: string;
  readonly account: string;
  readonly at: Date;
};

/** An order as it begins, frozen against that statement. */
export async function insertOrder(tx: Transaction, order: NewOrder): Promise<void> {
  await tx.inspectionOrder.create({
    data: {
      id: order.id,
      vehicleId: order.vehicle,
      buyerId: order.buyer,
      inspectorId: order.firm,
      statementId: order.statement,
      state: "ordered",
      revision: 1,
      interests: [],
      orderedBy: order.account,
      orderedAt: order.at,
    },
  });
}

type Between = {
  readonly vehicle: string;
  readonly firm: string;
  readonly buyers: readonly string[];
};

/** The live order of one of these buyers with that firm on the car; `null` where there is none. */
export async function findLiveOrder(
  tx: Transaction,
  { vehicle, firm, buyers }: Between,
): Promise<string | null> {
  const live = await tx.inspectionOrder.findFirst({
    where: {
      vehicleId: vehicle,
      inspectorId: firm,
      buyerId: { in: [...buyers] },
      state: { in: [...LIVE_ORDERS] },
    },
    select: { id: true },
  });
  return live?.id ?? null;
}
