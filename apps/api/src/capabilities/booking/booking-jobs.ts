import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { Clock } from "../../platform/clock/index.ts";
import { DEFAULT_APPOINTMENT_RULES } from "@evenhand/booking/appointment";
import { Database } from "../../platform/database/database.ts";
import { IdRow, readRows } from "../../platform/database/rows.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { DUE, MovesService } from "./moves.service.ts";

const due = `SELECT id FROM appointment WHERE ${DUE} ORDER BY id LIMIT 1000`;

/** What the clock does to appointments: each is looked at when it is due, and every minute all that are due, where a job was lost. */
@Injectable()
export class BookingJobs implements OnModuleInit {
  private readonly logger = new Logger("booking");

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly jobs: Jobs,
    private readonly moves: MovesService,
  ) {}

  onModuleInit(): void {
    this.jobs.register("appointment", (id) => this.moves.lookAt(id));
    this.jobs.register("appointment-sweep", async () => void (await this.sweep()));
  }

  /**
   * One that cannot be looked at is said, and keeps no other from being looked at.
   *
   * @returns how many were due
   */
  async sweep(): Promise<number> {
    const now = this.clock.now();
    const begun = new Date(now.getTime() - DEFAULT_APPOINTMENT_RULES.grace);
    const rows = await readRows(this.database, IdRow, { text: due, values: [now, begun] });
    for (const { id } of rows)
      await this.moves.lookAt(id).catch((error: unknown) => {
        this.logger.error(`the appointment ${id} is due and could not be looked at: ${String(error)}`);
      });
    return rows.length;
  }
}
