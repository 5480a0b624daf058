import { Inject, Injectable } from "@nestjs/common";
import type { PageQuery } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import { Actors } from "../../platform/auth/actors.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { oneAtATime } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { pageStatement, readCursor, readPage } from "../../platform/database/page.ts";
import { IdRow, readRows, sql } from "../../platform/database/rows.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { notFound } from "../../platform/problems/problem-error.ts";
import { sessionItem } from "./accounts.queries.ts";
import { describeDevice } from "./device.ts";

const day = 24 * 60 * 60_000;

/** Sessions of one account that go on at once. Common practice, no source. */
const mostSessions = 50;

/** Nobody is kept from signing in: what is more than may go on ends with those that were seen longest ago. */
async function endLongestUnseen(tx: Transaction, account: string, now: Date): Promise<{ id: string }[]> {
  await oneAtATime(tx, "sessions", account);
  return readRows(
    tx,
    IdRow,
    sql`
    UPDATE session SET revoked_at = ${now} WHERE id IN (
      SELECT id FROM session WHERE account_id = ${account}::uuid AND revoked_at IS NULL AND expires_at > ${now}
      ORDER BY last_seen_at DESC, id DESC OFFSET ${mostSessions}
    ) RETURNING id::text`,
  );
}

@Injectable()
export class SessionsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly actors: Actors,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  /** Begins a session; what is answered goes into the cookie and is stored nowhere. */
  async begin(account: string, userAgent: string | undefined): Promise<string> {
    const secret = newSecret();
    const now = this.clock.now();
    const ended = await this.database.transaction(async (tx) => {
      await tx.session.create({
        data: {
          id: this.ids.next(),
          accountId: account,
          tokenHash: hashSecret(secret),
          device: describeDevice(userAgent),
          createdAt: now,
          lastSeenAt: now,
          expiresAt: new Date(now.getTime() + this.config.session.days * day),
        },
      });
      return endLongestUnseen(tx, account, now);
    });
    for (const { id } of ended) this.actors.forget(id);
    return secret;
  }

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    const rows = `SELECT * FROM session WHERE account_id = $1 AND revoked_at IS NULL AND expires_at > $5
      AND id < $2 ORDER BY id DESC LIMIT $3 + 1`;
    const current = "session" in actor.by ? actor.by.session : null;
    return readPage(this.database, {
      name: "session-list",
      text: pageStatement(rows, sessionItem, "$3"),
      values: [actor.account, readCursor(query), query.limit, current, this.clock.now()],
    });
  }

  /** Signs the person out everywhere, here too. */
  async endAll(actor: Actor): Promise<void> {
    await this.database.transaction((tx) => this.endAllOf(tx, actor.account, null));
    this.forget(actor.account);
  }

  /** @param kept the one session that goes on, if any */
  async endAllOf(tx: Transaction, account: string, kept: string | null): Promise<void> {
    await tx.session.updateMany({
      where: { accountId: account, revokedAt: null, ...(kept === null ? {} : { id: { not: kept } }) },
      data: { revokedAt: this.clock.now() },
    });
  }

  /** After the transaction that ended sessions: what was found of them is not gone by again. */
  forget(account: string): void {
    this.actors.forgetAccount(account);
  }

  async end(actor: Actor): Promise<void> {
    if ("session" in actor.by) await this.revoke(actor, actor.by.session);
  }

  async revoke(actor: Actor, session: string): Promise<void> {
    const { count } = await this.database.transaction((tx) =>
      tx.session.updateMany({
        where: { id: session, accountId: actor.account, revokedAt: null },
        data: { revokedAt: this.clock.now() },
      }),
    );
    this.actors.forget(session);
    if (count === 0) throw notFound("session");
  }
}
