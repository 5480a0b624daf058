import { createApp } from "../app.ts";
import { DemoIds } from "../demo/demo-ids.ts";
import { DemoAsks } from "../demo/load-asks.ts";
import { DemoLoader, DemoServices } from "../demo/load-demo.ts";
import { DemoHandOvers } from "../demo/load-hand-overs.ts";
import { DemoHours } from "../demo/load-hours.ts";
import { DemoPictures } from "../demo/load-pictures.ts";
import { DemoVisits } from "../demo/load-visits.ts";
import { readScenario, type Scenario } from "../demo/read-scenario.ts";
import { SetClock } from "../platform/clock/index.ts";
import type { Config } from "../platform/config/index.ts";
import { Database } from "../platform/database/database.ts";
import { Module } from "@nestjs/common";
import { capabilities } from "../capabilities/index.ts";

@Module({
  imports: [...capabilities],
  providers: [DemoServices, DemoHours, DemoHandOvers, DemoVisits, DemoAsks, DemoPictures],
})
class DemoModule {}

/** What a person needs to look round in the demo. `main` is the comparison it is about. */
export type DemoGuide = {
  state: "loaded" | "there" | "older";
  accounts: { name: string; email: string; password: string; organizations: string[] }[];
  main: { comparison: string; viewer: { email: string; password: string } };
};

/** Loads the invented world once, all of it or nothing, dated from `today`. Run again, it changes nothing. */
export async function loadDemo(config: Config, today = new Date()): Promise<DemoGuide> {
  const scenario = readScenario();
  const clock = new SetClock(today);
  const patient = { ...config, jobs: false, database: { ...config.database, statementTimeout: 600_000 } };
  const app = await createApp(patient, { modules: [DemoModule], clock, ids: new DemoIds(clock) });
  try {
    const database = app.get(Database);
    return await database.transaction(async (tx) => {
      const [known] = await tx.demoLoad.findMany({ orderBy: { revision: "desc" }, take: 1 });
      if (known !== undefined)
        return guide(scenario, known.revision < scenario.revision ? "older" : "there", known.mainComparison);
      const world = await new DemoLoader(tx, scenario, app.get(DemoServices), clock).load();
      const mainComparison = world.get("comparison", scenario.mainCase.comparison);
      await tx.demoLoad.create({
        data: { revision: scenario.revision, mainComparison, loadedAt: new Date() },
      });
      return guide(scenario, "loaded", mainComparison);
    });
  } finally {
    await app.close();
  }
}

function guide(scenario: Scenario, state: DemoGuide["state"], comparison: string): DemoGuide {
  const names = new Map(scenario.organizations.map(({ key, name }) => [key, name]));
  const viewer = scenario.accounts.find(({ key }) => key === scenario.mainCase.viewer);
  if (viewer === undefined) throw new Error("The scenario's main case is seen by nobody it knows.");
  return {
    state,
    accounts: scenario.accounts.map(({ name, email, password, memberships }) => ({
      name,
      email,
      password,
      organizations: memberships.map(({ organization }) => names.get(organization) ?? organization),
    })),
    main: { comparison, viewer: { email: viewer.email, password: viewer.password } },
  };
}
