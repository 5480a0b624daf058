import { Body, Controller, Inject, Ip, Param, Query, Res } from "@nestjs/common";
import {
  AccountClosure,
  MemberChange,
  PasswordChange,
  PasswordResetRequest,
  PasswordResetUse,
} from "@evenhand/shared/http/accounts";
import { PageQuery } from "@evenhand/shared/http/paging";
import { ObjectId } from "@evenhand/shared/identifier";
import type { FastifyReply } from "fastify";
import { By, Id, Secret } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { clearSessionCookie } from "../../platform/auth/cookie.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { notFound } from "../../platform/problems/problem-error.ts";
import { ClosureService } from "./closure.service.ts";
import { InvitationsService } from "./invitations.service.ts";
import { MembersService } from "./members.service.ts";
import { PasswordsService } from "./passwords.service.ts";
import { SessionsService } from "./sessions.service.ts";

/** The account of a member in the path. What is no id names nobody. */
const memberIn = (text: string): string => {
  const parsed = ObjectId.safeParse(text);
  if (!parsed.success) throw notFound("member");
  return parsed.data.toLowerCase();
};

/** Getting back in, and staying out: passwords, ends of sessions, members, open invitations. */
@Controller()
export class EntryController {
  constructor(
    private readonly passwords: PasswordsService,
    private readonly members: MembersService,
    private readonly invitations: InvitationsService,
    private readonly sessions: SessionsService,
    private readonly closures: ClosureService,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Route("account.changePassword")
  changePassword(
    @By() actor: Actor,
    @Body({ schema: PasswordChange }) body: PasswordChange,
    @Ip() address: string,
  ) {
    return this.passwords.change(actor, body, address);
  }

  @Route("account.close")
  async close(
    @By() actor: Actor,
    @Body({ schema: AccountClosure }) body: AccountClosure,
    @Ip() address: string,
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    await this.closures.close(actor, body, address);
    clearSessionCookie(reply, this.config);
  }

  @Route("sessions.endAll")
  async endAll(@By() actor: Actor, @Res({ passthrough: true }) reply: FastifyReply) {
    await this.sessions.endAll(actor);
    clearSessionCookie(reply, this.config);
  }

  @Route("passwordResets.request")
  requestReset(@Body({ schema: PasswordResetRequest }) body: PasswordResetRequest, @Ip() address: string) {
    return this.passwords.request(body, address);
  }

  @Route("passwordResets.get")
  getReset(@Secret() secret: string) {
    return this.passwords.get(secret);
  }

  @Route("passwordResets.use")
  useReset(@Secret() secret: string, @Body({ schema: PasswordResetUse }) body: PasswordResetUse) {
    return this.passwords.use(secret, body);
  }

  @Route("invitations.list")
  listInvitations(@By() actor: Actor, @Id() id: string, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.invitations.list(actor, id, query);
  }

  @Route("invitations.revoke")
  revokeInvitation(@By() actor: Actor, @Id() id: string) {
    return this.invitations.revoke(actor, id);
  }

  @Route("members.change")
  changeMember(
    @By() actor: Actor,
    @Id() id: string,
    @Param("account") account: string,
    @Body({ schema: MemberChange }) body: MemberChange,
  ) {
    return this.members.change(actor, id, memberIn(account), body);
  }

  @Route("members.remove")
  removeMember(@By() actor: Actor, @Id() id: string, @Param("account") account: string) {
    return this.members.remove(actor, id, memberIn(account));
  }
}
