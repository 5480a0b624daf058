import { Body, Controller, Query } from "@nestjs/common";
import {
  ComplaintOpening,
  ComplaintQuery,
  ComplaintReply,
  ComplaintRequest,
} from "@evenhand/shared/http/complaints";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { ComplaintsService } from "./complaints.service.ts";
import type { Transaction } from "../../platform/database/database.ts";
import { InTransaction } from "../../platform/http/in-transaction.ts";

@Controller()
export class ComplaintsController {
  constructor(private readonly complaints: ComplaintsService) {}

  @Route("complaints.create")
  create(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Body({ schema: ComplaintRequest }) body: ComplaintRequest,
  ) {
    return this.complaints.create(tx, actor, body);
  }

  @Route("complaints.list")
  list(@By() actor: Actor, @Query({ schema: ComplaintQuery }) query: ComplaintQuery) {
    return this.complaints.list(actor, query);
  }

  @Route("complaints.counts")
  counts() {
    return this.complaints.counts();
  }

  @Route("complaints.get")
  get(@By() actor: Actor, @Id() id: string) {
    return this.complaints.get(actor, id);
  }

  @Route("complaints.open")
  open(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @Body({ schema: ComplaintOpening }) body: ComplaintOpening,
  ) {
    return this.complaints.open(tx, actor, id, body);
  }

  @Route("complaints.answer")
  answer(
    @InTransaction() tx: Transaction,
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: ComplaintReply }) body: ComplaintReply,
  ) {
    return this.complaints.answer(tx, actor, id, revision, body);
  }
}
