import { Module } from "@nestjs/common";
import { CalendarsController } from "./calendars.controller.ts";
import { CalendarsService } from "./calendars.service.ts";
import { InterestsService } from "./interests.service.ts";
import { LaidOutHours } from "./laid-out-hours.ts";

@Module({
  controllers: [CalendarsController],
  providers: [CalendarsService, InterestsService, LaidOutHours],
  exports: [CalendarsService, InterestsService, LaidOutHours],
})
export class CalendarsModule {}
