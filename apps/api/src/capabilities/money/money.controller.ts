import { Body, Controller } from "@nestjs/common";
import { BeforeMoneyEntries } from "@evenhand/shared/before-money";
import { LandedCostEntries, TransportRates } from "@evenhand/shared/landed-cost";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { BeforeMoneyService } from "./before-money.service.ts";
import { LandedCostService } from "./landed-cost.service.ts";
import { LookFirstService } from "./look-first.service.ts";
import { TransportRatesService } from "./transport-rates.service.ts";

@Controller()
export class MoneyController {
  constructor(
    private readonly landedCosts: LandedCostService,
    private readonly transportRates: TransportRatesService,
    private readonly beforeMoney: BeforeMoneyService,
    private readonly looks: LookFirstService,
  ) {}

  @Route("lookFirst.get")
  getLookFirst(@By() actor: Actor, @Id() id: string) {
    return this.looks.get(actor, id);
  }

  @Route("landedCost.get")
  getLandedCost(@By() actor: Actor, @Id() id: string) {
    return this.landedCosts.get(actor, id);
  }

  @Route("landedCost.put")
  putLandedCost(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: LandedCostEntries }) body: LandedCostEntries,
  ) {
    return this.landedCosts.put(actor, id, revision, body);
  }

  @Route("landedCost.history")
  getLandedCostHistory(@By() actor: Actor, @Id() id: string) {
    return this.landedCosts.history(actor, id);
  }

  @Route("beforeMoney.get")
  getBeforeMoney(@By() actor: Actor, @Id() id: string) {
    return this.beforeMoney.get(actor, id);
  }

  @Route("beforeMoney.put")
  putBeforeMoney(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: BeforeMoneyEntries }) body: BeforeMoneyEntries,
  ) {
    return this.beforeMoney.put(actor, id, revision, body);
  }

  @Route("transportRates.get")
  getRates(@By() actor: Actor) {
    return this.transportRates.get(actor);
  }

  @Route("transportRates.put")
  putRates(
    @By() actor: Actor,
    @IfMatch() revision: number,
    @Body({ schema: TransportRates }) body: TransportRates,
  ) {
    return this.transportRates.put(actor, revision, body);
  }
}
