import { scopes } from "@evenhand/shared/access";
import { MemberRole } from "@evenhand/shared/http/accounts";
import { OrganizationKind } from "@evenhand/shared/http/organizations";
import { Injectable } from "@nestjs/common";
import { LRUCache } from "lru-cache";
import { z } from "zod";
import { Clock } from "../clock/index.ts";
import { Database } from "../database/database.ts";
import { findRow, run } from "../database/rows.ts";
import { Actor, type ActorMembership } from "./actor.ts";
import { hashSecret } from "./secret.ts";

const memberships = `coalesce((
  SELECT json_agg(json_build_object('organization', o.id, 'kind', o.kind, 'role', m.role))
  FROM membership m JOIN organization o ON o.id = m.organization_id WHERE m.account_id = found.account_id
), '[]') AS memberships`;

const Membership = z.object({
  organization: z.string(),
  kind: OrganizationKind,
  role: MemberRole,
}) satisfies z.ZodType<ActorMembership>;
const SessionRow = z.object({
  id: z.string(),
  account_id: z.string(),
  last_seen_at: z.date(),
  memberships: z.array(Membership),
});
const TokenRow = z.object({
  id: z.string(),
  account_id: z.string(),
  scopes: z.array(z.enum(scopes)),
  memberships: z.array(Membership),
});

const seenEvery = 5 * 60_000;
/** How long a reading request may go by what an earlier one found. Changes always look again. */
const briefly = 3_000;
/** Sessions remembered at once, the ones asked for longest ago forgotten first; and what they may take, about. */
const most = 10_000;
const maxBytes = 16 * 1024 * 1024;

/** Finds who a session or token belongs to. */
@Injectable()
export class Actors {
  private readonly recent = new LRUCache<string, { actor: Actor; until: number }>({
    max: most,
    maxSize: maxBytes,
    sizeCalculation: ({ actor }) => 400 + 200 * actor.memberships.length,
  });

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @param fresh look again even if another request just did: for everything that changes something */
  async findBySession(secret: string, fresh: boolean): Promise<Actor | null> {
    const now = this.clock.now();
    const known = this.recent.get(secret);
    if (!fresh && known !== undefined && known.until > now.getTime()) return known.actor;
    const row = await findRow(this.database, SessionRow, {
      name: "actor-by-session",
      text: `SELECT found.id, found.account_id, found.last_seen_at, ${memberships} FROM session found
             WHERE found.token_hash = $1 AND found.revoked_at IS NULL AND found.expires_at > $2`,
      values: [hashSecret(secret), now],
    });
    if (row === null) {
      this.recent.delete(secret);
      return null;
    }
    const actor = new Actor(row.account_id, row.memberships, { session: row.id });
    this.remember(secret, actor, now);
    if (now.getTime() - row.last_seen_at.getTime() > seenEvery) await this.noteSeen("session", row.id, now);
    return actor;
  }

  async findByToken(secret: string): Promise<Actor | null> {
    const now = this.clock.now();
    const row = await findRow(this.database, TokenRow, {
      name: "actor-by-token",
      text: `SELECT found.id, found.account_id, found.scopes, ${memberships} FROM api_token found
             WHERE found.token_hash = $1 AND found.revoked_at IS NULL AND found.expires_at > $2`,
      values: [hashSecret(secret), now],
    });
    if (row === null) return null;
    await this.noteSeen("api_token", row.id, now);
    return new Actor(row.account_id, row.memberships, { token: row.id, scopes: row.scopes });
  }

  /** A session that ended is not gone by again, not even briefly. */
  forget(session: string): void {
    for (const [secret, { actor }] of this.recent)
      if ("session" in actor.by && actor.by.session === session) this.recent.delete(secret);
  }

  /** What somebody may do has changed: it is looked up again for each of their sessions. */
  forgetAccount(account: string): void {
    for (const [secret, { actor }] of this.recent) if (actor.account === account) this.recent.delete(secret);
  }

  private remember(secret: string, actor: Actor, now: Date): void {
    this.recent.set(secret, { actor, until: now.getTime() + briefly });
  }

  private async noteSeen(table: "session" | "api_token", id: string, now: Date): Promise<void> {
    const column = table === "session" ? "last_seen_at" : "last_used_at";
    await run(this.database, {
      text: `UPDATE ${table} SET ${column} = $2 WHERE id = $1 AND (${column} IS NULL OR ${column} < $3)`,
      values: [id, now, new Date(now.getTime() - seenEvery)],
    });
  }
}
