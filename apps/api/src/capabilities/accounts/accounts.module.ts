import { Module } from "@nestjs/common";
import { MailModule } from "../../platform/mail/mail.module.ts";
import { CalendarsModule } from "../calendars/index.ts";
import { AccountsController } from "./accounts.controller.ts";
import { AccountsService } from "./accounts.service.ts";
import { ClosureService } from "./closure.service.ts";
import { EntryController } from "./entry.controller.ts";
import { InvitationsService } from "./invitations.service.ts";
import { MembersService } from "./members.service.ts";
import { PasswordsService } from "./passwords.service.ts";
import { SessionsService } from "./sessions.service.ts";
import { Throttle } from "./throttle.ts";
import { TokensService } from "./tokens.service.ts";

@Module({
  imports: [MailModule, CalendarsModule],
  controllers: [AccountsController, EntryController],
  providers: [
    AccountsService,
    SessionsService,
    InvitationsService,
    PasswordsService,
    MembersService,
    ClosureService,
    TokensService,
    Throttle,
  ],
  exports: [AccountsService, InvitationsService],
})
export class AccountsModule {}
