import { Body, Controller, Query } from "@nestjs/common";
import { CarPlaceRequest, SiteChange, SiteRequest } from "@evenhand/shared/http/sites";
import { PageQuery } from "@evenhand/shared/http/paging";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { SitesService } from "./sites.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class SitesController {
  constructor(private readonly sites: SitesService) {}

  @Route("sites.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: SiteRequest }) body: SiteRequest,
  ) {
    return this.sites.create(tx, actor, body);
  }

  @Route("sites.list")
  list(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.sites.list(actor, query);
  }

  @Route("sites.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.sites.get(actor, id);
  }

  @Route("sites.change")
  change(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: SiteChange }) body: SiteChange,
  ) {
    return this.sites.change(actor, id, revision, body);
  }

  @Route("carPlace.get")
  placeOf(@By() actor: Actor, @Id() vehicle: string) {
    return this.sites.placeOf(actor, vehicle);
  }

  @Route("carPlace.put")
  putPlace(
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: CarPlaceRequest }) body: CarPlaceRequest,
  ) {
    return this.sites.putPlace(actor, vehicle, body);
  }
}
