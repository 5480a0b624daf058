import { Body, Controller, Query } from "@nestjs/common";
import { ComparisonQuery, ComparisonRequest } from "@evenhand/shared/http/comparisons";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { ComparisonsService } from "./comparisons.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class ComparisonsController {
  constructor(private readonly comparisons: ComparisonsService) {}

  @Route("comparisons.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: ComparisonRequest }) body: ComparisonRequest,
  ) {
    return this.comparisons.create(tx, actor, vehicle, body);
  }

  @Route("comparisons.list")
  list(@By() actor: Actor, @Query({ schema: ComparisonQuery }) query: ComparisonQuery) {
    return this.comparisons.list(actor, query);
  }

  @Route("comparisons.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.comparisons.get(actor, id);
  }

  @Route("comparisons.document")
  document(@By() actor: Actor, @Id() id: string) {
    return this.comparisons.document(actor, id);
  }

  @Route("comparisons.answer")
  answer(@By() actor: Actor, @Id() id: string) {
    return this.comparisons.answer(actor, id);
  }
}
