import { Body, Controller, Query } from "@nestjs/common";
import { OrderAcceptance, OrderEnding, OrderQuery, OrderRequest } from "@evenhand/shared/http/orders";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { OrdersService } from "./orders.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class OrdersController {
  constructor(private readonly orders: OrdersService) {}

  @Route("orders.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() vehicle: string,
    @Body({ schema: OrderRequest }) body: OrderRequest,
  ) {
    return this.orders.create(tx, actor, vehicle, body);
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
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OrderAcceptance }) body: OrderAcceptance,
  ) {
    return this.orders.accept(tx, actor, id, revision, body);
  }

  @Route("orders.decline")
  decline(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OrderEnding }) body: OrderEnding,
  ) {
    return this.orders.decline(tx, actor, id, revision, body);
  }

  @Route("orders.cancel")
  cancel(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: OrderEnding }) body: OrderEnding,
  ) {
    return this.orders.cancel(tx, actor, id, revision, body);
  }
}
