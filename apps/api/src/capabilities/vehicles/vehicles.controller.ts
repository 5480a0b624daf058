import { Body, Controller, Query } from "@nestjs/common";
import { VehicleChange, VehicleQuery, VehicleRequest } from "@evenhand/shared/http/vehicles";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { VehiclesService } from "./vehicles.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class VehiclesController {
  constructor(private readonly vehicles: VehiclesService) {}

  @Route("vehicles.list")
  list(@By() actor: Actor, @Query({ schema: VehicleQuery }) query: VehicleQuery) {
    return this.vehicles.list(actor, query);
  }

  @Route("vehicles.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: VehicleRequest }) body: VehicleRequest,
  ) {
    return this.vehicles.create(tx, actor, body);
  }

  @Route("vehicles.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.vehicles.get(actor, id);
  }

  @Route("vehicles.change")
  change(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: VehicleChange }) body: VehicleChange,
  ) {
    return this.vehicles.change(actor, id, revision, body);
  }
}
