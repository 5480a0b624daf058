import { Body, Controller, Query } from "@nestjs/common";
import { DealerFirst } from "@evenhand/shared/http/cases";
import { PageQuery } from "@evenhand/shared/http/paging";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { CasesService } from "./cases.service.ts";

@Controller()
export class CasesController {
  constructor(private readonly cases: CasesService) {}

  @Route("cases.list")
  home(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.cases.home(actor, query);
  }

  @Route("cases.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.cases.get(actor, id);
  }

  @Route("cases.evidence")
  evidence(@By() actor: Actor, @Id() id: string) {
    return this.cases.evidence(actor, id);
  }

  @Route("cases.letDealerFirst")
  letDealerFirst(@By() actor: Actor, @Id() id: string, @Body({ schema: DealerFirst }) body: DealerFirst) {
    return this.cases.letDealerFirst(actor, id, body);
  }

  @Route("cases.ofPart")
  ofPart(@By() actor: Actor, @Id() id: string) {
    return this.cases.ofPart(actor, id);
  }
}
