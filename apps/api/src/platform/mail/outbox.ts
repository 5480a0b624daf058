import { Injectable, type OnModuleInit } from "@nestjs/common";
import { Clock } from "../clock/index.ts";
import { Database, type Transaction } from "../database/database.ts";
import { Ids } from "../database/ids.ts";
import { Jobs } from "../jobs/jobs.ts";
import { Mailer, type Message } from "./mailer.ts";

type Waiting = {
  recipient: string;
  subject: string;
  body: string;
  calendar: string | null;
  method: "REQUEST" | "CANCEL" | null;
};

/** Mail is written in the transaction that causes it, and sent afterwards, as often as it takes. */
@Injectable()
export class Outbox implements OnModuleInit {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly jobs: Jobs,
    private readonly mailer: Mailer,
  ) {}

  onModuleInit(): void {
    this.jobs.register("mail", (id) => this.deliver(id));
  }

  /** Never a secret or a finding in the subject. */
  async enqueue(
    tx: Transaction,
    { recipient, subject, body, calendar = null }: Omit<Message, "id">,
  ): Promise<void> {
    const id = this.ids.next();
    await tx.mail.create({
      data: {
        id,
        recipient,
        subject,
        body,
        calendar: calendar?.text ?? null,
        method: calendar?.method ?? null,
        state: "waiting",
        attempts: 0,
        createdAt: this.clock.now(),
      },
    });
    await this.jobs.enqueue(tx, "mail", id);
  }

  /** Sends one that still waits. A failure leaves it waiting, and the job is tried again. */
  async deliver(id: string): Promise<void> {
    await this.database.transaction(async (tx) => {
      const [mail] = await tx.$queryRaw<Waiting[]>`
        SELECT recipient, subject, body, calendar, method FROM mail WHERE id = ${id}::uuid AND state = 'waiting' FOR UPDATE`;
      if (mail === undefined) return;
      const { calendar: text, method, ...letter } = mail;
      const calendar = text === null || method === null ? null : { method, text };
      await this.mailer.send({ id, ...letter, calendar });
      await tx.mail.update({
        where: { id },
        data: {
          state: "sent",
          sentAt: this.clock.now(),
          attempts: { increment: 1 },
          body: null,
          calendar: null,
        },
      });
    });
  }
}
