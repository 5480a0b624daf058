import { expect, test } from "vitest";
import { inviteOperator } from "../../apps/api/src/commands/invite-operator.ts";
import { createApp } from "../../apps/api/src/app.ts";
import { cloneDatabase, query } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { testConfig } from "./setup/service.ts";

test("the first operator of a new service is invited by mail and admits the first firm", async () => {
  const databaseUrl = await cloneDatabase("first_operator");
  await inviteOperator(testConfig(databaseUrl), "opal@example.com");
  // Passport keeps its strategies for the whole process: the service that is asked is the one made last.
  const app = await createApp(testConfig(databaseUrl));
  await app.listen(0, "127.0.0.1");
  const url = await app.getUrl();
  const [mail] = await query<{ body: string }>(databaseUrl, "SELECT body FROM mail");
  const token = /\/invitation\/([\w-]+)/.exec(mail?.body ?? "")?.[1] ?? "";
  const nobody = new Person(url);
  const [name, password] = ["Opal", "a long enough password"];
  await nobody.does("invitations.accept", { path: { token }, body: { name, password } });
  const answer = await nobody.ask("sessions.create", { body: { email: "opal@example.com", password } });
  const cookie = /evenhand=([\w-]+)/.exec(String(answer.headers["set-cookie"]))?.[1] ?? "";
  const opal = new Person(url, { cookie });
  await opal.does("organizations.create", { body: { name: "Hollin", kind: "dealer" } });
  expect((await opal.does("organizations.list")).items.map((each) => each.kind)).toEqual([
    "dealer",
    "operator",
  ]);
});

test("invited again, the operator joins the organization there is", async () => {
  const databaseUrl = await cloneDatabase("second_operator");
  await inviteOperator(testConfig(databaseUrl), "opal@example.com");
  await inviteOperator(testConfig(databaseUrl), "otis@example.com");
  expect(await query(databaseUrl, "SELECT 1 FROM organization")).toHaveLength(1);
});
