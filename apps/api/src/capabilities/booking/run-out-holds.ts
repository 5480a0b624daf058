import { Injectable } from "@nestjs/common";
import { z } from "zod";
import type { Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readRows, sql } from "../../platform/database/rows.ts";
import { writeHistory } from "./appointment-store.ts";

export type Concerned = {
  readonly inspector: string;
  readonly site: string;
  readonly cars: readonly string[];
};

const Ended = z.object({ id: z.string(), revision: z.number(), starts_at: z.date(), ends_at: z.date() });

/** Ends holds whose ten minutes are over, where somebody else wants the time: a constraint cannot know the hour. */
@Injectable()
export class RunOutHolds {
  constructor(private readonly ids: Ids) {}

  async end(tx: Transaction, { inspector, site, cars }: Concerned, now: number): Promise<void> {
    const ended = await readRows(
      tx,
      Ended,
      sql`
      UPDATE appointment a SET state = 'expired', deadline = NULL, revision = revision + 1
      WHERE a.id IN (
        SELECT h.id FROM appointment h WHERE h.state = 'held' AND h.deadline <= ${new Date(now)}
          AND (h.inspector_id = ${inspector}::uuid OR h.site_id = ${site}::uuid OR EXISTS (
            SELECT 1 FROM appointment_car c WHERE c.appointment_id = h.id AND c.vehicle_id = ANY(${[...cars]}::uuid[])))
        ORDER BY h.id FOR UPDATE SKIP LOCKED)
        AND a.state = 'held'
      RETURNING a.id, a.revision, a.starts_at, a.ends_at`,
    );
    for (const { id, revision, starts_at, ends_at } of ended)
      await writeHistory(tx, {
        id: this.ids.next(),
        appointment: id,
        number: revision,
        at: now,
        actor: "clock",
        account: null,
        move: "expire",
        state: "expired",
        hour: { start: starts_at.getTime(), end: ends_at.getTime() },
      });
  }
}
