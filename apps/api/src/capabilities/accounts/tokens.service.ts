import { Injectable } from "@nestjs/common";
import type { TokenCreated, TokenRequest } from "@evenhand/shared/http/accounts";
import type { PageQuery } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { keepOpenWithin, oneAtATime } from "../../platform/database/bounds.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { pageStatement, readCursor, readPage } from "../../platform/database/page.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { tokenItem } from "./accounts.queries.ts";

const year = 366 * 24 * 60 * 60_000;

/** Tokens of one account that work at once. Common practice, no source. */
const mostTokens = 50;

async function keepTokensWithin(tx: Transaction, account: string, now: Date): Promise<void> {
  await oneAtATime(tx, "tokens", account);
  keepOpenWithin(
    await tx.apiToken.count({ where: { accountId: account, revokedAt: null, expiresAt: { gt: now } } }),
    mostTokens,
    `${mostTokens} tokens of this account work, as many as may at once. Revoke those that no program uses.`,
  );
}

/** Tokens for programs: scoped, expiring, shown once. */
@Injectable()
export class TokensService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  async create(actor: Actor, { name, scopes, expires }: TokenRequest): Promise<TokenCreated> {
    const now = this.clock.now();
    const ahead = new Date(expires).getTime() - now.getTime();
    if (ahead <= 0 || ahead > year)
      throw new ProblemError("expiry-too-far", "A token ends at most a year from now, and not before.", {
        problems: [{ at: "/expires", reason: "from now to a year ahead" }],
      });
    const [id, token] = [this.ids.next(), newSecret()];
    await this.database.transaction(async (tx) => {
      await keepTokensWithin(tx, actor.account, now);
      await tx.apiToken.create({
        data: {
          id,
          accountId: actor.account,
          name,
          tokenHash: hashSecret(token),
          scopes: [...new Set(scopes)],
          createdAt: now,
          expiresAt: new Date(expires),
        },
      });
    });
    return { id, token };
  }

  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    const rows = `SELECT * FROM api_token WHERE account_id = $1 AND revoked_at IS NULL
      AND id < $2 ORDER BY id DESC LIMIT $3 + 1`;
    return readPage(this.database, {
      name: "token-list",
      text: pageStatement(rows, tokenItem, "$3"),
      values: [actor.account, readCursor(query), query.limit],
    });
  }

  async revoke(actor: Actor, token: string): Promise<void> {
    const { count } = await this.database.transaction((tx) =>
      tx.apiToken.updateMany({
        where: { id: token, accountId: actor.account, revokedAt: null },
        data: { revokedAt: this.clock.now() },
      }),
    );
    if (count === 0) throw notFound("token");
  }
}
