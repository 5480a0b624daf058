import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { AdmissionsModule } from "../admissions/index.ts";
import { CalendarsModule } from "../calendars/index.ts";
import { CasesModule } from "../cases/index.ts";
import { NoticesModule } from "../notices/index.ts";
import { OrdersModule } from "../orders/index.ts";
import { PaymentsModule } from "../payments/index.ts";
import { AppointmentEffects } from "./appointment-effects.ts";
import { AppointmentMovesService } from "./appointment-moves.service.ts";
import { AppointmentsController } from "./appointments.controller.ts";
import { AppointmentsService } from "./appointments.service.ts";
import { BookingJobs } from "./booking-jobs.ts";
import { BriefChangesService } from "./brief-changes.service.ts";
import { CalendarViewsController } from "./calendar-views.controller.ts";
import { DaysService } from "./days.service.ts";
import { FeedsService } from "./feeds.service.ts";
import { FreshOffers } from "./fresh-offers.ts";
import { HoldsService } from "./holds.service.ts";
import { HourCheck } from "./hour-check.ts";
import { VisitInvitations } from "./invitations.service.ts";
import { MovesService } from "./moves.service.ts";
import { OfferSearch } from "./offer-search.ts";
import { OffersController } from "./offers.controller.ts";
import { OffersService } from "./offers.service.ts";
import { ReportedVisits } from "./reported-visits.service.ts";
import { RunOutHolds } from "./run-out-holds.ts";
import { TermsService } from "./terms.service.ts";

@Module({
  imports: [
    MailModule,
    AdmissionsModule,
    CalendarsModule,
    CasesModule,
    NoticesModule,
    OrdersModule,
    PaymentsModule,
  ],
  controllers: [OffersController, AppointmentsController, CalendarViewsController],
  providers: [
    OfferSearch,
    OffersService,
    FreshOffers,
    TermsService,
    RunOutHolds,
    HourCheck,
    HoldsService,
    MovesService,
    AppointmentMovesService,
    AppointmentEffects,
    AppointmentsService,
    BriefChangesService,
    VisitInvitations,
    BookingJobs,
    ReportedVisits,
    DaysService,
    FeedsService,
  ],
  exports: [BookingJobs, ReportedVisits, AppointmentMovesService, HoldsService, OffersService, TermsService],
})
export class BookingModule {}
