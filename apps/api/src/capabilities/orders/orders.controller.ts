import { Body, Controller, Query } from "@nestjs/common";
import { OrderAcceptance, OrderEnding, OrderQuery, OrderRequest } from "@evenhand/shared/http/orders";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { OrdersService } from "./orders.service.ts";

@Controller()
export class OrdersController {
  constructor(private readonly orders: OrdersService) {}

  @Route("orders.create")
  create(@By() actor: Actor, @Id() vehicle: string, @Body({ schema: OrderRequest }) body: OrderRequest) {
    return this.orders.create(actor, vehicle, body);
  }

  @Route("orders.list")
  list(@By() actor: Actor, @Query({ schema: OrderQuery }) query: OrderQuery) {
    return this.orders.list(actor, query);
  }

  @Route("orders.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.orders.get(actor, id);
  }

  @Route("orders.accept")
  accept(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OrderAcceptance }) body: OrderAcceptance,
  ) {
    return this.orders.accept(actor, id, revision, body);
  }

  @Route("orders.decline")
  decline(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OrderEnding }) body: OrderEnding,
  ) {
    return this.orders.decline(actor, id, revision, body);
  }

  @Route("orders.cancel")
  cancel(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OrderEnding }) body: OrderEnding,
  ) {
    return this.orders.cancel(actor, id, revision, body);
  }
}
