import { beforeEach, expect, test } from "vitest";
import type { Scope } from "@evenhand/shared/access";
import { query } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { car } from "./setup/story.ts";
import { makePerson } from "./setup/world.ts";

const service = useService();
let delia: Person;
beforeEach(async () => {
  delia = await makePerson(service(), "dealer", "Delia");
});

const inHours = (hours: number) => new Date(Date.now() + hours * 3_600_000).toISOString();
async function program(...scopes: Scope[]): Promise<{ id: string; person: Person }> {
  const body = { name: "stock list", scopes, expires: inHours(1) };
  const { id, token } = await delia.does("tokens.create", { body });
  return { id, person: new Person(service().url, { token, organization: delia.organization }) };
}

test("a program does what its scopes reach, without an origin", async () => {
  const { person } = await program("read", "vehicles");
  const body = { organization: delia.organization, vehicle: car };
  await person.does("vehicles.create", { body, headers: { origin: "" } });
  expect((await person.does("vehicles.list")).items).toHaveLength(1);
});

test("beyond its scopes it is refused", async () => {
  const { person } = await program("read");
  const problem = await person.isRefused("vehicles.create", {
    body: { organization: delia.organization, vehicle: car },
  });
  expect(problem).toMatchObject({ code: "scope-missing", status: 403 });
});

test("what is for people is never done with a token, whatever its scopes", async () => {
  const { person } = await program("read", "vehicles", "orders", "reports", "releases");
  const body = { name: "more", scopes: ["read"], expires: inHours(1) };
  expect((await person.isRefused("tokens.create", { body })).code).toBe("scope-missing");
  expect((await person.isRefused("sessions.list")).code).toBe("scope-missing");
});

test("a revoked token and one that has run out are nobody's", async () => {
  const [first, second] = [await program("read"), await program("read")];
  await delia.does("tokens.revoke", { path: { id: first.id } });
  expect((await first.person.ask("account.get")).status).toBe(401);
  expect((await second.person.ask("account.get")).status).toBe(200);
  await query(service().databaseUrl, "UPDATE api_token SET expires_at = now() - interval '1 second'");
  expect((await second.person.ask("account.get")).status).toBe(401);
});

test("a token in the address or the body is not taken", async () => {
  const { person } = await program("read");
  const token = (person.credentials["authorization"] ?? "").replace("Bearer ", "");
  const nobody = new Person(service().url);
  expect((await nobody.ask("account.get", { query: { access_token: token } })).status).toBe(401);
});

test.each([inHours(-1), inHours(24 * 400)])("an expiry of %s is refused", async (expires) => {
  const problem = await delia.isRefused("tokens.create", { body: { name: "a", scopes: ["read"], expires } });
  expect(problem).toMatchObject({ code: "expiry-too-far", problems: [{ at: "/expires" }] });
});

test("the secret is shown once and stored nowhere", async () => {
  const { person } = await program("read");
  const token = (person.credentials["authorization"] ?? "").replace("Bearer ", "");
  const rows = await query<{ whole: string }>(
    service().databaseUrl,
    "SELECT t::text AS whole FROM api_token t UNION ALL SELECT i::text FROM idempotency i",
  );
  expect(rows.map(({ whole }) => whole).join()).not.toContain(token);
  expect(JSON.stringify(await delia.does("tokens.list"))).not.toContain(token);
});
