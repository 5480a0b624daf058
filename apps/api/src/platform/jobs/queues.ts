import { PgBoss } from "pg-boss";

/** Every kind of slow work. Workers look at the state again, so doing one twice does no harm. */
export const queues = [
  "mail",
  "appointment",
  "password-reset",
  "appointment-sweep",
  "settlement",
  "settlement-sweep",
  "table-sweep",
  "offer-sweep",
  "deadline-sweep",
  "news-digest",
  "history",
  "record-roots",
  "evidence",
  "evidence-sweep",
] as const;
export type QueueName = (typeof queues)[number];

/** How a queue is worked in one process. */
export type Working = {
  /** Jobs done at the same time. */
  readonly atOnce: number;
  /** Fetches that go on beside each other, so that one slow batch does not hold up the rest. */
  readonly fetchers: number;
  /** Seconds between looks for what nobody announces: a time that has come, another try, a dead worker's job. */
  readonly lookEvery: number;
};

export const workings: Readonly<Record<QueueName, Working>> = {
  mail: { atOnce: 10, fetchers: 4, lookEvery: 2 },
  appointment: { atOnce: 4, fetchers: 2, lookEvery: 0.5 },
  "password-reset": { atOnce: 4, fetchers: 1, lookEvery: 2 },
  "appointment-sweep": { atOnce: 1, fetchers: 1, lookEvery: 2 },
  settlement: { atOnce: 2, fetchers: 1, lookEvery: 2 },
  "settlement-sweep": { atOnce: 1, fetchers: 1, lookEvery: 2 },
  "table-sweep": { atOnce: 1, fetchers: 1, lookEvery: 60 },
  "offer-sweep": { atOnce: 1, fetchers: 1, lookEvery: 30 },
  "deadline-sweep": { atOnce: 1, fetchers: 1, lookEvery: 30 },
  "news-digest": { atOnce: 1, fetchers: 1, lookEvery: 60 },
  history: { atOnce: 1, fetchers: 1, lookEvery: 60 },
  "record-roots": { atOnce: 1, fetchers: 1, lookEvery: 60 },
  // Two: while the process for pictures, which opens one at a time, makes one, the one before it is kept.
  evidence: { atOnce: 2, fetchers: 1, lookEvery: 2 },
  "evidence-sweep": { atOnce: 1, fetchers: 1, lookEvery: 60 },
};

/** What is put in line by the clock, once for however many services there are, as cron says it. */
const schedules: readonly { readonly queue: QueueName; readonly cron: string }[] = [
  { queue: "appointment-sweep", cron: "* * * * *" },
  { queue: "settlement-sweep", cron: "* * * * *" },
  { queue: "offer-sweep", cron: "* * * * *" },
  { queue: "deadline-sweep", cron: "*/5 * * * *" },
  // Seven o'clock comes at every quarter of an hour somewhere.
  { queue: "news-digest", cron: "*/15 * * * *" },
  { queue: "table-sweep", cron: "17 * * * *" },
  { queue: "history", cron: "41 3 * * *" },
  { queue: "record-roots", cron: "7 4 * * *" },
  { queue: "evidence-sweep", cron: "29 * * * *" },
];

/**
 * A worker says every few seconds that it lives. One that has not for twenty is taken for dead; somebody looks for the dead every
 * ten, the job waits its five to ten seconds like after any failure, and is picked up again: within a minute of the kill. What
 * fails is tried for about four days, at first after seconds and at last every hour, as mail is (RFC 5321, 4.5.4.1).
 */
const settings = {
  heartbeatSeconds: 20,
  retryLimit: 110,
  retryDelay: 5,
  retryBackoff: true,
  retryDelayMax: 3_600,
  deleteAfterSeconds: 86_400,
  notify: true,
};
/** Seconds between two looks for dead workers. */
export const lookForDeadEvery = 10;

/** Lays out the tables of the job library, every queue and every schedule: part of migrating, never of serving. */
export async function migrateJobs(databaseUrl: string): Promise<void> {
  const boss = new PgBoss({ connectionString: databaseUrl, max: 1, supervise: false, schedule: false });
  await boss.start();
  try {
    for (const name of queues) {
      await boss.createQueue(name, settings);
      // A queue that was there stays as it was laid out then, unless it is told.
      await boss.updateQueue(name, settings);
    }
    for (const { queue, cron } of schedules) await boss.schedule(queue, cron, { id: queue });
  } finally {
    await boss.stop({ graceful: false });
  }
}
