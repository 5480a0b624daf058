import { Module } from "@nestjs/common";
import { FirmInstrumentsService } from "./firm-instruments.service.ts";
import { InstrumentsController } from "./instruments.controller.ts";

@Module({
  controllers: [InstrumentsController],
  providers: [FirmInstrumentsService],
  exports: [FirmInstrumentsService],
})
export class InstrumentsModule {}
