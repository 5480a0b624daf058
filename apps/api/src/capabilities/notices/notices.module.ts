import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { DigestService } from "./digest.service.ts";
import { NoticesController } from "./notices.controller.ts";
import { NoticesService } from "./notices.service.ts";

@Module({
  imports: [MailModule],
  controllers: [NoticesController],
  providers: [NoticesService, DigestService],
  exports: [NoticesService],
})
export class NoticesModule {}
