import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { type Reminder, remindersOf } from "@evenhand/case/deadline-notice";
import { DeadlineStep, Silence } from "@evenhand/shared/http/cases";
import { z } from "zod";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { readRows, type Source } from "../../platform/database/rows.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { NoticesService } from "../notices/index.ts";
import { owedStatements } from "./owed.queries.ts";
import { stepPaths } from "./step-paths.ts";

const OwedRow = z.object({
  subject: z.string(),
  step: DeadlineStep,
  silence: Silence,
  organization: z.string(),
  about: z.string(),
  vehicle: z.string(),
  begun: z.date().transform((at) => at.getTime()),
  deadline: z.date().transform((at) => at.getTime()),
  zone: z.string(),
});
type Owed = z.output<typeof OwedRow>;

/** Tells whoever owes an answer that its deadline nears: once each, in the application and by mail. */
@Injectable()
export class DeadlinesService implements OnModuleInit {
  private readonly logger = new Logger("deadlines");

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly jobs: Jobs,
    private readonly notices: NoticesService,
  ) {}

  onModuleInit(): void {
    this.jobs.register("deadline-sweep", async () => void (await this.sweep()));
  }

  /**
   * One that cannot be told is said, and keeps no other from being told.
   *
   * @returns how many reminders were written
   */
  async sweep(): Promise<number> {
    const now = this.clock.now();
    let told = 0;
    for (const { seen, locked } of owedStatements) {
      const near = remindersOf(await owedNow(this.database, seen, now, null), now.getTime());
      for (const reminder of near) told += await this.tellSafely(locked, reminder, now);
    }
    return told;
  }

  private async tellSafely(locked: string, reminder: Reminder<Owed>, now: Date): Promise<number> {
    const subjects = reminder.map(({ subject }) => subject);
    try {
      return await this.database.transaction((tx) => this.tell(tx, locked, subjects, now));
    } catch (error) {
      this.logger.error(`the deadline of ${subjects.join(", ")} could not be told: ${String(error)}`);
      return 0;
    }
  }

  /** Looked at again under the lock: what was answered meanwhile is told nobody, and what another told is not told twice. */
  private async tell(tx: Transaction, locked: string, subjects: string[], now: Date): Promise<number> {
    let told = 0;
    for (const reminder of remindersOf(await owedNow(tx, locked, now, subjects), now.getTime())) {
      const [first, ...more] = await this.untold(tx, reminder, now);
      if (first === undefined) continue;
      const { organization, vehicle, step, silence, deadline, zone, about } = first;
      const due = { step, silence, zone, due: deadline, count: more.length + 1 };
      const path = stepPaths[step](about);
      await this.notices.remind(tx, { organization, subject: about, vehicle, due, path });
      told += 1;
    }
    return told;
  }

  /** Those of the reminder that this is the first to tell, noted as told. */
  private async untold(tx: Transaction, reminder: Reminder<Owed>, now: Date): Promise<Owed[]> {
    const noted = await tx.deadlineNotice.createManyAndReturn({
      data: reminder
        .toSorted((a, b) => (a.subject < b.subject ? -1 : 1))
        .map(({ organization, subject, step, deadline }) => ({
          organizationId: organization,
          subject,
          step,
          deadline: new Date(deadline),
          toldAt: now,
        })),
      skipDuplicates: true,
      select: { subject: true },
    });
    const own = new Set(noted.map(({ subject }) => subject));
    return reminder.filter(({ subject }) => own.has(subject));
  }
}

const owedNow = (source: Source, text: string, now: Date, only: string[] | null): Promise<Owed[]> =>
  readRows(source, OwedRow, { text, values: [now, only] });
