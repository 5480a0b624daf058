import { Module } from "@nestjs/common";
import { FirmHandbooksService } from "./firm-handbooks.service.ts";
import { HandbookController } from "./handbook.controller.ts";

@Module({
  controllers: [HandbookController],
  providers: [FirmHandbooksService],
  exports: [FirmHandbooksService],
})
export class HandbookModule {}
