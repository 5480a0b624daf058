import { Body, Controller, Query, Req } from "@nestjs/common";
import { PageQuery } from "@evenhand/shared/http/paging";
import { PublishRequest, ShareLinkRequest, WithdrawRequest } from "@evenhand/shared/http/publishing";
import type { FastifyRequest } from "fastify";
import { By, Id, IfMatch, Secret } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { PublishingService } from "./publishing.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class PublishingController {
  constructor(private readonly publishing: PublishingService) {}

  @Route("listing.get")
  get(@By() actor: Actor, @Id() vehicle: string) {
    return this.publishing.get(actor, vehicle);
  }

  @Route("listing.publish")
  publish(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() vehicle: string,
    @IfMatch() revision: number,
    @Body({ schema: PublishRequest }) _body: object,
  ) {
    return this.publishing.publish(tx, actor, vehicle, revision);
  }

  @Route("listing.withdraw")
  withdraw(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() vehicle: string,
    @IfMatch() revision: number,
    @Body({ schema: WithdrawRequest }) body: WithdrawRequest,
  ) {
    return this.publishing.withdraw(tx, actor, vehicle, revision, body);
  }

  @Route("shareLinks.create")
  share(
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: ShareLinkRequest }) body: ShareLinkRequest,
  ) {
    return this.publishing.share(actor, vehicle, body);
  }

  @Route("shareLinks.list")
  links(@By() actor: Actor, @Id() vehicle: string, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.publishing.links(actor, vehicle, query);
  }

  @Route("shareLinks.revoke")
  revoke(@By() actor: Actor, @Id() id: string) {
    return this.publishing.revoke(actor, id);
  }

  @Route("sharedStatements.get")
  shared(@Req() request: FastifyRequest, @Secret() secret: string) {
    return this.publishing.shared(request, secret);
  }

  @Route("sharedStatements.small")
  small(@Req() request: FastifyRequest, @Secret() secret: string, @Id() id: string) {
    return this.publishing.sharedPicture(request, secret, id, "small");
  }

  @Route("sharedStatements.large")
  large(@Req() request: FastifyRequest, @Secret() secret: string, @Id() id: string) {
    return this.publishing.sharedPicture(request, secret, id, "large");
  }
}
