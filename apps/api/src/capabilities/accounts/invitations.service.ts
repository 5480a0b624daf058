import { Inject, Injectable } from "@nestjs/common";
import type { AcceptanceRequest, InvitationRequest } from "@evenhand/shared/http/accounts";
import type { Created } from "@evenhand/shared/http/paging";
import { mailedLink } from "@evenhand/shared/mailed-pages";
import type { Actor } from "../../platform/auth/actor.ts";
import { hashSecret, newSecret } from "../../platform/auth/secret.ts";
import { Clock } from "../../platform/clock/index.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { Database, type Transaction } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import { SiteAddress } from "../../platform/http/site-address.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { Outbox } from "../../platform/mail/outbox.ts";
import { found, notFound, ProblemError } from "../../platform/problems/problem-error.ts";
import { AccountsService, normalEmail } from "./accounts.service.ts";
import { invitationJson } from "./accounts.queries.ts";

const day = 24 * 60 * 60_000;
const spent = () =>
  new ProblemError(
    "invitation-spent",
    "The invitation was used, has run out, or never was. Ask for a new one.",
  );

/** A link by mail that works once, and tells its holder whose organization it leads into. */
@Injectable()
export class InvitationsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
    private readonly accounts: AccountsService,
    private readonly outbox: Outbox,
    private readonly site: SiteAddress,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  async create(actor: Actor, { email, organization, role }: InvitationRequest): Promise<Created> {
    if (!actor.isOperator && !actor.isAdmin(organization)) throw notFound("organization");
    const [id, secret, now] = [this.ids.next(), newSecret(), this.clock.now()];
    await this.database.transaction(async (tx) => {
      const { name } = found(
        await tx.organization.findUnique({ where: { id: organization } }),
        "organization",
      );
      await tx.invitation.create({
        data: {
          id,
          organizationId: organization,
          email: normalEmail(email),
          role,
          tokenHash: hashSecret(secret),
          invitedBy: actor.account,
          createdAt: now,
          expiresAt: new Date(now.getTime() + this.config.invitation.days * day),
        },
      });
      await this.outbox.enqueue(tx, {
        recipient: normalEmail(email),
        subject: "An invitation",
        body: `You are invited to join ${name}.\n\n${mailedLink(this.site.base, "invitation", secret)}\n\nThe link works once, for ${this.config.invitation.days} days.\n`,
      });
    });
    return { id };
  }

  async get(secret: string): Promise<JsonText> {
    const row = await this.database.findRow<{ body: string }>({
      text: `SELECT ${invitationJson}::text AS body FROM invitation i JOIN organization o ON o.id = i.organization_id
             WHERE i.token_hash = $1 AND i.accepted_at IS NULL AND i.expires_at > $2`,
      values: [hashSecret(secret), this.clock.now()],
    });
    if (row === null) throw spent();
    return new JsonText(row.body);
  }

  /** An address that has an account already joins by its own password; a new one gets an account. */
  async accept(secret: string, given: AcceptanceRequest, address: string): Promise<Created> {
    return this.database.transaction(async (tx) => {
      const invitation = await this.claim(tx, secret);
      const known = await this.accounts.findByEmail(tx, invitation.email);
      const person = { email: invitation.email, name: given.name, password: given.password };
      const account =
        known === null
          ? await this.accounts.register(person)
          : await this.accounts.authenticate({ ...person, address });
      await this.accounts.join(account, invitation.organizationId, invitation.role);
      return { id: account };
    });
  }

  /** Marks it used; of two at once, one finds it used. */
  private async claim(tx: Transaction, secret: string) {
    const now = this.clock.now();
    const where = { tokenHash: hashSecret(secret), acceptedAt: null, expiresAt: { gt: now } };
    const [invitation] = await tx.invitation.updateManyAndReturn({ where, data: { acceptedAt: now } });
    if (invitation === undefined) throw spent();
    return invitation;
  }
}
