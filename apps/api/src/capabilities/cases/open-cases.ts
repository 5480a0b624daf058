import { Injectable } from "@nestjs/common";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { run, sql } from "../../platform/database/rows.ts";

/** A case begins with whatever its buyer does first about the car: a question, a brief, an hour held, an order. */
@Injectable()
export class OpenCases {
  constructor(
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  /** Opens the buyer's cases on these cars, where they are not open already: the cars by their ids, so that two never wait in a ring. */
  async open(tx: Transaction, buyer: string, vehicles: readonly string[]): Promise<void> {
    for (const vehicle of vehicles.toSorted((a, b) => (a < b ? -1 : 1))) {
      await run(
        tx,
        sql`
        INSERT INTO buyer_case (id, vehicle_id, buyer_id, dealer_id, opened_at)
        SELECT ${this.ids.next()}::uuid, v.id, ${buyer}::uuid, v.organization_id, ${this.clock.now()}
        FROM vehicle v WHERE v.id = ${vehicle}::uuid
        ON CONFLICT (vehicle_id, buyer_id) DO NOTHING`,
      );
    }
  }
}
