import { Body, Controller, Query, Res } from "@nestjs/common";
import { DaysQuery, FeedRequest } from "@evenhand/shared/http/booking/calendar-views";
import { PageQuery } from "@evenhand/shared/http/paging";
import type { FastifyReply } from "fastify";
import { By, Id, Secret } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { DaysService } from "./days.service.ts";
import { FeedsService } from "./feeds.service.ts";

@Controller()
export class CalendarViewsController {
  constructor(
    private readonly days: DaysService,
    private readonly feeds: FeedsService,
  ) {}

  @Route("calendars.days")
  ofInspector(@By() actor: Actor, @Id() id: string, @Query({ schema: DaysQuery }) query: DaysQuery) {
    return this.days.ofInspector(actor, id, query);
  }

  @Route("sites.days")
  ofSite(@By() actor: Actor, @Id() id: string, @Query({ schema: DaysQuery }) query: DaysQuery) {
    return this.days.ofSite(actor, id, query);
  }

  @Route("calendarFeeds.create")
  create(@By() actor: Actor, @Body({ schema: FeedRequest }) body: FeedRequest) {
    return this.feeds.create(actor, body);
  }

  @Route("calendarFeeds.list")
  list(@By() actor: Actor, @Query({ schema: PageQuery }) query: PageQuery) {
    return this.feeds.list(actor, query);
  }

  @Route("calendarFeeds.revoke")
  revoke(@By() actor: Actor, @Id() id: string) {
    return this.feeds.revoke(actor, id);
  }

  @Route("calendarFeeds.read")
  async read(@Secret() secret: string, @Res() reply: FastifyReply) {
    const text = await this.feeds.read(secret);
    await reply
      .type("text/calendar; charset=utf-8")
      .header("cache-control", "private, no-cache")
      .header("x-robots-tag", "noindex")
      .send(text);
  }
}
