export { AppointmentMovesService } from "./appointment-moves.service.ts";
export { BookingJobs } from "./booking-jobs.ts";
export { BookingModule } from "./booking.module.ts";
export { HoldsService } from "./holds.service.ts";
export { HourTaken } from "./hour-taken.ts";
export { OffersService } from "./offers.service.ts";
export { ReportedVisits } from "./reported-visits.service.ts";
export { TermsService } from "./terms.service.ts";
