import { Body, Controller, Query, UseFilters } from "@nestjs/common";
import {
  AppointmentQuery,
  BookingAcceptance,
  BookingCancellation,
  BookingConfirmation,
  BookingRefusal,
  BookingRequest,
  BriefAnswer,
  BriefProposal,
  HoldRequest,
  Nothing,
  Rescheduling,
  RoadClearance,
} from "@evenhand/shared/http/booking";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { AppointmentMovesService } from "./appointment-moves.service.ts";
import { AppointmentsService } from "./appointments.service.ts";
import { BriefChangesService } from "./brief-changes.service.ts";
import { HoldsService } from "./holds.service.ts";
import { HourTakenFilter } from "./hour-taken.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
@UseFilters(HourTakenFilter)
export class AppointmentsController {
  constructor(
    private readonly appointments: AppointmentsService,
    private readonly holds: HoldsService,
    private readonly moves: AppointmentMovesService,
    private readonly briefs: BriefChangesService,
  ) {}

  @Route("appointments.hold")
  hold(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: HoldRequest }) body: HoldRequest,
  ) {
    return this.holds.hold(tx, actor, body);
  }

  @Route("appointments.list")
  list(@By() actor: Actor, @Query({ schema: AppointmentQuery }) query: AppointmentQuery) {
    return this.appointments.list(actor, query);
  }

  @Route("appointments.counts")
  counts() {
    return this.appointments.counts();
  }

  @Route("appointments.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.appointments.get(actor, id);
  }

  @Route("appointments.request")
  request(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BookingRequest }) body: BookingRequest,
  ) {
    return this.moves.request(tx, { actor, id, meant }, body);
  }

  @Route("appointments.accept")
  accept(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BookingAcceptance }) body: BookingAcceptance,
  ) {
    return this.moves.accept(tx, { actor, id, meant }, body);
  }

  @Route("appointments.decline")
  decline(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BookingRefusal }) body: BookingRefusal,
  ) {
    return this.moves.decline(tx, { actor, id, meant }, body);
  }

  @Route("appointments.confirm")
  confirm(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BookingConfirmation }) body: BookingConfirmation,
  ) {
    return this.moves.confirm(tx, { actor, id, meant }, body);
  }

  @Route("appointments.reschedule")
  reschedule(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: Rescheduling }) body: Rescheduling,
  ) {
    return this.moves.reschedule(tx, { actor, id, meant }, body);
  }

  @Route("appointments.cancel")
  cancel(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BookingCancellation }) body: BookingCancellation,
  ) {
    return this.moves.cancel(tx, { actor, id, meant }, body);
  }

  @Route("appointments.start")
  start(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: Nothing }) _body: object,
  ) {
    return this.moves.start(tx, { actor, id, meant });
  }

  @Route("appointments.takeToRoad")
  takeToRoad(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: RoadClearance }) body: RoadClearance,
  ) {
    return this.moves.takeToRoad(tx, { actor, id, meant }, body);
  }

  @Route("appointments.miss")
  miss(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: Nothing }) _body: object,
  ) {
    return this.moves.miss(tx, { actor, id, meant });
  }

  @Route("appointments.report")
  report(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: Nothing }) _body: object,
  ) {
    return this.moves.report(tx, { actor, id, meant });
  }

  @Route("appointments.proposeBrief")
  proposeBrief(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BriefProposal }) body: BriefProposal,
  ) {
    return this.briefs.propose(tx, actor, id, meant, body);
  }

  @Route("appointments.answerBrief")
  answerBrief(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() meant: number,
    @Body({ schema: BriefAnswer }) body: BriefAnswer,
  ) {
    return this.briefs.answer(tx, actor, id, meant, body);
  }
}
