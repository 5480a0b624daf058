import { Controller } from "@nestjs/common";
import { By, Id } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { PapersService } from "./papers.service.ts";

@Controller()
export class PapersController {
  constructor(private readonly papers: PapersService) {}

  @Route("comparisons.paper")
  answer(@By() actor: Actor, @Id() comparison: string) {
    return this.papers.answer(actor, comparison);
  }

  @Route("summaries.paper")
  summary(@By() actor: Actor, @Id() summary: string) {
    return this.papers.summary(actor, summary);
  }
}
