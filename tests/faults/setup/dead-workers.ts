import { PgBoss } from "pg-boss";
import { query } from "../../api/setup/database.ts";

export type DeadWorkers = {
  /** A worker killed just now has been silent for long enough to be taken for dead. */
  readonly makeSilent: () => Promise<void>;
  /** The dead are looked for now, and the pause before another try is over. @returns how many jobs may be tried again */
  readonly lookForThem: () => Promise<number>;
  readonly stop: () => Promise<void>;
};

/** What would take half a minute after each kill of a worker, brought about at once. */
export async function deadWorkers(databaseUrl: string, queue: string): Promise<DeadWorkers> {
  const boss = new PgBoss({ connectionString: databaseUrl, supervise: false, schedule: false });
  await boss.start();
  const on = (text: string, values: unknown[] = []) => query(databaseUrl, text, values);
  return {
    makeSilent: async () => {
      await on(
        "UPDATE pgboss.job SET heartbeat_on = heartbeat_on - interval '21 seconds' WHERE name = $1 AND state = 'active'",
        [queue],
      );
    },
    lookForThem: async () => {
      // This queue alone: a worker that looks after all of them holds one after the other, and would wait for us as we for it.
      await on("UPDATE pgboss.queue SET monitor_on = NULL WHERE name = $1", [queue]);
      await boss.supervise(queue);
      const again = await on(
        "UPDATE pgboss.job SET start_after = now() WHERE name = $1 AND state = 'retry' RETURNING 1",
        [queue],
      );
      return again.length;
    },
    stop: () => boss.stop({ graceful: false }),
  };
}
