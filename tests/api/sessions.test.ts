import request from "supertest";
import { beforeEach, expect, test } from "vitest";
import { Throttle } from "../../apps/api/src/capabilities/accounts/throttle.ts";
import { query } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { withSession } from "./setup/scene.ts";
import { useService } from "./setup/service.ts";
import { emailOf, makePerson, password } from "./setup/world.ts";

const service = useService();
let delia: Person;
beforeEach(async () => {
  delia = await makePerson(service(), "dealer", "Delia");
});

const signIn = (given: object, headers: Readonly<Record<string, string>> = {}) =>
  new Person(service().url).ask("sessions.create", { body: given, headers });
const email = emailOf("Delia");

test("signing in gives a cookie that scripts cannot read, and the account", async () => {
  const answer = await signIn({ email: email.toUpperCase(), password });
  expect(answer.status).toBe(201);
  expect(answer.body.account).toMatchObject({ email, memberships: [{ role: "admin" }] });
  const [cookie = ""] = [answer.headers["set-cookie"]].flat();
  expect(cookie).toMatch(/^evenhand=[\w-]{43}; Max-Age=2592000; Path=\/; HttpOnly; SameSite=Lax$/);
  const secret = /evenhand=([\w-]+)/.exec(cookie)?.[1] ?? "";
  const seen = await new Person(service().url, { cookie: secret }).does("account.get");
  expect(seen.id).toBe(delia.account);
  expect(JSON.stringify(answer.body)).not.toContain(secret);
});

test("passwords and tokens are stored as hashes only", async () => {
  const [account] = await query<{ password_hash: string }>(
    service().databaseUrl,
    "SELECT password_hash FROM account",
  );
  expect(account?.password_hash).toMatch(/^\$argon2id\$v=19\$m=19456,t=2,p=1\$/);
  const secret = /=(.*)/.exec(delia.credentials["cookie"] ?? "")?.[1] ?? "none";
  const [session] = await query<{ whole: string }>(
    service().databaseUrl,
    "SELECT session::text AS whole FROM session",
  );
  expect(session?.whole).not.toContain(secret);
});

test("an unknown address and a wrong password get the same answer", async () => {
  const [unknown, wrong] = [
    await signIn({ email: "nobody@example.com", password: "anything at all" }),
    await signIn({ email, password: "anything at all" }),
  ];
  const told = ({ status, body }: typeof wrong) => ({ status, ...body, instance: "" });
  expect(told(unknown)).toEqual(told(wrong));
  expect(unknown.status).toBe(401);
});

test("signing out ends the session at once", async () => {
  await delia.does("account.get");
  await delia.does("sessions.end");
  expect((await delia.ask("account.get")).status).toBe(401);
});

test("sessions are listed to their owner, and one can be ended from another", async () => {
  const { person: phone, session } = await withSession(service(), delia);
  const { items } = await delia.does("sessions.list");
  expect(items.map(({ current }) => current)).toEqual([false, true]);
  await phone.does("account.get");
  await delia.does("sessions.revoke", { path: { id: session } });
  expect((await phone.ask("account.get")).status).toBe(401);
  expect((await delia.does("sessions.list")).items).toHaveLength(1);
});

test("a session that has run out is nobody's", async () => {
  await query(service().databaseUrl, "UPDATE session SET expires_at = now() - interval '1 second'");
  expect((await delia.ask("account.get")).status).toBe(401);
});

test("guessing is throttled, the right password included, until the window ends", async () => {
  for (let attempt = 0; attempt < Throttle.pairLimit; attempt += 1)
    expect((await signIn({ email, password: "guess number " + attempt })).status).toBe(401);
  const refused = await signIn({ email, password });
  expect(refused.status).toBe(429);
  expect(Number(refused.headers["retry-after"])).toBeGreaterThan(0);
  await query(service().databaseUrl, "UPDATE throttle SET window_ends = now() - interval '1 second'");
  expect((await signIn({ email, password })).status).toBe(201);
});

test("a change from another site's page is refused", async () => {
  const answer = await delia.ask("tokens.create", {
    body: {},
    headers: { origin: "https://elsewhere.example" },
  });
  expect([answer.status, answer.body.type]).toEqual([
    403,
    "https://evenhand.example/problems/foreign-origin",
  ]);
});

test("a change with a session and without any named origin is refused", async () => {
  const answer = await request(service().url)
    .post("/api/v1/tokens")
    .set("cookie", delia.credentials["cookie"] ?? "")
    .send({});
  expect(answer.status).toBe(403);
});

test("a body that does not hold is refused by field", async () => {
  const problem = await new Person(service().url).isRefused("sessions.create", {
    body: { email: "no address" },
  });
  expect(problem.problems?.map(({ at }) => at).toSorted()).toEqual(["/email", "/password"]);
});
