import { Injectable, type OnModuleInit } from "@nestjs/common";
import { Jobs } from "../../platform/jobs/jobs.ts";
import { OffersService } from "./offers.service.ts";

/** Every minute, offers whose time is over are ended. */
@Injectable()
export class OfferJobs implements OnModuleInit {
  constructor(
    private readonly jobs: Jobs,
    private readonly offers: OffersService,
  ) {}

  onModuleInit(): void {
    this.jobs.register("offer-sweep", async () => void (await this.offers.lapse()));
  }
}
