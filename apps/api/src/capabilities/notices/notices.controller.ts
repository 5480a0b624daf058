import { Body, Controller, Query } from "@nestjs/common";
import { NewsChoiceRequest, NoticesRead } from "@evenhand/shared/http/notices";
import { PageQuery } from "@evenhand/shared/http/paging";
import { By } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { NoticesService } from "./notices.service.ts";

@Controller()
export class NoticesController {
  constructor(private readonly notices: NoticesService) {}

  @Route("notices.list")
  list(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.notices.list(actor, query);
  }

  @Route("notices.choice")
  choice(@By() actor: Actor) {
    return this.notices.choice(actor);
  }

  @Route("notices.choose")
  choose(@By() actor: Actor, @Body({ schema: NewsChoiceRequest }) body: NewsChoiceRequest) {
    return this.notices.choose(actor, body);
  }

  @Route("notices.read")
  markRead(@By() actor: Actor, @Body({ schema: NoticesRead }) body: NoticesRead) {
    return this.notices.markRead(actor, body);
  }
}
