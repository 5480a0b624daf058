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

@Controller()
export class ComplaintsController {
  constructor(private readonly complaints: ComplaintsService) {}

  @Route("complaints.create")
  create(@By() actor: Actor, @Body({ schema: ComplaintRequest }) body: ComplaintRequest) {
    return this.complaints.create(actor, body);
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
  open(@By() actor: Actor, @Id() id: string, @Body({ schema: ComplaintOpening }) body: ComplaintOpening) {
    return this.complaints.open(actor, id, body);
  }

  @Route("complaints.answer")
  answer(
    @By() actor: Actor,
    @Id() id: string,
    @IfMatch() revision: number,
    @Body({ schema: ComplaintReply }) body: ComplaintReply,
  ) {
    return this.complaints.answer(actor, id, revision, body);
  }
}
