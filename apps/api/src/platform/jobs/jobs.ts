import {
  Inject,
  Injectable,
  Logger,
  type OnApplicationBootstrap,
  type OnModuleDestroy,
} from "@nestjs/common";
import { fromPrisma, PgBoss } from "pg-boss";
import { CONFIG, type Config } from "../config/index.ts";
import type { Transaction } from "../database/database.ts";
import type { QueueName } from "./queues.ts";

type Work = (id: string) => Promise<void>;

/** Slow work, put in line in the transaction that needs it, and done by whichever service has workers on. */
@Injectable()
export class Jobs implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger("jobs");
  private readonly boss: PgBoss;
  private readonly workers = new Map<QueueName, Work>();

  constructor(@Inject(CONFIG) private readonly config: Config) {
    this.boss = new PgBoss({
      connectionString: config.database.url,
      max: 3,
      migrate: false,
      createSchema: false,
      useListenNotify: config.jobs,
      supervise: config.jobs,
      schedule: false,
    });
    this.boss.on("error", (error) => this.logger.error(error.message));
  }

  /** Says who does the work of a queue; before the service is up. */
  register(queue: QueueName, work: Work): void {
    this.workers.set(queue, work);
  }

  /** @param notBefore the work waits until then */
  async enqueue(tx: Transaction, queue: QueueName, id: string, notBefore?: Date): Promise<void> {
    const when = notBefore === undefined ? {} : { startAfter: notBefore };
    await this.boss.send(queue, { id }, { db: fromPrisma(tx), ...when });
  }

  async onApplicationBootstrap(): Promise<void> {
    await this.boss.start();
    if (!this.config.jobs) return;
    for (const [queue, work] of this.workers)
      await this.boss.work<{ id: string }>(
        queue,
        { pollingIntervalSeconds: 1, batchSize: 5 },
        async (jobs) => {
          for (const job of jobs) await work(job.data.id);
        },
      );
  }

  /** What is being done is finished; what is not begun stays in line. */
  async onModuleDestroy(): Promise<void> {
    await this.boss.stop({ graceful: true, timeout: 10_000 });
  }
}
