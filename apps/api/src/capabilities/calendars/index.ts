export { CalendarsModule } from "./calendars.module.ts";
export { CalendarsService, toStretch } from "./calendars.service.ts";
export { checkDates, checkDay, checkHours } from "./hours.ts";
export { InterestsService } from "./interests.service.ts";
export { HoursUnreadable, LaidOutHours, readableZone, zoneOfHours } from "./laid-out-hours.ts";
export { dateIn } from "./local-day.ts";
