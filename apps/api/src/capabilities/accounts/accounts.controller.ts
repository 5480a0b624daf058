import { Body, Controller, Inject, Ip, Query, Req, Res, UseGuards } from "@nestjs/common";
import {
  AcceptanceRequest,
  InvitationRequest,
  SignInRequest,
  TokenRequest,
} from "@evenhand/shared/http/accounts";
import { PageQuery } from "@evenhand/shared/http/paging";
import type { FastifyReply, FastifyRequest } from "fastify";
import { By, Id, Secret } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { clearSessionCookie, setSessionCookie } from "../../platform/auth/cookie.ts";
import { CONFIG, type Config } from "../../platform/config/index.ts";
import { JsonText } from "../../platform/http/json-text.ts";
import { AccountsService } from "./accounts.service.ts";
import { InvitationsService } from "./invitations.service.ts";
import { LocalGuard } from "./local.guard.ts";
import { SessionsService } from "./sessions.service.ts";
import { TokensService } from "./tokens.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class AccountsController {
  constructor(
    private readonly accounts: AccountsService,
    private readonly sessions: SessionsService,
    private readonly invitations: InvitationsService,
    private readonly tokens: TokensService,
    @Inject(CONFIG) private readonly config: Config,
  ) {}

  @Route("sessions.create")
  @UseGuards(LocalGuard)
  async signIn(
    @Body({ schema: SignInRequest }) _body: SignInRequest,
    @Req() request: FastifyRequest & { user: string },
    @Res({ passthrough: true }) reply: FastifyReply,
  ) {
    const secret = await this.sessions.begin(request.user, request.headers["user-agent"]);
    setSessionCookie(reply, this.config, secret);
    const account = await this.accounts.describe(request.user);
    return new JsonText(`{"account":${String(account.text)}}`);
  }

  @Route("sessions.end")
  async signOut(@By() actor: Actor, @Res({ passthrough: true }) reply: FastifyReply) {
    clearSessionCookie(reply, this.config);
    await this.sessions.end(actor);
  }

  @Route("sessions.list")
  listSessions(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.sessions.list(actor, query);
  }

  @Route("sessions.revoke")
  revokeSession(@By() actor: Actor, @Id() id: string) {
    return this.sessions.revoke(actor, id);
  }

  @Route("account.get")
  get(@By() actor: Actor) {
    return this.accounts.get(actor);
  }

  @Route("invitations.create")
  invite(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: InvitationRequest }) body: InvitationRequest,
  ) {
    return this.invitations.create(tx, actor, body);
  }

  @Route("invitations.get")
  getInvitation(@Secret() secret: string) {
    return this.invitations.get(secret);
  }

  @Route("invitations.accept")
  accept(
    @Secret() secret: string,
    @Body({ schema: AcceptanceRequest }) body: AcceptanceRequest,
    @Ip() address: string,
  ) {
    return this.invitations.accept(secret, body, address);
  }

  @Route("tokens.create")
  createToken(@By() actor: Actor, @Body({ schema: TokenRequest }) body: TokenRequest) {
    return this.tokens.create(actor, body);
  }

  @Route("tokens.list")
  listTokens(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.tokens.list(actor, query);
  }

  @Route("tokens.revoke")
  revokeToken(@By() actor: Actor, @Id() id: string) {
    return this.tokens.revoke(actor, id);
  }
}
