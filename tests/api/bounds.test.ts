import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { publish } from "./setup/story.ts";
import { emailOf, makeWorld, password, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});
const sql = (text: string, values: unknown[] = []) => query(service().databaseUrl, text, values);
/** Four at once, where there is room for one more. */
const atOnce = async (ask: () => Promise<{ status: number }>) =>
  (await Promise.all([ask(), ask(), ask(), ask()])).map(({ status }) => status).toSorted((a, b) => a - b);

const complain = (person: Person) =>
  person.ask("complaints.create", {
    body: {
      organization: person.organization,
      about: { kind: "other", id: null },
      text: "It is cold here.",
    },
  });
const complained = (count: number, state: string, age: string) =>
  sql(
    `INSERT INTO complaint (id, organization_id, about_kind, text, state, revision, created_by, received_at)
     SELECT gen_random_uuid(), $1, 'other', 'x', '${state}', 1, $2, now() - interval '${age}' FROM generate_series(1, ${count})`,
    [world.buyer.organization, world.buyer.account],
  );

test("of complaints an account sends ten a day, however many at once, and others still theirs", async () => {
  await complained(9, "answered", "1 hour");
  expect(await atOnce(() => complain(world.buyer))).toEqual([201, 429, 429, 429]);
  const refused = await complain(world.buyer);
  expect([refused.headers["retry-after"], refused.body.detail]).toEqual([
    "86400",
    expect.stringContaining("10 complaints within a day"),
  ]);
  expect((await complain(world.dealer)).status).toBe(201);
});

test("of an organization's complaints twenty wait for an answer at once", async () => {
  await complained(19, "received", "3 days");
  expect(await atOnce(() => complain(world.buyer))).toEqual([201, 409, 409, 409]);
  await sql("UPDATE complaint SET state = 'answered'");
  expect((await complain(world.buyer)).status).toBe(201);
});

test("of one buyer's questions about one car a hundred are open at once, and two hundred a day are written", async () => {
  const [{ vehicle }, other] = [await publish(world.dealer), await publish(world.dealer)];
  const written = (count: number, about: string, state: string) =>
    sql(
      `INSERT INTO question (id, vehicle_id, buyer_id, dealer_id, item, position, text, state, revision, created_by, created_at)
       SELECT gen_random_uuid(), $1, $2, $3, 'electrics.horn', '', 'x', '${state}', 1, $4, now() FROM generate_series(1, ${count})`,
      [about, world.buyer.organization, world.dealer.organization, world.buyer.account],
    );
  const ask = (about: string) =>
    world.buyer.ask("questions.create", {
      path: { id: about },
      body: { item: "electrics.horn", position: "", text: "Does it sound when it is wet?", send: false },
    });
  await written(99, vehicle, "drafted");
  expect(await atOnce(() => ask(vehicle))).toEqual([201, 409, 409, 409]);
  expect((await ask(other.vehicle)).status).toBe(201);
  await written(98, other.vehicle, "answered");
  expect(await atOnce(() => ask(other.vehicle))).toEqual([201, 429, 429, 429]);
});

test("of an organization's invitations two hundred are open at once", async () => {
  await sql(
    `INSERT INTO invitation (id, organization_id, email, role, token_hash, invited_by, created_at, expires_at)
     SELECT gen_random_uuid(), $1, 'a' || n || '@example.com', 'member', decode(md5(n::text), 'hex'), $2,
       now() - interval '2 days', now() + interval '2 days' FROM generate_series(1, 199) AS n`,
    [world.dealer.organization, world.dealer.account],
  );
  let next = 0;
  const invite = () => {
    next += 1;
    const body = { email: `b${next}@example.com`, organization: world.dealer.organization, role: "member" };
    return world.dealer.ask("invitations.create", { body });
  };
  expect(await atOnce(invite)).toEqual([201, 409, 409, 409]);
  await sql("UPDATE invitation SET revoked_at = now()");
  expect((await invite()).status).toBe(201);
});

const invited = async (by: Person, email: string, organization: string): Promise<string> => {
  await by.does("invitations.create", { body: { email, organization, role: "admin" } });
  const [mail] = await query<{ body: string }>(
    service().databaseUrl,
    "SELECT body FROM mail WHERE recipient = $1 ORDER BY id DESC LIMIT 1",
    [email],
  );
  return /\/invitation\/([\w-]+)/.exec(mail?.body ?? "")?.[1] ?? "";
};

test("an operator invites others into a firm, and neither themselves nor a colleague", async () => {
  const { operator, dealer } = world;
  const body = { email: emailOf("Opal"), organization: dealer.organization, role: "admin" };
  const refused = await operator.isRefused("invitations.create", { body });
  expect([refused.code, refused.problems?.[0]?.at]).toEqual(["not-permitted", "/email"]);
  expect(await sql("SELECT 1 FROM invitation")).toEqual([]);
  await operator.does("invitations.create", { body: { ...body, email: "first.admin@example.com" } });
});

test("whoever runs the service joins no firm by anybody's invitation, and nobody of a firm comes to run it", async () => {
  const { operator, dealer, nobody } = world;
  const use = async (by: Person, name: string, organization: string) => {
    const token = await invited(by, emailOf(name), organization);
    return nobody.isRefused("invitations.accept", { path: { token }, body: { name, password } });
  };
  expect((await use(dealer, "Opal", dealer.organization)).code).toBe("not-permitted");
  expect((await use(operator, "Bea", operator.organization)).code).toBe("not-permitted");
  const both = await sql("SELECT account_id FROM membership GROUP BY account_id HAVING count(*) > 1");
  expect(both).toEqual([]);
});
