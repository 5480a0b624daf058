import { Inject, Injectable } from "@nestjs/common";
import { letter } from "@evenhand/wording/letter";
import type { AcceptanceRequest, InvitationRequest } from "@evenhand/shared/http/accounts";
import type { Created, PageQuery } from "@evenhand/shared/http/paging";
import { mailedLink } from "@evenhand/shared/mailed-pages";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashPassword } from "../../platform/auth/password.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { keepOpenWithin, oneAtATime } from "../../platform/database/bounds.ts";
import { Ids } from "../../platform/database/ids.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { BodyRow, exists, findRow } from "../../platform/database/rows.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { AccountsService, normalEmail } from "./accounts.service.ts";
import { invitationJson, openInvitations } from "./accounts.queries.ts";
import { checkApart, checkInviter, isStillInvited } from "./inviters.ts";

const AddressRow = z.object({ email: z.string() });

const day = 24 * 60 * 60_000;
const spent = () =>
  new ProblemError(
    "invitation-spent",
    "The invitation was used, has run out, or never was. Ask for a new one.",
  );

/** A link by mail that works once, and tells its holder whose organization it leads into. */
@Injectable()
export class InvitationsService {
  static readonly sentADay = 100;
  static readonly receivedADay = 10;
  static readonly mostOpen = 200;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly accounts: AccountsService,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async create(
    tx: Transaction,
    actor: Actor,
    { email, organization, role }: InvitationRequest,
  ): Promise<Created> {
    if (!actor.isOperator && !actor.isAdmin(organization)) throw notFound("organization");
    const [id, secret, now] = [this.ids.next(), newSecret(), this.clock.now()];
    const recipient = normalEmail(email);
    const { name, kind } = found(
      await tx.organization.findUnique({ where: { id: organization } }),
      "organization",
    );
    await this.keepWithinTheDay(tx, actor.account, recipient);
    await checkInviter(tx, actor, { email: recipient, organization, kind, role });
    await tx.invitation.updateMany({
      where: { organizationId: organization, email: recipient, acceptedAt: null, revokedAt: null },
      data: { revokedAt: now },
    });
    await this.keepOpenWithin(tx, organization, now);
    await tx.invitation.create({
      data: {
        id,
        organizationId: organization,
        email: recipient,
        role,
        tokenHash: hashSecret(secret),
        invitedBy: actor.account,
        createdAt: now,
        expiresAt: new Date(now.getTime() + this.config.invitation.days * day),
      },
    });
    const link = mailedLink(this.site.base, "invitation", secret);
    await this.outbox.enqueue(tx, {
      recipient,
      ...letter("invitation", { organization: name, link, days: this.config.invitation.days }),
    });
    return { id };
  }

  async get(secret: string): Promise<JsonText> {
    const row = await findRow(this.database, BodyRow, {
      text: `SELECT ${invitationJson}::text AS body FROM invitation i JOIN organization o ON o.id = i.organization_id
             WHERE i.token_hash = $1 AND i.accepted_at IS NULL AND i.revoked_at IS NULL AND i.expires_at > $2`,
      values: [hashSecret(secret), this.clock.now()],
    });
    if (row === null) throw spent();
    return new JsonText(row.body);
  }

  /** The organization's invitations that still hold. */
  async list(actor: Actor, organization: string, query: PageQuery): Promise<JsonText> {
    if (!actor.isOperator && !actor.isAdmin(organization)) throw notFound("organization");
    const there = await exists(this.database, {
      text: "SELECT 1 FROM organization WHERE id = $1",
      values: [organization],
    });
    if (!there) throw notFound("organization");
    return readPage(this.database, {
      name: "invitation-list",
      text: openInvitations,
      values: [organization, readCursor(query), query.limit, this.clock.now()],
    });
  }

  /** The link in the letter leads nowhere from here on. */
  async revoke(actor: Actor, id: string): Promise<void> {
    const mine = actor.memberships.filter(({ role }) => role === "admin").map(({ organization: own }) => own);
    const { count } = await this.database.transaction((tx) =>
      tx.invitation.updateMany({
        where: {
          id,
          acceptedAt: null,
          revokedAt: null,
          ...(actor.isOperator ? {} : { organizationId: { in: mine } }),
        },
        data: { revokedAt: this.clock.now() },
      }),
    );
    if (count === 0) throw notFound("invitation");
  }

  /**
   * An address that has an account already joins by its own password; a new one gets an account. The password is hashed before
   * the transaction, and only for who holds a link that works.
   */
  async accept(secret: string, given: AcceptanceRequest, address: string): Promise<Created> {
    const { email } = await this.find(secret);
    const known = await exists(this.database, {
      text: "SELECT 1 FROM account WHERE email = $1",
      values: [email],
    });
    const account = !known
      ? null
      : await this.accounts.authenticate({ email, password: given.password, address });
    const passwordHash = account === null ? await hashPassword(given.password) : "";
    return this.database.transaction(async (tx) => {
      const { organizationId, role, invitedBy } = await this.claim(tx, secret);
      if (!(await isStillInvited(tx, invitedBy, organizationId))) throw spent();
      if (account !== null) await checkApart(tx, account, organizationId);
      const { name, zone } = given;
      const id = account ?? (await this.accounts.registerHashed(tx, { email, name, passwordHash, zone }));
      await this.accounts.join(tx, id, organizationId, role);
      return { id };
    });
  }

  private async keepOpenWithin(tx: Transaction, organization: string, now: Date): Promise<void> {
    await oneAtATime(tx, "open invitations", organization);
    const open = { organizationId: organization, acceptedAt: null, revokedAt: null, expiresAt: { gt: now } };
    keepOpenWithin(
      await tx.invitation.count({ where: open }),
      InvitationsService.mostOpen,
      `${InvitationsService.mostOpen} invitations of this organization are open, as many as may be at once. Revoke those that are not needed.`,
    );
  }

  private async find(secret: string): Promise<{ email: string }> {
    const row = await findRow(this.database, AddressRow, {
      text: `SELECT email FROM invitation
             WHERE token_hash = $1 AND accepted_at IS NULL AND revoked_at IS NULL AND expires_at > $2`,
      values: [hashSecret(secret), this.clock.now()],
    });
    if (row === null) throw spent();
    return row;
  }

  /** Letters to strangers are bounded: by who sends them, and by who gets them. One who sends many at once waits here. */
  private async keepWithinTheDay(tx: Transaction, account: string, recipient: string): Promise<void> {
    await oneAtATime(tx, "invitations", account);
    const since = { gt: new Date(this.clock.now().getTime() - day) };
    const [sent, received] = [
      await tx.invitation.count({ where: { invitedBy: account, createdAt: since } }),
      await tx.invitation.count({ where: { email: recipient, createdAt: since } }),
    ];
    if (sent >= InvitationsService.sentADay)
      throw new ProblemError(
        "day-limit",
        `You have sent ${sent} invitations within a day, as many as may be. Send the next ones tomorrow.`,
        { headers: { "retry-after": "86400" } },
      );
    if (received >= InvitationsService.receivedADay)
      throw new ProblemError(
        "day-limit",
        "This address has had as many invitations within a day as may be. Ask the person to look for the last one.",
        {
          headers: { "retry-after": "86400" },
          problems: [{ at: "/email", reason: "another address, or tomorrow" }],
        },
      );
  }

  /** Marks it used; of two at once, one finds it used. */
  private async claim(tx: Transaction, secret: string) {
    const now = this.clock.now();
    const where = {
      tokenHash: hashSecret(secret),
      acceptedAt: null,
      revokedAt: null,
      expiresAt: { gt: now },
    };
    const [invitation] = await tx.invitation.updateManyAndReturn({ where, data: { acceptedAt: now } });
    if (invitation === undefined) throw spent();
    return invitation;
  }
}
