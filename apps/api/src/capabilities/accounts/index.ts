export { AccountsModule } from "./accounts.module.ts";
export { AccountsService } from "./accounts.service.ts";
export { InvitationsService } from "./invitations.service.ts";
