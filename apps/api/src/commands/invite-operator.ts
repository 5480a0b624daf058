import { createApp } from "../app.ts";
import { InvitationsService } from "../capabilities/accounts/index.ts";
import { OrganizationsService } from "../capabilities/organizations/index.ts";
import { Actor } from "../platform/auth/actor.ts";
import type { Config } from "../platform/config/index.ts";
import { SiteAddress } from "../platform/http/site-address.ts";
import { Database } from "../platform/database/database.ts";
import { findRow, IdRow } from "../platform/database/rows.ts";

/** Stands for whoever runs the machine: nobody has an account yet who could invite. */
const machine = "00000000-0000-7000-8000-000000000000";

/**
 * Invites the first operator of a new service, by mail like everybody else; the operator's organization is made where there is none.
 *
 * @param email the operator's address
 * @returns where the link in the letter leads
 */
export async function inviteOperator(config: Config, email: string): Promise<string> {
  const app = await createApp({ ...config, jobs: false });
  try {
    const database = app.get(Database);
    const there = await findRow(database, IdRow, {
      text: "SELECT id FROM organization WHERE kind = 'operator' ORDER BY id LIMIT 1",
    });
    const request = { name: "Operations", kind: "operator" as const, zone: "UTC" };
    const organizations = app.get(OrganizationsService, { strict: false });
    const invitations = app.get(InvitationsService, { strict: false });
    await database.transaction(async (tx) => {
      const { id } = there ?? (await organizations.admit(tx, request));
      const actor = new Actor(machine, [{ organization: id, kind: "operator", role: "admin" }], {
        session: machine,
      });
      await invitations.create(tx, actor, { email, organization: id, role: "admin" });
    });
    return app.get(SiteAddress).base;
  } finally {
    await app.close();
  }
}
