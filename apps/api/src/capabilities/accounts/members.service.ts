import { Injectable } from "@nestjs/common";
import type { MemberChange, MemberRole } from "@evenhand/shared/http/accounts";
import type { Actor } from "../../platform/auth/actor.ts";
import { Actors } from "../../platform/auth/actors.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { run, sql } from "../../platform/database/rows.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { CalendarsService } from "../calendars/index.ts";

/** Who belongs to an organization: roles, and leaving it. An organization that has members keeps an administrator among them. */
@Injectable()
export class MembersService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly actors: Actors,
    private readonly calendars: CalendarsService,
  ) {}

  /** @throws ProblemError `last-administrator` */
  async change(actor: Actor, organization: string, account: string, { role }: MemberChange): Promise<void> {
    if (!actor.isAdmin(organization)) throw notFound("member");
    await this.database.transaction(async (tx) => {
      const before = await lockMember(tx, organization, account);
      if (before === role) return;
      if (role === "member") await this.letGo(tx, organization, account, before);
      await tx.membership.update({
        where: { accountId_organizationId: { accountId: account, organizationId: organization } },
        data: { role },
      });
    });
    this.actors.forgetAccount(account);
  }

  /** An administrator removes somebody, or somebody leaves. Their work stays the organization's. */
  async remove(actor: Actor, organization: string, account: string): Promise<void> {
    const isOwn = account === actor.account && actor.organizations().includes(organization);
    if (!isOwn && !actor.isAdmin(organization)) throw notFound("member");
    await this.database.transaction((tx) => this.leave(tx, organization, account));
    this.actors.forgetAccount(account);
  }

  /** Ends a membership with all that hangs on it: invitations sent, and hours that buyers could book. */
  async leave(tx: Transaction, organization: string, account: string): Promise<void> {
    const role = await lockMember(tx, organization, account);
    await this.letGo(tx, organization, account, role);
    await this.calendars.stopFor(tx, organization, account);
    await tx.membership.delete({
      where: { accountId_organizationId: { accountId: account, organizationId: organization } },
    });
  }

  /** What an administrator who is one no longer may not go on doing through others. */
  private async letGo(
    tx: Transaction,
    organization: string,
    account: string,
    role: MemberRole,
  ): Promise<void> {
    if (role !== "admin") return;
    await keepAnAdministrator(tx, organization, account);
    await tx.invitation.updateMany({
      where: { organizationId: organization, invitedBy: account, acceptedAt: null, revokedAt: null },
      data: { revokedAt: this.clock.now() },
    });
  }
}

/** Two who lower or remove each other wait here, so that the second sees what the first has done. */
async function lockMember(tx: Transaction, organization: string, account: string): Promise<MemberRole> {
  await run(tx, sql`SELECT id FROM organization WHERE id = ${organization}::uuid FOR NO KEY UPDATE`);
  const member = await tx.membership.findFirst({
    where: { accountId: account, organizationId: organization },
    select: { role: true },
  });
  return found(member, "member").role;
}

async function keepAnAdministrator(tx: Transaction, organization: string, leaving: string): Promise<void> {
  const others = await tx.membership.count({
    where: { organizationId: organization, role: "admin", accountId: { not: leaving } },
  });
  if (others > 0) return;
  const { name } = await tx.organization.findUniqueOrThrow({
    where: { id: organization },
    select: { name: true },
  });
  throw new ProblemError(
    "last-administrator",
    `${name} would have no administrator left. Make another member an administrator first.`,
    { members: { organization } },
  );
}
