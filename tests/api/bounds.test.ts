import { beforeEach, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { car, makeVehicle, publish } from "./setup/story.ts";
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

const nextYear = new Date(Date.now() + 300 * 86_400_000).toISOString();
const hashes = "decode(md5(n::text), 'hex')";

test("of one account's tokens and feeds fifty work at once", async () => {
  const { account, organization } = world.dealer;
  await sql(
    `INSERT INTO api_token (id, account_id, name, token_hash, scopes, created_at, expires_at)
     SELECT gen_random_uuid(), $1, 'a', ${hashes}, '{read}', now(), now() + interval '1 day' FROM generate_series(1, 49) n`,
    [account],
  );
  const token = { body: { name: "a program", scopes: ["read"], expires: nextYear } };
  expect(await atOnce(() => world.dealer.ask("tokens.create", token))).toEqual([201, 409, 409, 409]);
  const refused = await world.dealer.isRefused("tokens.create", token);
  expect([refused.code, refused["open"], refused["most"], refused.detail]).toEqual([
    "too-many-open",
    50,
    50,
    expect.stringContaining("Revoke those that no program uses"),
  ]);
  await sql("UPDATE api_token SET expires_at = now()");
  expect((await world.dealer.ask("tokens.create", token)).status).toBe(201);

  await sql(
    `INSERT INTO calendar_feed (id, account_id, organization_id, name, token_hash, created_at)
     SELECT gen_random_uuid(), $1, $2, 'a', ${hashes}, now() FROM generate_series(1, 49) n`,
    [account, organization],
  );
  const feed = { body: { organization, name: "My visits" } };
  expect(await atOnce(() => world.dealer.ask("calendarFeeds.create", feed))).toEqual([201, 409, 409, 409]);
});

test("of links to one car's statement a hundred work at once, and another car's still can be made", async () => {
  const [first, second] = [await makeVehicle(world.dealer), await makeVehicle(world.dealer)];
  await sql(
    `INSERT INTO share_link (id, vehicle_id, name, token_hash, created_by, created_at, expires_at, reads)
     SELECT gen_random_uuid(), $1, 'a', ${hashes}, $2, now(), now() + interval '1 day', 0 FROM generate_series(1, 99) n`,
    [first, world.dealer.account],
  );
  const share = (id: string) =>
    world.dealer.ask("shareLinks.create", { path: { id }, body: { name: "a friend", expires: nextYear } });
  expect(await atOnce(() => share(first))).toEqual([201, 409, 409, 409]);
  expect((await share(second)).status).toBe(201);
});

test("five hundred cars a day are entered for one dealer", async () => {
  const first = await makeVehicle(world.dealer);
  await sql(
    `INSERT INTO vehicle (id, organization_id, make, model, model_year, identification, document, listed, revision, search,
       created_at, updated_at)
     SELECT gen_random_uuid(), organization_id, make, model, model_year, n::text, document, false, 1, '', created_at, created_at
     FROM vehicle, generate_series(1, 498) n WHERE id = $1`,
    [first],
  );
  const body = { organization: world.dealer.organization, vehicle: car };
  expect(await atOnce(() => world.dealer.ask("vehicles.create", { body }))).toEqual([201, 429, 429, 429]);
  await makeVehicle(world.otherDealer);
});

test("of one account's sessions fifty go on: with another, the one seen longest ago ends", async () => {
  await sql(
    `INSERT INTO session (id, account_id, token_hash, device, created_at, last_seen_at, expires_at)
     SELECT gen_random_uuid(), $1, ${hashes}, n::text, now(), now() - n * interval '1 minute', now() + interval '1 day'
     FROM generate_series(1, 49) n`,
    [world.buyer.account],
  );
  const signIn = { body: { email: emailOf("Bea"), password } };
  expect((await world.nobody.ask("sessions.create", signIn)).status).toBe(201);
  expect(await sql("SELECT device FROM session WHERE revoked_at IS NOT NULL")).toEqual([{ device: "49" }]);
  expect((await world.buyer.ask("account.get")).status).toBe(200);
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

/** A firm that has nobody yet, as whoever runs the service makes it. */
const newFirm = async (): Promise<string> =>
  (await world.operator.does("organizations.create", { body: { name: "Newfirm", kind: "inspector" } })).id;

test("an operator invites the first administrator of a firm, and neither themselves nor a colleague", async () => {
  const { operator } = world;
  const body = { email: emailOf("Opal"), organization: await newFirm(), role: "admin" };
  const refused = await operator.isRefused("invitations.create", { body });
  expect([refused.code, refused.problems?.[0]?.at]).toEqual(["not-permitted", "/email"]);
  const first = { ...body, email: "first.admin@example.com" };
  const asMember = await operator.isRefused("invitations.create", { body: { ...first, role: "member" } });
  expect(asMember.problems?.[0]?.at).toBe("/role");
  expect(await sql("SELECT 1 FROM invitation")).toEqual([]);
  await operator.does("invitations.create", { body: first });
});

test("an operator comes into no firm that is at work, by no address of their own", async () => {
  const { operator, inspector, buyer } = world;
  for (const { organization } of [inspector, buyer]) {
    const body = { email: "nobody.knows@example.com", organization, role: "admin" };
    const refused = await operator.isRefused("invitations.create", { body });
    expect([refused.code, refused.problems?.[0]?.at]).toEqual(["not-permitted", "/organization"]);
  }
  await publish(world.dealer);
  await sql("DELETE FROM membership WHERE organization_id = $1", [world.dealer.organization]);
  const left = { email: "nobody.knows@example.com", organization: world.dealer.organization, role: "admin" };
  expect((await operator.isRefused("invitations.create", { body: left })).code).toBe("not-permitted");
});

test("of two whom an operator invited into a new firm the first to come is in, and the other's link is spent", async () => {
  const { operator, nobody } = world;
  const firm = await newFirm();
  const links = [
    await invited(operator, "first@example.com", firm),
    await invited(operator, "kept.for.later@example.com", firm),
  ];
  const come = (token: string) =>
    nobody.ask("invitations.accept", { path: { token }, body: { name: "Somebody", password } });
  const answers = await Promise.all(links.map(come));
  expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 410]);
  expect(await sql("SELECT 1 FROM membership WHERE organization_id = $1", [firm])).toHaveLength(1);
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
