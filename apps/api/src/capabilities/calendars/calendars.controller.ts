import { Body, Controller, Query } from "@nestjs/common";
import {
  CalendarChange,
  CalendarRequest,
  DealingRequest,
  HoursTrial,
  InterestEnd,
  InterestRequest,
} from "@evenhand/shared/http/calendars";
import { PageQuery } from "@evenhand/shared/http/paging";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { CalendarsService } from "./calendars.service.ts";
import { InterestsService } from "./interests.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class CalendarsController {
  constructor(
    private readonly calendars: CalendarsService,
    private readonly interests: InterestsService,
  ) {}

  @Route("calendars.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: CalendarRequest }) body: CalendarRequest,
  ) {
    return this.calendars.create(tx, actor, body);
  }

  @Route("calendars.list")
  list(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.calendars.list(actor, query);
  }

  @Route("calendars.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.calendars.get(actor, id);
  }

  @Route("calendars.change")
  change(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: CalendarChange }) body: CalendarChange,
  ) {
    return this.calendars.change(actor, id, revision, body);
  }

  @Route("calendars.layOut")
  layOut(@Body({ schema: HoursTrial }) body: HoursTrial) {
    return this.calendars.layOut(body);
  }

  @Route("interests.declare")
  declare(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() calendar: string,
    @Body({ schema: InterestRequest }) body: InterestRequest,
  ) {
    return this.interests.declare(tx, actor, calendar, body);
  }

  @Route("interests.end")
  end(@By() actor: Actor, @Id() id: string, @Body({ schema: InterestEnd }) body: InterestEnd) {
    return this.interests.end(actor, id, body);
  }

  @Route("dealings.declare")
  declareDealing(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() calendar: string,
    @Body({ schema: DealingRequest }) body: DealingRequest,
  ) {
    return this.interests.declareDealing(tx, actor, calendar, body);
  }
}
