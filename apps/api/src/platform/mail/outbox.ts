import { Injectable, type OnModuleInit } from "@nestjs/common";
import { Clock } from "../clock/index.ts";
import { Database, type Transaction } from "../database/database.ts";
import { Ids } from "../database/ids.ts";
import { Jobs } from "../jobs/jobs.ts";
import { Mailer, type Message } from "./mailer.ts";

type Claimed = {
  recipient: string;
  subject: string;
  body: string;
  calendar: string | null;
  method: "REQUEST" | "CANCEL" | null;
};

/** A claim holds this long, and is renewed while its letter is being sent: who was killed in between holds it no longer than this. */
const claimMs = 60_000;
const renewEveryMs = 20_000;

/**
 * Letters are written in the transaction that causes them. Each is then claimed, sent outside any transaction, and marked: however
 * slow the mail server is, nobody else sends the letter meanwhile, and no connection or lock is held.
 */
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

  /**
   * Sends one that still waits. A failure leaves it waiting, and the job is tried again.
   *
   * @throws Error where the mail server refuses, or where another is sending it: that one may not come to its end
   */
  async deliver(id: string): Promise<void> {
    const claimed = await this.claim(id);
    if (claimed === "sent") return;
    if (claimed === "being-sent")
      throw new Error("The letter is being sent by another; looked at again later.");
    const { calendar: text, method, ...letter } = claimed;
    const calendar = text === null || method === null ? null : { method, text };
    const renewing = setInterval(() => {
      // A renewal that fails is tried at the next turn; at worst another sends the letter once more.
      this.hold(id).catch(() => {});
    }, renewEveryMs);
    try {
      await this.mailer.send({ id, ...letter, calendar });
    } catch (error) {
      await this.release(id);
      throw error;
    } finally {
      clearInterval(renewing);
    }
    await this.markSent(id);
  }

  private async claim(id: string): Promise<Claimed | "sent" | "being-sent"> {
    const now = this.clock.now();
    const [claimed] = await this.database.rows<Claimed>({
      text: `UPDATE mail SET claimed_until = $2, attempts = attempts + 1
             WHERE id = $1 AND state = 'waiting' AND (claimed_until IS NULL OR claimed_until <= $3)
             RETURNING recipient, subject, body, calendar, method`,
      values: [id, new Date(now.getTime() + claimMs), now],
    });
    if (claimed !== undefined) return claimed;
    const waiting = await this.database.findRow({
      text: "SELECT 1 FROM mail WHERE id = $1 AND state = 'waiting'",
      values: [id],
    });
    return waiting === null ? "sent" : "being-sent";
  }

  private async hold(id: string): Promise<void> {
    await this.database.rows({
      text: "UPDATE mail SET claimed_until = $2 WHERE id = $1 AND state = 'waiting'",
      values: [id, new Date(this.clock.now().getTime() + claimMs)],
    });
  }

  private async release(id: string): Promise<void> {
    await this.database.rows({
      text: "UPDATE mail SET claimed_until = NULL WHERE id = $1 AND state = 'waiting'",
      values: [id],
    });
  }

  /** What is out is forgotten but for the fact. */
  private async markSent(id: string): Promise<void> {
    await this.database.rows({
      text: `UPDATE mail SET state = 'sent', sent_at = $2, claimed_until = NULL, body = NULL, calendar = NULL
             WHERE id = $1`,
      values: [id, this.clock.now()],
    });
  }
}
