export { BookingJobs } from "./booking-jobs.ts";
export { BookingModule } from "./booking.module.ts";
export { ReportedVisits } from "./reported-visits.service.ts";
