import { Body, Controller, Query } from "@nestjs/common";
import { OrganizationRequest } from "@evenhand/shared/http/organizations";
import { PageQuery } from "@evenhand/shared/http/paging";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { OrganizationsService } from "./organizations.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class OrganizationsController {
  constructor(private readonly organizations: OrganizationsService) {}

  @Route("organizations.list")
  list(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.organizations.list(actor, query);
  }

  @Route("organizations.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: OrganizationRequest }) body: OrganizationRequest,
  ) {
    return this.organizations.create(tx, actor, body);
  }

  @Route("organizations.members")
  members(@By() actor: Actor, @Id() id: string, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.organizations.members(actor, id, query);
  }

  @Route("inspectors.list")
  inspectors(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.organizations.inspectors(actor, query);
  }
}
