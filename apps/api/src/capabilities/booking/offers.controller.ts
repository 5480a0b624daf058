import { Body, Controller, Query } from "@nestjs/common";
import { BookingTerms, BriefRequest, DayQuery, OfferQuery } from "@evenhand/shared/http/booking";
import { By, Id, IfMatch } from "../../platform/access/parameters.ts";
import { Route } from "../../platform/access/route.ts";
import { Actor } from "../../platform/auth/actor.ts";
import { OffersService } from "./offers.service.ts";
import { TermsService } from "./terms.service.ts";

@Controller()
export class OffersController {
  constructor(
    private readonly service: OffersService,
    private readonly terms: TermsService,
  ) {}

  @Route("brief.get")
  brief(@By() actor: Actor, @Id() vehicle: string) {
    return this.service.brief(actor, vehicle);
  }

  @Route("brief.put")
  putBrief(
    @By() actor: Actor,
    @Id() vehicle: string,
    @IfMatch() revision: number,
    @Body({ schema: BriefRequest }) body: BriefRequest,
  ) {
    return this.service.putBrief(actor, vehicle, revision, body);
  }

  @Route("offers.list")
  list(@By() actor: Actor, @Id() vehicle: string, @Query({ schema: OfferQuery }) query: OfferQuery) {
    return this.service.list(actor, vehicle, query);
  }

  @Route("offers.explain")
  explain(@By() actor: Actor, @Id() vehicle: string, @Query({ schema: DayQuery }) query: DayQuery) {
    return this.service.explain(actor, vehicle, query);
  }

  @Route("bookingTerms.get")
  getTerms() {
    return this.terms.get();
  }

  @Route("bookingTerms.put")
  putTerms(
    @By() actor: Actor,
    @IfMatch() revision: number,
    @Body({ schema: BookingTerms }) body: BookingTerms,
  ) {
    return this.terms.put(actor, revision, body);
  }
}
