import { Body, Controller, Query } from "@nestjs/common";
import { ReleaseQuery, ReleaseRequest, SettlementRequest } from "@evenhand/shared/http/releases";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { ReleasesService } from "./releases.service.ts";
import { SettlementService } from "./settlement.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class ReleasesController {
  constructor(
    private readonly releases: ReleasesService,
    private readonly settlement: SettlementService,
  ) {}

  @Route("releases.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() comparison: string,
    @Body({ schema: ReleaseRequest }) body: ReleaseRequest,
  ) {
    return this.releases.create(tx, actor, comparison, body);
  }

  @Route("releases.list")
  list(@By() actor: Actor, @Query({ schema: ReleaseQuery }) query: ReleaseQuery) {
    return this.releases.list(actor, query);
  }

  @Route("releases.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.releases.get(actor, id);
  }

  @Route("releases.move")
  move(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: SettlementRequest }) body: SettlementRequest,
  ) {
    return this.settlement.move(tx, actor, body);
  }
}
