import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { AccountsController } from "./accounts.controller.ts";
import { AccountsService } from "./accounts.service.ts";
import { InvitationsService } from "./invitations.service.ts";
import { SessionsService } from "./sessions.service.ts";
import { Throttle } from "./throttle.ts";
import { TokensService } from "./tokens.service.ts";

@Module({
  imports: [MailModule],
  controllers: [AccountsController],
  providers: [AccountsService, SessionsService, InvitationsService, TokensService, Throttle],
  exports: [AccountsService, InvitationsService],
})
export class AccountsModule {}
