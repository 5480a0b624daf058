import { Injectable, Logger, type OnModuleInit } from "@nestjs/common";
import { z } from "zod";
import { Clock } from "../clock/index.ts";
import { Database, type Transaction } from "../database/database.ts";
import { Ids } from "../database/ids.ts";
import { exists, findRow, run } from "../database/rows.ts";
import { Jobs } from "../jobs/jobs.ts";
import { Mailer, type Message } from "./mailer.ts";
import { whileHeld } from "./while-held.ts";

const Claimed = z.object({
  /** Until when it is claimed, which is whose the claim is. */
  until: z.date(),
  recipient: z.string(),
  subject: z.string(),
  body: z.string(),
  calendar: z.string().nullable(),
  method: z.enum(["REQUEST", "CANCEL"]).nullable(),
});
type Claimed = z.infer<typeof Claimed>;

type Claim = { readonly id: string; until: Date };

/** A claim holds this long, and is renewed while its letter is being sent: who was killed in between holds it no longer than this. */
const claimMs = 30_000;
const renewEveryMs = 8_000;

/**
 * Letters are written in the transaction that causes them. Each is then claimed, sent outside any transaction, and marked: however
 * slow the mail server is, nobody else sends the letter meanwhile, and no connection or lock is held.
 */
@Injectable()
export class Outbox implements OnModuleInit {
  private readonly logger = new Logger("outbox");

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
    const { calendar: text, method, until, ...letter } = claimed;
    const calendar = text === null || method === null ? null : { method, text };
    const claim = { id, until };
    try {
      await this.whileClaimed(claim, (signal) => this.mailer.send({ id, ...letter, calendar }, signal));
    } catch (error) {
      await this.release(claim);
      throw error;
    }
    await this.markSent(id);
  }

  /** A renewal that fails is said, and tried at the next turn; what may be another's by now is not sent any further. */
  private whileClaimed(claim: Claim, work: (signal: AbortSignal) => Promise<void>): Promise<void> {
    const onTrouble = (error: unknown): void =>
      this.logger.warn(`the claim of letter ${claim.id} could not be renewed: ${String(error)}`);
    const renew = () => this.renew(claim);
    return whileHeld({ renew, lasts: claimMs, renewEvery: renewEveryMs, onTrouble }, work);
  }

  private async claim(id: string): Promise<Claimed | "sent" | "being-sent"> {
    const now = this.clock.now();
    const claimed = await findRow(this.database, Claimed, {
      text: `UPDATE mail SET claimed_until = $2, attempts = attempts + 1
             WHERE id = $1 AND state = 'waiting' AND (claimed_until IS NULL OR claimed_until <= $3)
             RETURNING claimed_until AS until, recipient, subject, body, calendar, method`,
      values: [id, new Date(now.getTime() + claimMs), now],
    });
    if (claimed !== null) return claimed;
    const waiting = await exists(this.database, {
      text: "SELECT 1 FROM mail WHERE id = $1 AND state = 'waiting'",
      values: [id],
    });
    return waiting ? "being-sent" : "sent";
  }

  private async renew(claim: Claim): Promise<boolean> {
    const next = new Date(this.clock.now().getTime() + claimMs);
    const renewed = await exists(this.database, {
      text: `UPDATE mail SET claimed_until = $3 WHERE id = $1 AND state = 'waiting' AND claimed_until = $2
             RETURNING id`,
      values: [claim.id, claim.until, next],
    });
    if (!renewed) return false;
    claim.until = next;
    return true;
  }

  /** Nobody holds it any more; where another does by now, that stays. */
  private async release({ id, until }: Claim): Promise<void> {
    await run(this.database, {
      text: "UPDATE mail SET claimed_until = NULL WHERE id = $1 AND state = 'waiting' AND claimed_until = $2",
      values: [id, until],
    });
  }

  /** What is out is forgotten but for the fact. */
  private async markSent(id: string): Promise<void> {
    await run(this.database, {
      text: `UPDATE mail SET state = 'sent', sent_at = $2, claimed_until = NULL, body = NULL, calendar = NULL
             WHERE id = $1`,
      values: [id, this.clock.now()],
    });
  }
}
