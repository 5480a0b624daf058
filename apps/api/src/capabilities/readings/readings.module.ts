import { Module } from "@nestjs/common";
import { ReportsModule } from "../reports/index.ts";
import { ReadingThread } from "./reading-thread.ts";
import { ReadingsController } from "./readings.controller.ts";
import { ReadingsService } from "./readings.service.ts";
import { SheetLinesService } from "./sheet-lines.service.ts";
import { TablesService } from "./tables.service.ts";

@Module({
  imports: [ReportsModule],
  controllers: [ReadingsController],
  providers: [ReadingThread, ReadingsService, SheetLinesService, TablesService],
})
export class ReadingsModule {}
