import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { Clock } from "../clock/index.ts";
import { Database } from "../database/database.ts";
import { sweepTables } from "../database/sweep.ts";
import { Jobs } from "./jobs.ts";

/** Every hour, whichever worker is free takes away what no longer serves anybody. */
@Injectable()
export class TableSweep implements OnModuleInit {
  private readonly logger = new Logger("sweep");
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly jobs: Jobs,
  ) {}

  onModuleInit(): void {
    this.jobs.register("table-sweep", async () => {
      const taken = await sweepTables(this.database, this.clock.now());
      this.logger.log(`rows taken away: ${JSON.stringify(taken)}`);
    });
  }
}
