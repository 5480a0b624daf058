import { Injectable } from "@nestjs/common";
import type { AccountClosure } from "@evenhand/shared/http/accounts";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { readRows } from "../../platform/database/rows.ts";
import { RecordChain } from "../../platform/record/record-chain.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";
import { AccountsService } from "./accounts.service.ts";
import { MembersService } from "./members.service.ts";
import { SessionsService } from "./sessions.service.ts";

const Membership = z.object({
  organization: z.string(),
  name: z.string(),
  isAlone: z.boolean(),
  isOperator: z.boolean(),
  open: z.array(z.string()),
});
type Membership = z.infer<typeof Membership>;

/** What would be left without anybody, were the only member of an organization to go. `$1` account. */
const membershipsOf = `SELECT o.id AS organization, o.name, o.kind = 'operator' AS "isOperator",
    NOT EXISTS (SELECT 1 FROM membership other WHERE other.organization_id = o.id AND other.account_id <> $1::uuid) AS "isAlone",
    ARRAY(
      SELECT 'visits' WHERE EXISTS (SELECT 1 FROM appointment a WHERE o.id IN (a.firm_id, a.buyer_id, a.dealer_id)
        AND a.state IN ('held', 'requested', 'accepted', 'confirmed', 'under-way'))
      UNION ALL SELECT 'orders' WHERE EXISTS (SELECT 1 FROM inspection_order i WHERE o.id IN (i.buyer_id, i.inspector_id)
        AND i.state IN ('ordered', 'accepted'))
      UNION ALL SELECT 'listed cars' WHERE EXISTS (SELECT 1 FROM vehicle v WHERE v.organization_id = o.id AND v.listed)
    ) AS open
  FROM membership m JOIN organization o ON o.id = m.organization_id WHERE m.account_id = $1::uuid ORDER BY o.id`;

/**
 * The end of an account: name, address and password go, the id stays, since sealed documents name people by it. Refused while
 * somebody still counts on the person alone.
 */
@Injectable()
export class ClosureService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly accounts: AccountsService,
    private readonly members: MembersService,
    private readonly sessions: SessionsService,
    private readonly record: RecordChain,
  ) {}

  /** @throws ProblemError `invalid-fields` (another password), `last-administrator`, `account-in-use` */
  async close(actor: Actor, { password }: AccountClosure, address: string): Promise<void> {
    await this.accounts.confirm(actor.account, password, { address, at: "/password" });
    await this.database.transaction(async (tx) => {
      const { account } = actor;
      const memberships = await readRows(tx, Membership, { text: membershipsOf, values: [account] });
      for (const membership of memberships) await this.endMembership(tx, account, membership);
      await this.sessions.endAllOf(tx, account, null);
      await tx.apiToken.deleteMany({ where: { accountId: account } });
      await tx.notice.deleteMany({ where: { accountId: account } });
      await tx.passwordReset.deleteMany({ where: { accountId: account } });
      await this.record.forgetName(tx, account);
      await tx.account.update({
        where: { id: account },
        data: {
          name: "A closed account",
          email: `closed-${account}@invalid`,
          passwordHash: "",
          newsZone: null,
          closedAt: this.clock.now(),
        },
      });
    });
    this.sessions.forget(actor.account);
  }

  /** Who is alone and has nothing open leaves an organization without members; the operator's never is one. */
  private async endMembership(tx: Transaction, account: string, membership: Membership): Promise<void> {
    const { organization, name, isAlone, isOperator, open } = membership;
    if (!isAlone || isOperator) return this.members.leave(tx, organization, account);
    if (open.length > 0)
      throw new ProblemError(
        "account-in-use",
        `You are the only member of ${name}, which has open ${open.join(" and ")}. End them first, or make somebody else an administrator.`,
        { members: { organization, open } },
      );
    await tx.membership.delete({
      where: { accountId_organizationId: { accountId: account, organizationId: organization } },
    });
  }
}
