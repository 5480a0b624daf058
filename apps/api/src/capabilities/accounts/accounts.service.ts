import { Injectable } from "@nestjs/common";
import type { MemberRole } from "@evenhand/shared/http/accounts";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashPassword, passwordMatches } from "../../platform/auth/password.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { BodyRow, findRow } from "../../platform/database/rows.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { found, ProblemError } from "../../platform/problems/problem-error.ts";
import { accountJson } from "./accounts.queries.ts";
import { Throttle } from "./throttle.ts";

const HashOfAddress = z.object({ email: z.string(), password_hash: z.string() });

const HashOfAccount = z.object({ id: z.string(), password_hash: z.string() });

/** Addresses are compared without regard to case. */
export const normalEmail = (email: string): string => email.trim().toLowerCase();

export type HashedAccount = {
  name: string;
  email: string;
  passwordHash: string;
  /** On whose clock gathered news comes in the morning. */
  zone?: string | undefined;
};
export type NewAccount = { name: string; email: string; password: string };

@Injectable()
export class AccountsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly throttle: Throttle,
  ) {}

  /**
   * Whose address and password these are. An unknown address gets the same answer after the same work.
   *
   * The attempt is counted before anything is looked at.
   *
   * @throws ProblemError `sign-in-refused`, `too-many-attempts`, `too-crowded`
   */
  async authenticate(given: { email: string; password: string; address: string }): Promise<string> {
    const attempt = { email: normalEmail(given.email), address: given.address };
    await this.throttle.admit(attempt);
    const row = await findRow(this.database, HashOfAccount, {
      text: "SELECT id, password_hash FROM account WHERE email = $1 AND closed_at IS NULL",
      values: [attempt.email],
    });
    if (!(await passwordMatches(row?.password_hash ?? null, given.password)) || row === null)
      throw new ProblemError("sign-in-refused", "Address and password do not go together. Check both.");
    await this.throttle.succeeded(attempt);
    return row.id;
  }

  /**
   * The person at the keyboard is who signed in. Counted and slowed as signing in is.
   *
   * @throws ProblemError `invalid-fields` naming the field, `too-many-attempts`
   */
  async confirm(
    account: string,
    password: string,
    { address, at }: { address: string; at: string },
  ): Promise<void> {
    const row = await findRow(this.database, HashOfAddress, {
      text: "SELECT email, password_hash FROM account WHERE id = $1 AND closed_at IS NULL",
      values: [account],
    });
    const { email, password_hash: stored } = found(row, "account");
    await this.throttle.admit({ email, address });
    if (!(await passwordMatches(stored, password)))
      throw new ProblemError("invalid-fields", "This is not your password. Nothing was changed.", {
        problems: [{ at, reason: "the password you sign in with" }],
      });
    await this.throttle.succeeded({ email, address });
  }

  async get(actor: Actor): Promise<JsonText> {
    return this.describe(actor.account);
  }

  async describe(account: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      name: "account",
      text: `SELECT ${accountJson}::text AS body FROM account WHERE account.id = $1`,
      values: [account],
    });
    return new JsonText(found(row, "account").body);
  }

  async findByEmail(tx: Transaction, email: string): Promise<{ id: string } | null> {
    return tx.account.findUnique({ where: { email: normalEmail(email) }, select: { id: true } });
  }

  /** Makes an account; the caller has made sure that the address is the person's. */
  async register(tx: Transaction, { name, email, password }: NewAccount): Promise<string> {
    return this.registerHashed(tx, { name, email, passwordHash: await hashPassword(password) });
  }

  /** For whoever has a transaction open: hashing takes a while, and is done before it. */
  async registerHashed(tx: Transaction, account: HashedAccount): Promise<string> {
    const { name, email, passwordHash, zone } = account;
    const id = this.ids.next();
    await tx.account.create({
      data: {
        id,
        name,
        email: normalEmail(email),
        passwordHash,
        newsZone: zone,
        createdAt: this.clock.now(),
      },
    });
    return id;
  }

  /** Makes the account a member; one that is a member already only changes role. */
  async join(tx: Transaction, account: string, organization: string, role: MemberRole): Promise<void> {
    await tx.membership.upsert({
      where: { accountId_organizationId: { accountId: account, organizationId: organization } },
      create: { accountId: account, organizationId: organization, role, createdAt: this.clock.now() },
      update: { role },
    });
  }
}
