import { Client } from "pg";
import { beforeAll, expect, test } from "vitest";
import { DeadlinesService } from "../../apps/api/src/capabilities/deadlines/index.ts";
import { DigestService } from "../../apps/api/src/capabilities/notices/index.ts";
import {
  type BookingWorld,
  lastingSessions,
  makeBookingWorld,
  monday,
  move,
  newClock,
  request,
} from "./setup/booking-story.ts";
import { query } from "./setup/database.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  entryAt,
  header,
  headliner,
  inspected,
  order,
  publish,
  readComparison,
  seal,
  summarize,
  treadDepth,
  write,
} from "./setup/story.ts";
import { until } from "./setup/until.ts";
import { emailOf, joinPerson, password } from "./setup/world.ts";

/** One inspection whose lines, offer and visits are answered late; the steps follow one another. Dora hears of news once a day, Dan not at all. */
const clock = newClock();
const service = useService({ clock, emptyBetween: false });
let world: BookingWorld;
let [dora, dan]: Person[] = [];
let comparison = "";
const lines: string[] = [];
const subjects: string[] = [];

const on = <R extends object>(text: string, values: unknown[] = []) =>
  query<R>(service().databaseUrl, text, values);
const hours = (from: string, count: number): Date => new Date(Date.parse(from) + count * 3_600_000);
const sweep = (): Promise<number> => service().app.get(DeadlinesService, { strict: false }).sweep();
const gather = (): Promise<number> => service().app.get(DigestService, { strict: false }).gather();

type Letter = { to: string; subject: string; body: string };
/** What was written since the last look, by whom it goes to. */
async function letters(): Promise<Letter[]> {
  const rows = await on<Letter>("DELETE FROM mail RETURNING recipient AS to, subject, body");
  subjects.push(...rows.map(({ subject }) => subject));
  return rows.toSorted((a, b) => (a.to < b.to ? -1 : 1));
}
const told = async (): Promise<string[]> => (await letters()).map(({ to, subject }) => `${to}: ${subject}`);
const to = (name: string, subject: string): string => `${emailOf(name)}: ${subject}`;

const deadlineOf = async (id: string): Promise<string> =>
  (await world.dealer.does("releases.get", { path: { id } })).deadline ?? "";
/** Does the work while another holds what it needs, and lets go only once so many wait for it: what they read was read before. */
async function meanwhile<T>(
  held: string,
  values: unknown[],
  waiting: number,
  work: () => Promise<T>,
): Promise<T> {
  const other = new Client({ connectionString: service().databaseUrl });
  await other.connect();
  await other.query("BEGIN");
  await other.query(held, values);
  const done = work();
  const waits =
    "SELECT 1 FROM pg_stat_activity WHERE wait_event_type = 'Lock' AND datname = current_database()";
  await until(async () => (await on(waits)).length >= waiting);
  await other.query("COMMIT");
  await other.end();
  return done;
}
const twice = async (work: () => Promise<number>): Promise<number[]> =>
  (await Promise.all([work(), work()])).toSorted((a, b) => a - b);

beforeAll(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
  const firm = world.dealer.organization;
  [dora, dan] = [await joinPerson(service(), firm, "Dora"), await joinPerson(service(), firm, "Dan")];
  await lastingSessions(service());
  const path = { id: await order(world.buyer, world.inspector, world.vehicle, world.statement) };
  await acceptOrder(world.inspector, path.id);
  const { id } = await world.inspector.does("reports.inspect", { path, body: header });
  const findings = [
    ...inspected.filter(({ item }) => item !== "interior.headliner"),
    headliner("spent"),
    treadDepth("left-rear", 1, 1, 1),
  ];
  comparison = (await seal(world.inspector, id, await write(world.inspector, id, findings))).comparison ?? "";
  await letters();
});

test("everybody chooses how news comes by mail: at once, until they choose otherwise", async () => {
  const firmZone = "America/Chicago";
  expect(await dora?.does("notices.choice")).toEqual({ mail: "at-once", zone: null, firmZone });
  expect((await dora?.ask("notices.choose", { body: { mail: "never" } }))?.status).toBe(422);
  expect((await dora?.ask("notices.choose", { body: { mail: "daily", zone: "Mars" } }))?.status).toBe(422);
  const zone = "Europe/Lisbon";
  expect(await dora?.does("notices.choose", { body: { mail: "at-once", zone } })).toMatchObject({ zone });
  expect(await dora?.does("notices.choose", { body: { mail: "at-once" } })).toMatchObject({ zone });
  await dora?.does("notices.choose", { body: { mail: "at-once", zone: null } });
  const daily = { mail: "daily", zone: null, firmZone };
  expect(await dora?.does("notices.choose", { body: { mail: "daily" } })).toEqual(daily);
  await dan?.does("notices.choose", { body: { mail: "deadlines" } });
  expect(await dora?.does("notices.choice")).toEqual(daily);
});

test("news goes at once, waits for the morning, or is not mailed; it stands in the application in any case", async () => {
  const read = await readComparison(world.buyer, comparison);
  const entries = [
    entryAt(read, "electrics.horn"),
    entryAt(read, "wheels.tread-depth", "left-front"),
    entryAt(read, "interior.headliner"),
  ];
  const path = { id: comparison };
  const { items } = await world.buyer.does("releases.create", { path, body: { entries } });
  lines.push(...items.map(({ id }) => id));
  expect(await told()).toEqual([
    to("Delia", "A buyer lays items of an inspection before you for an answer."),
  ]);
  for (const who of [world.dealer, dora, dan])
    expect((await who?.does("notices.list"))?.items).toMatchObject([{ kind: "items-released", due: null }]);
});

test("what is due is told a day before, once and in one letter for all lines, whatever was chosen", async () => {
  const deadline = await deadlineOf(lines[0] ?? "");
  expect(deadline).toBe("2027-05-05T18:00:00.000Z");
  clock.set(new Date(hours(deadline, -24).getTime() - 1));
  expect(await sweep()).toBe(0);
  clock.set(hours(deadline, -24));
  expect([await sweep(), await sweep()]).toEqual([1, 0]);
  const sent = await letters();
  expect(sent.map((letter) => letter.to)).toEqual(["Dan", "Delia", "Dora"].map(emailOf));
  for (const { subject, body } of sent) {
    expect(subject).toBe("Your answer to a buyer is due by Wed, May 5, 1:00 PM CDT.");
    expect(body).toContain("3 lines wait for it");
    expect(body).toMatch(
      new RegExp(`^http://127\\.0\\.0\\.1:\\d+/released\\?vehicle=${world.vehicle}$`, "m"),
    );
  }
  const { items } = await world.dealer.does("notices.list");
  const { vehicle } = world;
  const about = { subject: vehicle, vehicle, step: "answer-items" };
  expect(items[0]).toMatchObject({ kind: "deadline-near", due: deadline, ...about });
});

test("an hour that is held is told nobody; one asked for is told the inspector, once though two look at once", async () => {
  const { vehicle } = await publish(world.dealer);
  const asked = await request(service(), { ...world, vehicle });
  await letters();
  const seen = await world.inspector.does("appointments.get", { path: { id: asked } });
  const due = seen.deadline ?? "";
  clock.set(hours(due, -12));
  const held = "SELECT 1 FROM appointment WHERE id = $1 FOR UPDATE";
  expect(await meanwhile(held, [asked], 2, () => twice(sweep))).toEqual([0, 1]);
  const [letter, ...more] = await letters();
  expect([letter?.to, more]).toEqual([emailOf("Ines"), []]);
  expect(letter?.subject).toMatch(
    /^Your answer to a buyer who asks for a visit is due by Wed, May 5, 1:00 PM CDT\.$/,
  );
  expect(letter?.body).toContain(`/appointments/${asked}\n`);
  await move(service(), world.inspector, "appointments.accept", asked, { independent: true });
  await letters();
  clock.set(hours(clock.now().toISOString(), 12));
  expect(await sweep()).toBe(1);
  expect((await told()).at(-1)).toMatch(/Your answer about access for a visit is due by /);
  const { plan } = await world.dealer.does("appointments.get", { path: { id: asked } });
  const permissions = plan.toAllow.map((each) => ({ ...each, allowed: true }));
  await move(service(), world.dealer, "appointments.confirm", asked, { access: true, permissions });
  await letters();
  // The hour of a visit that is agreed is no deadline, and that of the lines is over.
  clock.set(hours(seen.start, -1));
  expect(await sweep()).toBe(0);
});

test("a deadline that was set anew is told anew, and not of what is answered while it is being told", async () => {
  await on("UPDATE release SET deadline = $1", [hours(clock.now().toISOString(), 20)]);
  const answered =
    "UPDATE release SET state = 'contested', deadline = deadline + interval '9 days' WHERE id = $1";
  const count = await meanwhile(answered, [lines[0]], 1, sweep);
  expect([count, await sweep()]).toEqual([1, 0]);
  const sent = await letters();
  expect(sent.map(({ to: recipient }) => recipient)).toEqual(["Dan", "Delia", "Dora"].map(emailOf));
  for (const { body } of sent) expect(body).toContain("2 lines wait for it");
});

test("an offer is told whoever has to answer it, on the day it ends, and nobody once it is answered", async () => {
  const price = { minor: 1_900_000, currency: "USD" };
  const soon = () => hours(clock.now().toISOString(), 72).toISOString();
  const { id, hash } = await summarize(world.buyer, comparison);
  const body = { decision: "counter", hash, price, until: soon() };
  const made = await world.buyer.does("summaries.decide", { path: { id }, body });
  await letters();
  clock.set(hours(body.until, -24));
  expect(await sweep()).toBe(1);
  expect(
    (await letters()).map((each) => [
      each.to,
      each.subject.split(" is due ")[0],
      each.body.includes("/decisions\n"),
    ]),
  ).toEqual(["Dan", "Delia", "Dora"].map((name) => [emailOf(name), "Your answer to a counter-offer", true]));
  const [path, back] = [{ id: made.id }, { answer: "counter", price, until: soon() }];
  await world.dealer.does("decisions.answer", { path, revision: 1, body: back });
  await letters();
  clock.set(hours(back.until, -1));
  expect(await sweep()).toBe(1);
  expect((await letters()).map((each) => [each.to, each.subject.split(" is due ")[0]])).toEqual([
    [emailOf("Bea"), "Your answer to a dealer’s counter-offer"],
  ]);
  await world.buyer.does("decisions.reply", { path, revision: 2, body: { reply: "accept" } });
  expect(await sweep()).toBe(0);
  expect(await told()).toEqual([to("Delia", "The buyer has answered your counter-offer.")]);
});

test("what waited goes out as one letter at seven in the morning of the firm, once though two look at once", async () => {
  const evening = new Date("2027-06-01T03:00:00Z");
  await on("UPDATE notice SET created_at = $1 WHERE mailing = 'waiting'", [evening]);
  clock.set(new Date("2027-06-01T11:59:59Z"));
  expect(await gather()).toBe(0);
  clock.set(new Date("2027-06-01T12:00:00Z"));
  const held = "SELECT 1 FROM notice WHERE mailing = 'waiting' FOR UPDATE";
  expect(await meanwhile(held, [], 2, () => twice(gather))).toEqual([0, 1]);
  expect(await gather()).toBe(0);
  const [letter, ...more] = await letters();
  expect([letter?.to, letter?.subject, more]).toEqual([
    emailOf("Dora"),
    "Your news since the last letter",
    [],
  ]);
  const said = letter?.body.split("\n\n")[0]?.split("\n");
  expect(said?.[0]).toBe("A buyer lays items of an inspection before you for an answer.");
  expect(said?.at(-1)).toBe("The buyer has answered your counter-offer.");
  expect(said?.some((line) => line.includes("due soon"))).toBe(false);
});

test("whoever chose a clock of their own has the letter at seven in the morning there", async () => {
  const night = new Date("2027-06-02T03:00:00Z");
  await on("UPDATE notice SET mailing = 'waiting', created_at = $2 WHERE account_id = $1", [
    dora?.account,
    night,
  ]);
  await dora?.does("notices.choose", { body: { mail: "daily", zone: "Europe/Lisbon" } });
  clock.set(new Date("2027-06-02T05:59:59Z"));
  expect(await gather()).toBe(0);
  clock.set(new Date("2027-06-02T06:00:00Z"));
  expect(await gather()).toBe(1);
  expect((await letters()).map((letter) => letter.to)).toEqual([emailOf("Dora")]);
});

test("whoever wants no more news by mail gets none of what waited; what is about the account comes at once", async () => {
  await on("UPDATE notice SET mailing = 'waiting' WHERE account_id = $1", [dora?.account]);
  await dora?.does("notices.choose", { body: { mail: "deadlines" } });
  expect(await gather()).toBe(0);
  await dora?.does("account.changePassword", { body: { current: password, next: "another long password" } });
  expect(await told()).toEqual([to("Dora", "Your password was changed")]);
});

test("no subject tells of a car, a person or a finding", () => {
  expect(subjects.length).toBeGreaterThan(20);
  for (const subject of subjects)
    expect(subject).not.toMatch(/Uthwick|Alder|A7K214883|Bea|Delia|Ines|horn|tread|tire|headliner|\$/);
});
