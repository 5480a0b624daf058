import { Injectable, type OnModuleInit } from "@nestjs/common";
import { letter } from "@evenhand/wording/letter";
import type { PasswordChange, PasswordResetRequest, PasswordResetUse } from "@evenhand/shared/http/accounts";
import { mailedLink } from "@evenhand/shared/mailed-pages";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashPassword } from "../../platform/auth/password.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { BodyRow, findRow, run, sql } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { AccountsService, normalEmail } from "./accounts.service.ts";
import { clientNetwork } from "../../platform/http/client-network.ts";
import { SessionsService } from "./sessions.service.ts";
import { Throttle, tooMany } from "./throttle.ts";

const hour = 60 * 60_000;
/** How long a mailed link for a new password holds. */
const holdsFor = hour;
/** Rows of what was asked for are kept this long after they have run out, and swept by the next letter. */
const keptFor = 24 * hour;

const spent = () =>
  new ProblemError("password-link-spent", "The link was used, has run out, or never was. Ask for a new one.");

/** A new password: by the old one, or by a link in a letter that works once. Either ends every other session and every token. */
@Injectable()
export class PasswordsService implements OnModuleInit {
  static readonly lettersAnHour = 3;
  static readonly requestsAnHour = 20;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly accounts: AccountsService,
    private readonly sessions: SessionsService,
    private readonly throttle: Throttle,
    private readonly jobs: Jobs,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
  ) {}

  onModuleInit(): void {
    this.jobs.register("password-reset", (id) => this.writeLetter(id));
  }

  /** @throws ProblemError `invalid-fields` where the current password is another, `too-many-attempts` */
  async change(actor: Actor, { current, next }: PasswordChange, address: string): Promise<void> {
    await this.accounts.confirm(actor.account, current, { address, at: "/current" });
    const passwordHash = await hashPassword(next);
    const kept = "session" in actor.by ? actor.by.session : null;
    await this.database.transaction((tx) => this.replace(tx, actor.account, passwordHash, kept));
    this.sessions.forget(actor.account);
  }

  /**
   * Asks for a letter. Nothing is looked up here, so that the answer and the time it takes tell nobody whether the address has an
   * account.
   *
   * @throws ProblemError `too-many-attempts` where one network asks too often
   */
  async request({ email: given }: PasswordResetRequest, address: string): Promise<void> {
    const [email, now] = [normalEmail(given), this.clock.now()];
    const mayAsk = await this.throttle.allows("reset-network", clientNetwork(address), {
      most: PasswordsService.requestsAnHour,
      within: hour,
    });
    const expiresAt = new Date(now.getTime() + holdsFor);
    if (!mayAsk) throw tooMany(expiresAt, now);
    const id = this.ids.next();
    await this.database.transaction(async (tx) => {
      await tx.passwordReset.create({ data: { id, email, createdAt: now, expiresAt } });
      await this.jobs.enqueue(tx, "password-reset", id);
    });
  }

  /** For whom the link is. Only who holds it may know. */
  async get(secret: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      text: `SELECT json_build_object('email', a.email, 'expiresAt', instant(r.expires_at))::text AS body
             FROM password_reset r JOIN account a ON a.id = r.account_id
             WHERE r.token_hash = $1 AND r.used_at IS NULL AND r.expires_at > $2`,
      values: [hashSecret(secret), this.clock.now()],
    });
    if (row === null) throw spent();
    return new JsonText(row.body);
  }

  /** @throws ProblemError `password-link-spent`; of two at once, one is told so */
  async use(secret: string, { password }: PasswordResetUse): Promise<void> {
    await this.get(secret);
    const passwordHash = await hashPassword(password);
    const now = this.clock.now();
    const account = await this.database.transaction(async (tx) => {
      const where = { tokenHash: hashSecret(secret), usedAt: null, expiresAt: { gt: now } };
      const [used] = await tx.passwordReset.updateManyAndReturn({ where, data: { usedAt: now } });
      if (used === undefined || used.accountId === null) throw spent();
      await this.replace(tx, used.accountId, passwordHash, null);
      return used.accountId;
    });
    this.sessions.forget(account);
  }

  /** Writes the letter, where the address has an account and has not had too many. Done again, it does nothing. */
  private async writeLetter(id: string): Promise<void> {
    const now = this.clock.now();
    await this.database.transaction(async (tx) => {
      await tx.passwordReset.deleteMany({ where: { expiresAt: { lt: new Date(now.getTime() - keptFor) } } });
      const asked = await tx.passwordReset.findFirst({
        where: { id, tokenHash: null, expiresAt: { gt: now } },
      });
      const account = asked === null ? null : await this.accounts.findByEmail(tx, asked.email);
      if (asked === null || account === null) return;
      // Jobs of one account are done beside each other: the next one counts when this letter is written.
      await run(tx, sql`SELECT id FROM account WHERE id = ${account.id}::uuid FOR UPDATE`);
      const letters = await tx.passwordReset.count({
        where: { accountId: account.id, createdAt: { gt: new Date(now.getTime() - hour) } },
      });
      if (letters >= PasswordsService.lettersAnHour) return;
      const secret = newSecret();
      const { count } = await tx.passwordReset.updateMany({
        where: { id, tokenHash: null },
        data: { accountId: account.id, tokenHash: hashSecret(secret) },
      });
      if (count === 0) return;
      const link = mailedLink(this.site.base, "newPassword", secret);
      await this.outbox.enqueue(tx, { recipient: asked.email, ...letter("new-password", { link }) });
    });
  }

  /** The new password, the end of every session but one, of every token and every open link, and a letter that says so. */
  private async replace(
    tx: Transaction,
    account: string,
    passwordHash: string,
    kept: string | null,
  ): Promise<void> {
    const { email } = found(
      await tx.account.findFirst({ where: { id: account, closedAt: null }, select: { email: true } }),
      "account",
    );
    const now = this.clock.now();
    await tx.account.update({ where: { id: account }, data: { passwordHash } });
    await tx.passwordReset.updateMany({
      where: { accountId: account, usedAt: null },
      data: { usedAt: now },
    });
    await this.sessions.endAllOf(tx, account, kept);
    await tx.apiToken.updateMany({
      where: { accountId: account, revokedAt: null },
      data: { revokedAt: now },
    });
    await this.outbox.enqueue(tx, {
      recipient: email,
      ...letter("password-changed", { address: this.site.base }),
    });
  }
}
