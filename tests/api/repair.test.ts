import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import {
  draftStatement,
  header as goodHeader,
  horn,
  makeVehicle,
  seal,
  setOperation,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

const store = (id: string, header: string) =>
  query(
    service().databaseUrl,
    `UPDATE report SET header = header || '${header}'::jsonb WHERE id = '${id}' RETURNING id`,
  );

test("a change that what is stored could not hold is refused, and the draft lives on", async () => {
  const draft = await draftStatement(world.dealer, await makeVehicle(world.dealer));
  const path = { id: draft.id };
  const problem = await world.dealer.isRefused("reports.change", {
    path,
    revision: draft.revision,
    body: { persons: [{ id: "Not An Id", name: "Rowan Teasdale" }] },
  });
  expect(problem.problems?.map(({ at }) => at)).toEqual(["/persons/0/id"]);
  await world.dealer.does("reports.change", {
    path,
    revision: draft.revision,
    body: { persons: goodHeader.persons },
  });
});

test("a draft with a part nobody can read is opened, says so at its seal, is mended and sealed", async () => {
  const draft = await draftStatement(world.dealer, await makeVehicle(world.dealer));
  const path = { id: draft.id };
  await store(draft.id, `{"persons": [{"id": "", "name": ""}], "visit": {"started": "long ago"}}`);
  // Passed on as it is stored, so no contract is asked of it here; whoever shows it reads what can be read.
  const opened = await fetch(`${service().url}/api/v1/reports/${draft.id}`, {
    headers: world.dealer.credentials,
  });
  expect(opened.status).toBe(200);
  const { revision, results } = await world.dealer.does("reports.operate", {
    path,
    body: { operations: [setOperation(horn("intermittent"), 1)] },
  });
  expect(results).toMatchObject([{ result: "applied" }]);
  const problem = await world.dealer.isRefused("reports.seal", { path, revision });
  expect(problem.code).toBe("report-incomplete");
  expect(problem.problems?.map(({ at }) => at)).toEqual(
    expect.arrayContaining([expect.stringMatching("^/persons/0"), expect.stringMatching("^/visit")]),
  );
  const mended = await world.dealer.does("reports.change", {
    path,
    revision,
    body: { persons: goodHeader.persons, visit: goodHeader.visit },
  });
  await seal(world.dealer, draft.id, mended.revision);
});

test("a finding nobody can read is named at the seal and answered anew", async () => {
  const draft = await draftStatement(world.dealer, await makeVehicle(world.dealer));
  const path = { id: draft.id };
  await query(
    service().databaseUrl,
    `UPDATE report_finding SET body = '{"item": "electrics.horn", "answer": {"kind": "sounds", "value": 7}}'
     WHERE report_id = '${draft.id}' AND item = 'electrics.horn' RETURNING item`,
  );
  const problem = await world.dealer.isRefused("reports.seal", { path, revision: draft.revision });
  expect(problem).toMatchObject({ code: "report-incomplete", problems: [{ item: "electrics.horn" }] });
  const { revision } = await world.dealer.does("reports.operate", {
    path,
    body: { operations: [setOperation(horn("yes"), 1)] },
  });
  await seal(world.dealer, draft.id, revision);
});
