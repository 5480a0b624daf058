import { Body, Controller, Query } from "@nestjs/common";
import { AdmissionDecision, AdmissionQuery } from "@evenhand/shared/http/admissions";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { AdmissionsService } from "./admissions.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class AdmissionsController {
  constructor(private readonly admissions: AdmissionsService) {}

  @Route("admissions.list")
  list(@By() actor: Actor, @Query({ schema: AdmissionQuery }) query: AdmissionQuery) {
    return this.admissions.list(actor, query);
  }

  @Route("admissions.decide")
  decide(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: AdmissionDecision }) body: AdmissionDecision,
  ) {
    return this.admissions.decide(tx, actor, id, revision, body);
  }
}
