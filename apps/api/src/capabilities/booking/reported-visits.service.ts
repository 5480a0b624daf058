import { Injectable } from "@nestjs/common";
import { openMoves } from "@evenhand/booking/appointment";
import { Clock } from "../../platform/clock/index.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, IdRow, sql } from "../../platform/database/rows.ts";
import { getLocked } from "./appointment-store.ts";
import { allSealed, MovesService } from "./moves.service.ts";

/** The visit's side of sealing an inspection: held before the report is, and moved on when it is sealed. */
@Injectable()
export class ReportedVisits {
  constructor(
    private readonly clock: Clock,
    private readonly moves: MovesService,
  ) {}

  /**
   * The visit in which an order is carried out, its inspector held first and then the visit, until the transaction ends. Whoever
   * cancels it takes the same locks in the same order.
   *
   * @returns the visit, or `null` where none is confirmed or under way
   */
  async hold(tx: Transaction, order: string): Promise<string | null> {
    const visit = await findRow(
      tx,
      IdRow,
      sql`
      SELECT a.id FROM appointment_car c JOIN appointment a ON a.id = c.appointment_id
      WHERE c.order_id = ${order}::uuid AND a.state IN ('confirmed', 'under-way')
      ORDER BY a.state = 'under-way' DESC, a.starts_at, a.id LIMIT 1`,
    );
    if (visit === null) return null;
    await getLocked(tx, visit.id);
    return visit.id;
  }

  /**
   * An inspection of the visit was sealed: with all of them sealed, the visit is reported. One that was cancelled before it could be
   * held stays so; what was begun in it is sealed all the same.
   */
  async noteSealed(tx: Transaction, visit: string, account: string): Promise<void> {
    const by = { actor: "inspector", account } as const;
    let stored = await getLocked(tx, visit);
    if (!(await allSealed(tx, stored))) return;
    if (stored.visit.state === "confirmed") {
      if (!openMoves(stored.visit, "inspector", this.clock.now().getTime()).includes("start")) return;
      await this.moves.perform(tx, stored, "start", by, { facts: {} });
      stored = await getLocked(tx, visit);
    }
    if (stored.visit.state !== "under-way") return;
    await this.moves.perform(tx, stored, "report", by, { facts: { reportSealed: true } });
  }
}
