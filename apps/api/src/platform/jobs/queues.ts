import { PgBoss } from "pg-boss";

/** Every kind of slow work. Workers look at the state again, so doing one twice does no harm. */
export const queues = ["mail", "appointment", "password-reset"] as const;
export type QueueName = (typeof queues)[number];

/** Lays out the tables of the job library and every queue: part of migrating, never of serving. */
export async function migrateJobs(databaseUrl: string): Promise<void> {
  const boss = new PgBoss({ connectionString: databaseUrl, max: 1, supervise: false, schedule: false });
  await boss.start();
  try {
    for (const name of queues)
      await boss.createQueue(name, { retryLimit: 10, retryDelay: 5, retryBackoff: true, notify: true });
  } finally {
    await boss.stop({ graceful: false });
  }
}
