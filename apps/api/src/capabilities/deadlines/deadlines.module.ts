import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { NoticesModule } from "../notices/index.ts";
import { DeadlinesService } from "./deadlines.service.ts";

@Module({
  imports: [MailModule, NoticesModule],
  providers: [DeadlinesService],
  exports: [DeadlinesService],
})
export class DeadlinesModule {}
