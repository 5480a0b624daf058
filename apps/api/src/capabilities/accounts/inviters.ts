import { mayBelong, type OrganizationKind } from "@evenhand/shared/access";
import type { InvitationRequest } from "@evenhand/shared/http/accounts";
import { z } from "zod";
import type { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { findRow, run, sql } from "../../platform/database/rows.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";

type Invited = InvitationRequest & { readonly kind: OrganizationKind };

const kindsOf = async (tx: Transaction, account: string): Promise<OrganizationKind[]> => {
  const rows = await tx.membership.findMany({
    where: { accountId: account },
    select: { organization: { select: { kind: true } } },
  });
  return rows.map(({ organization }) => organization.kind);
};

const apart = (at: string) =>
  new ProblemError(
    "not-permitted",
    "Whoever runs the service belongs to no dealer, inspector or buyer in it. Nobody joined; use another account.",
    at === "" ? {} : { problems: [{ at, reason: "somebody who does not run the service" }] },
  );

/** Nobody belongs to it, and nothing that somebody else could read was ever done in it. `o`: the organization. */
const isNew = `NOT EXISTS (SELECT 1 FROM membership m WHERE m.organization_id = o.id)
  AND NOT EXISTS (SELECT 1 FROM vehicle v WHERE v.organization_id = o.id)
  AND NOT EXISTS (SELECT 1 FROM report r WHERE r.organization_id = o.id)
  AND NOT EXISTS (SELECT 1 FROM inspection_order i WHERE o.id IN (i.buyer_id, i.inspector_id))
  AND NOT EXISTS (SELECT 1 FROM appointment a WHERE o.id IN (a.buyer_id, a.firm_id, a.dealer_id))`;

const NewRow = z.object({ isNew: z.boolean() });
const HoldsRow = z.object({ holds: z.boolean() });

/**
 * Whoever runs the service invites the first person into a firm that is new, to administer it, and never one of their own. From
 * then on the firm's administrators invite: by an address of one's own one could read everything that is the firm's.
 *
 * @throws ProblemError `not-permitted`, `invalid-fields`
 */
export async function checkInviter(tx: Transaction, actor: Actor, invited: Invited): Promise<void> {
  const { email, organization, kind, role } = invited;
  if (!actor.isOperator || actor.isAdmin(organization)) return;
  const firm = await findRow(tx, NewRow, {
    text: `SELECT ${isNew} AS "isNew" FROM organization o WHERE o.id = $1::uuid`,
    values: [organization],
  });
  if (firm?.isNew !== true)
    throw new ProblemError(
      "not-permitted",
      "People are invited into this organization by its own administrators. Whoever runs the service invites the first person into one that is new.",
      { problems: [{ at: "/organization", reason: "one that has no members and no work of its own yet" }] },
    );
  if (role !== "admin")
    throw new ProblemError("invalid-fields", "The first person of an organization administers it.", {
      problems: [{ at: "/role", reason: "admin" }],
    });
  const account = await tx.account.findUnique({ where: { email }, select: { id: true } });
  if (account !== null && !mayBelong(await kindsOf(tx, account.id), kind)) throw apart("/email");
}

/** An invitation by somebody of the organization holds; one by whoever runs the service only while the organization is new. */
export async function isStillInvited(
  tx: Transaction,
  invitedBy: string,
  organization: string,
): Promise<boolean> {
  // Of two who come first at once, the second sees that somebody has come.
  await run(tx, sql`SELECT id FROM organization WHERE id = ${organization}::uuid FOR NO KEY UPDATE`);
  const found = await findRow(tx, HoldsRow, {
    text: `SELECT o.kind = 'operator' OR (${isNew}) OR EXISTS (
       SELECT 1 FROM membership m WHERE m.organization_id = o.id AND m.account_id = $2::uuid
     ) AS holds FROM organization o WHERE o.id = $1::uuid`,
    values: [organization, invitedBy],
  });
  return found?.holds === true;
}

/** @throws ProblemError `not-permitted` where somebody would run the service and belong to a firm in it */
export async function checkApart(tx: Transaction, account: string, organization: string): Promise<void> {
  const { kind } = await tx.organization.findUniqueOrThrow({
    where: { id: organization },
    select: { kind: true },
  });
  if (!mayBelong(await kindsOf(tx, account), kind)) throw apart("");
}
