import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { ComplaintsController } from "./complaints.controller.ts";
import { ComplaintsService } from "./complaints.service.ts";

@Module({
  imports: [MailModule],
  controllers: [ComplaintsController],
  providers: [ComplaintsService],
  exports: [ComplaintsService],
})
export class ComplaintsModule {}
