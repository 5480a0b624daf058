import {
  Inject,
  Injectable,
  Logger,
  type OnApplicationBootstrap,
  type OnModuleDestroy,
} from "@nestjs/common";
import { fromPrisma, type Job, type JobResult, PgBoss } from "pg-boss";
import { CONFIG, type Config } from "../config/index.ts";
import type { Transaction } from "../database/database.ts";
import { heard } from "../database/heard.ts";
import { Turns } from "../database/turns.ts";
import { lookForDeadEvery, type QueueName, workings } from "./queues.ts";

type Work = (id: string) => Promise<void>;
type Given = { id: string };

const batchSize = 25;
/** How long what is being done may take to end when the service stops; what takes longer is put back in line. */
const graceMs = 10_000;

/** Slow work, put in line in the transaction that needs it, and done by whichever service has workers on. */
@Injectable()
export class Jobs implements OnApplicationBootstrap, OnModuleDestroy {
  private readonly logger = new Logger("jobs");
  private readonly boss: PgBoss;
  private readonly workers = new Map<QueueName, Work>();

  constructor(@Inject(CONFIG) private readonly config: Config) {
    this.boss = new PgBoss({
      // Whatever it is told beyond its own settings is told to its pool.
      ...heard,
      connectionString: config.database.url,
      max: 4,
      migrate: false,
      createSchema: false,
      useListenNotify: config.jobs,
      supervise: config.jobs,
      superviseIntervalSeconds: lookForDeadEvery,
      monitorIntervalSeconds: lookForDeadEvery,
      schedule: config.jobs,
    });
    this.boss.on("error", (error) => this.logger.error(error.message));
    this.boss.on("warning", ({ message }) => this.logger.warn(message));
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
    for (const [queue, work] of this.workers) await this.workOn(queue, work);
  }

  /** What is being done is finished; what is not begun stays in line. */
  async onModuleDestroy(): Promise<void> {
    await this.boss.stop({ graceful: true, timeout: graceMs });
  }

  /** A queue is told of what is put in line; it looks by itself for the rest, and goes on without a pause while there is more. */
  private async workOn(queue: QueueName, work: Work): Promise<void> {
    const { atOnce, fetchers, lookEvery } = workings[queue];
    const turns = new Turns(atOnce);
    const how = {
      pollingIntervalSeconds: 0.5,
      notifyPollingIntervalSeconds: lookEvery,
      batchSize,
      burstWhenBatchFull: true,
      localConcurrency: fetchers,
      perJobResults: true,
    } as const;
    await this.boss.work<Given>(queue, how, (jobs) =>
      Promise.all(jobs.map((job) => turns.take(() => this.doOne(queue, work, job)))),
    );
  }

  /** Each job ends by itself: one that fails is tried again, and those fetched with it are done. */
  private async doOne(queue: QueueName, work: Work, { id, data }: Job<Given>): Promise<JobResult> {
    try {
      await work(data.id);
      return { id, status: "completed" };
    } catch (error) {
      const message = error instanceof Error ? error.message : String(error);
      this.logger.warn(`${queue} ${data.id} failed and will be tried again: ${message}`);
      return { id, status: "failed", output: { message } };
    }
  }
}
