import { Injectable } from "@nestjs/common";
import type { OrganizationRequest } from "@evenhand/shared/http/organizations";
import type { Created, PageQuery } from "@evenhand/shared/http/paging";
import type { Actor } from "../../platform/auth/actor.ts";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { Ids } from "../../platform/database/ids.ts";
import type { JsonText } from "../../platform/http/json-text.ts";
import { found } from "../../platform/problems/problem-error.ts";
import { inspectorsPage, membersPage, organizationsPage } from "./organizations.queries.ts";
import { readCursor, readPage } from "../../platform/database/page.ts";
import { findRow, IdRow } from "../../platform/database/rows.ts";
import type { Transaction } from "../../platform/database/database.ts";

@Injectable()
export class OrganizationsService {
  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
    private readonly ids: Ids,
  ) {}

  async create(tx: Transaction, _actor: Actor, request: OrganizationRequest): Promise<Created> {
    return this.admit(tx, request);
  }

  /** Makes an organization: the operator's to do, or the loader's of a demo. */
  async admit(tx: Transaction, { name, kind, place, zone }: OrganizationRequest): Promise<Created> {
    const id = this.ids.next();
    await tx.organization.create({
      data: { id, name, kind, place: place ?? null, zone, createdAt: this.clock.now() },
    });
    return { id };
  }

  /** One's own; the operator's list holds all. */
  async list(actor: Actor, query: PageQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "organization-list",
      text: organizationsPage,
      values: [actor.organizations(), actor.isOperator, readCursor(query), query.limit],
    });
  }

  async members(actor: Actor, organization: string, query: PageQuery): Promise<JsonText> {
    const there = await findRow(this.database, IdRow, {
      text: "SELECT id FROM organization WHERE id = $2 AND (id = ANY($1::uuid[]) OR $3)",
      values: [actor.organizations(), organization, actor.isOperator],
    });
    found(there, "organization");
    return readPage(this.database, {
      name: "member-list",
      text: membersPage,
      values: [organization, readCursor(query), query.limit],
    });
  }

  async inspectors(_actor: Actor, query: PageQuery): Promise<JsonText> {
    return readPage(this.database, {
      name: "inspector-list",
      text: inspectorsPage,
      values: [readCursor(query), query.limit],
    });
  }
}
