import { Body, Controller } from "@nestjs/common";
import {
  HandOverLinkRequest,
  HandOverNote,
  HandOverRequest,
  HandOverTerms,
} from "@evenhand/shared/http/hand-overs";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";
import { HandOversService } from "./hand-overs.service.ts";

@Controller()
export class HandOversController {
  constructor(private readonly handOvers: HandOversService) {}

  @Route("handOvers.arrange")
  arrange(@By() actor: Actor, @Id() id: string, @Body({ schema: HandOverRequest }) body: HandOverRequest) {
    return this.handOvers.arrange(actor, id, body);
  }

  @Route("handOvers.ofCase")
  ofCase(@By() actor: Actor, @Id() id: string) {
    return this.handOvers.ofCase(actor, id);
  }

  @Route("handOvers.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.handOvers.get(actor, id);
  }

  @Route("handOvers.renewLink")
  renewLink(
    @By() actor: Actor,
    @Id() id: string,
    @Body({ schema: HandOverLinkRequest }) body: HandOverLinkRequest,
  ) {
    return this.handOvers.renewLink(actor, id, body);
  }

  @Route("handOvers.setTerms")
  setTerms(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: HandOverTerms }) body: HandOverTerms,
  ) {
    return this.handOvers.setTerms(actor, id, revision, body);
  }

  @Route("handOvers.callOff")
  callOff(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: HandOverNote }) body: HandOverNote,
  ) {
    return this.handOvers.move(tx, actor, { id, revision, move: "call-off", ...body });
  }

  @Route("handOvers.signOff")
  signOff(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: HandOverNote }) body: HandOverNote,
  ) {
    return this.handOvers.move(tx, actor, { id, revision, move: "sign-off", ...body });
  }

  @Route("handOvers.openClaim")
  openClaim(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: HandOverNote }) body: HandOverNote,
  ) {
    return this.handOvers.move(tx, actor, { id, revision, move: "open-claim", ...body });
  }

  @Route("handOvers.closeClaim")
  closeClaim(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: HandOverNote }) body: HandOverNote,
  ) {
    return this.handOvers.move(tx, actor, { id, revision, move: "close-claim", ...body });
  }
}
