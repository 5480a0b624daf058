import { Injectable } from "@nestjs/common";
import { AdmissionsService } from "../capabilities/admissions/index.ts";
import { CalendarsService } from "../capabilities/calendars/index.ts";
import { SitesService } from "../capabilities/sites/index.ts";
import type { DemoWorld } from "./demo-world.ts";
import type { Scenario } from "./read-scenario.ts";

/** Enters the dealers' sites and the inspectors' hours, and admits whom the scenario says is admitted. */
@Injectable()
export class DemoHours {
  constructor(
    private readonly sites: SitesService,
    private readonly calendars: CalendarsService,
    private readonly admissions: AdmissionsService,
  ) {}

  async enter(world: DemoWorld, { sites, calendars }: Scenario): Promise<void> {
    for (const { key, dealer, by, site } of sites) {
      const organization = world.get("organization", dealer);
      const { id } = await this.sites.create(world.tx, world.actor(by), { organization, ...site });
      world.set("site", key, id);
    }
    for (const { key, firm, by, account, name, time, admitted } of calendars) {
      const organization = world.get("organization", firm);
      const person = { account: world.get("account", account), name };
      const { id } = await this.calendars.create(world.tx, world.actor(by), {
        organization,
        ...person,
        ...time,
      });
      world.set("calendar", key, id);
      if (admitted === undefined) continue;
      const { reason } = admitted;
      await this.admissions.decide(world.tx, world.actor(admitted.by), id, 1, { decision: "admit", reason });
    }
  }
}
