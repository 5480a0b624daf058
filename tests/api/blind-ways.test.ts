import { beforeEach, expect, test } from "vitest";
import type { FindingInput } from "@evenhand/shared/finding";
import { query } from "./setup/database.ts";
import { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  car,
  entryAt,
  header,
  headliner,
  horn,
  inspect,
  inspected,
  makeVehicle,
  order,
  publish,
  readComparison,
  reseal,
  seal,
  setOperation,
  stated,
  summarize,
  treadDepth,
  write,
} from "./setup/story.ts";
import { joinPerson, makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

type Published = Awaited<ReturnType<typeof publish>>;

const join = (account: string, organization: string) =>
  query(service().databaseUrl, "INSERT INTO membership VALUES ($1, $2, 'member', now())", [
    account,
    organization,
  ]);
const leave = (account: string, organization: string) =>
  query(service().databaseUrl, "DELETE FROM membership WHERE account_id = $1 AND organization_id = $2", [
    account,
    organization,
  ]);

/** The same person as the service meets them once its short memory of their memberships is over: by another session. */
async function anew(person: Person): Promise<Person> {
  const body = { name: "a", scopes: ["read"], expires: new Date(Date.now() + 3_600_000).toISOString() };
  const { token } = await person.does("tokens.create", { body });
  return new Person(service().url, { token, account: person.account });
}

/** An open inspection by the inspector's firm. */
async function open({ vehicle, statement }: Pick<Published, "vehicle" | "statement">, buyer = world.buyer) {
  const id = await order(buyer, world.inspector, vehicle, statement);
  await acceptOrder(world.inspector, id);
  const report = await world.inspector.does("reports.inspect", { path: { id }, body: header });
  return { order: id, report: report.id };
}

async function blindOf(report: string): Promise<(boolean | undefined)[]> {
  const { findings } = (await world.inspector.does("reports.get", { path: { id: report } })).report;
  return findings.map(({ blind }) => blind);
}

/** The inspector copies what the dealer stated. @returns what each finding says of its being blind */
async function copy(report: string, findings: readonly FindingInput[] = stated) {
  await write(world.inspector, report, findings);
  return blindOf(report);
}
const none = stated.map(() => false);
const all = stated.map(() => true);

const share = async (vehicle: string): Promise<string> => {
  const expires = new Date(Date.now() + 86_400_000).toISOString();
  const body = { name: "A friend", expires };
  return (await world.dealer.does("shareLinks.create", { path: { id: vehicle }, body })).token;
};

test("who was shown nothing finds everything blind", async () => {
  const published = await publish(world.dealer);
  expect(await copy((await open(published)).report)).toEqual(all);
});

test("nothing is blind that was read through a share link before the firm was asked, by session or by token", async () => {
  for (const reader of [world.inspector, await anew(world.inspector)]) {
    const published = await publish(world.dealer);
    await reader.does("sharedStatements.get", { path: { token: await share(published.vehicle) } });
    expect(await copy((await open(published)).report)).toEqual(none);
  }
});

test("nothing is blind that was read in a comparison of the car's statements", async () => {
  const published = await publish(world.dealer);
  const second = await reseal(world.dealer, published.report, horn("no"));
  const pair = { a: published.statement, b: second.id };
  const path = { id: published.vehicle };
  const { id } = await world.inspector.does("comparisons.create", { path, body: pair });
  await world.inspector.does("comparisons.document", { path: { id } });
  expect(await copy((await open({ ...published, statement: second.id })).report)).toEqual(none);
});

test("what one report has opened is not blind in another one on the same car", async () => {
  const published = await publish(world.dealer);
  const first = await open(published);
  await write(world.inspector, first.report, [horn("no"), headliner("spent")]);
  const seen = await world.inspector.does("reportVersions.document", { path: { id: published.statement } });
  expect(seen.findings).toHaveLength(2);
  await world.buyer.does("orders.cancel", {
    path: { id: first.order },
    revision: 2,
    body: { reason: "Bought another." },
  });
  const second = await open(published, world.otherBuyer);
  const findings = [horn("yes"), headliner("light-wear"), treadDepth("left-front", 8, 8, 8)];
  await write(world.inspector, second.report, findings);
  const draft = await world.inspector.does("reports.get", { path: { id: second.report } });
  expect(draft.report.findings.map(({ item, blind }) => [item, blind])).toEqual(
    expect.arrayContaining([
      ["electrics.horn", false],
      ["interior.headliner", false],
      ["wheels.tread-depth", true],
    ]),
  );
});

test("a place opens only when every open order of the firm on the car has answered it", async () => {
  const published = await publish(world.dealer);
  const [first, second] = [await open(published), await open(published, world.otherBuyer)];
  const read = () => world.inspector.does("reportVersions.document", { path: { id: published.statement } });
  await write(world.inspector, first.report, stated);
  expect((await read()).findings).toEqual([]);
  expect(await copy(second.report)).toEqual(all);
  expect((await read()).findings).toHaveLength(stated.length);
});

test("not seen, not known and nothing found or denied open no place; what is answered after them is blind", async () => {
  const published = await publish(world.dealer);
  const { report } = await open(published);
  const notSeen = { kind: "not-seen", reason: "no-time" } as const;
  await write(world.inspector, report, [
    { ...treadDepth("left-front", 8), answer: notSeen, basis: "seen" },
    { item: "interior.headliner", answer: notSeen },
    { item: "electrics.horn", answer: { kind: "working", value: "not-known" } },
  ]);
  const seen = await world.inspector.does("reportVersions.document", { path: { id: published.statement } });
  expect(seen.findings).toEqual([]);
  const change = { operations: [setOperation(headliner("light-wear"), 1), setOperation(horn("yes"), 1)] };
  await world.inspector.does("reports.operate", { path: { id: report }, body: change });
  expect(await blindOf(report)).toEqual([true, true, true]);
});

test("an answer taken back after its place was read is not blind when it comes again", async () => {
  const published = await publish(world.dealer);
  const { report } = await open(published);
  await write(world.inspector, report, [horn("no")]);
  await world.inspector.does("reportVersions.document", { path: { id: published.statement } });
  const { id } = setOperation(horn("no"));
  const remove = { id, op: "remove", item: "electrics.horn", position: "", base: 1 };
  const path = { id: report };
  await world.inspector.does("reports.operate", { path, body: { operations: [remove] } });
  await world.inspector.does("reports.operate", {
    path,
    body: { operations: [setOperation(horn("no"), 2)] },
  });
  expect(await blindOf(report)).toEqual([false]);
});

test("a note added later takes nothing from an answer that was blind; another answer is judged anew", async () => {
  const published = await publish(world.dealer);
  const { report } = await open(published);
  await write(world.inspector, report, [horn("no"), headliner("spent")]);
  await world.inspector.does("reportVersions.document", { path: { id: published.statement } });
  const noted = { ...headliner("spent"), note: "Torn at the rear window." };
  const operations = [setOperation(noted, 1), setOperation(horn("yes"), 1)];
  await world.inspector.does("reports.operate", { path: { id: report }, body: { operations } });
  const { findings } = (await world.inspector.does("reports.get", { path: { id: report } })).report;
  expect(Object.fromEntries(findings.map(({ item, blind }) => [item, blind]))).toEqual({
    "electrics.horn": false,
    "interior.headliner": true,
  });
});

/** Somebody who reads by another membership, and is of the inspector's firm when it commits, or was when it was read. */
const readers: [string, () => Promise<Published>][] = [
  [
    "a buyer, who joined the firm later",
    async () => {
      const published = await publish(world.dealer);
      await world.otherBuyer.does("reportVersions.document", { path: { id: published.statement } });
      await join(world.otherBuyer.account, world.inspector.organization);
      return published;
    },
  ],
  [
    "a member, who left the firm since",
    async () => {
      const published = await publish(world.dealer);
      const colleague = await joinPerson(service(), world.inspector.organization, "Colin");
      await colleague.does("reportVersions.document", { path: { id: published.statement } });
      await leave(colleague.account, world.inspector.organization);
      return published;
    },
  ],
  [
    "a dealer's writer, who read the draft and changed over to the firm",
    async () => {
      const published = await publish(world.dealer);
      const writer = await joinPerson(service(), world.dealer.organization, "Wanda");
      await writer.does("reports.get", { path: { id: published.report } });
      await leave(writer.account, world.dealer.organization);
      await join(writer.account, world.inspector.organization);
      return published;
    },
  ],
  [
    "a dealer's writer, who was answered with a conflict and changed over to the firm",
    async () => {
      const published = await publish(world.dealer);
      await world.dealer.does("reports.revise", { path: { id: published.report } });
      const writer = await joinPerson(service(), world.dealer.organization, "Wanda");
      const body = { operations: [setOperation(horn("no"), 9)] };
      const { results } = await writer.does("reports.operate", { path: { id: published.report }, body });
      expect(results[0]).toMatchObject({ result: "conflict", current: { answer: { value: "yes" } } });
      await leave(writer.account, world.dealer.organization);
      await join(writer.account, world.inspector.organization);
      return published;
    },
  ],
  [
    "a member who read the dealer's words on the car's page",
    async () => {
      const body = { organization: world.dealer.organization, vehicle: car, words: "A horn that sounds." };
      const { id: vehicle } = await world.dealer.does("vehicles.create", { body });
      const { id } = await world.dealer.does("reports.state", { path: { id: vehicle }, body: header });
      const sealed = await seal(world.dealer, id, await write(world.dealer, id, stated));
      const detail = await world.inspector.does("vehicles.get", { path: { id: vehicle } });
      expect(detail.words).toBe("A horn that sounds.");
      return { vehicle, report: id, statement: sealed.id };
    },
  ],
];
test.each(readers)("nothing is blind that was read by %s", async (_, read) => {
  expect(await copy((await open(await read())).report)).toEqual(none);
});

/** What somebody read of a case of their own, as a buyer, before they belonged to the firm. */
const cases: [string, readonly boolean[], (way: Awaited<ReturnType<typeof inspect>>) => Promise<unknown>][] =
  [
    [
      "a question's answer",
      [true, true, false, true],
      async ({ vehicle }) => {
        const { id } = await world.buyer.does("questions.create", {
          path: { id: vehicle },
          body: { item: "electrics.horn", text: "Does it sound?" },
        });
        const body = { finding: { answer: horn("yes").answer }, seal: true };
        await world.dealer.does("questions.answer", { path: { id }, revision: 1, body });
        await world.buyer.does("questions.list");
      },
    ],
    [
      "what was laid before the dealer",
      [true, true, false, true],
      async ({ comparison }) => {
        const path = { id: comparison };
        const entries = [entryAt(await readComparison(world.otherInspector, comparison), "electrics.horn")];
        const { items } = await world.buyer.does("releases.create", { path, body: { entries } });
        await world.buyer.does("releases.get", { path: { id: items[0]?.id ?? "" } });
      },
    ],
    [
      "a summary",
      none,
      async ({ comparison }) => {
        await summarize(world.buyer, comparison);
      },
    ],
  ];
test.each(cases)("what was read in %s is not blind", async (_, blind, read) => {
  const way = await inspect({ ...world, inspector: world.otherInspector });
  await read(way);
  await join(world.buyer.account, world.inspector.organization);
  const { statements } = await world.otherBuyer.does("vehicles.get", { path: { id: way.vehicle } });
  const { report } = await open(
    { vehicle: way.vehicle, statement: statements[0]?.id ?? "" },
    world.otherBuyer,
  );
  await write(world.inspector, report, stated);
  const draft = await world.inspector.does("reports.get", { path: { id: report } });
  const byPlace = new Map(draft.report.findings.map((each) => [`${each.item} ${each.position}`, each.blind]));
  expect(stated.map(({ item, position = "" }) => byPlace.get(`${item} ${position}`))).toEqual(blind);
});

test("in a list a firm gets neither the words nor the price of a car, and stays blind to it", async () => {
  const vehicle = await makeVehicle(world.dealer);
  const { revision } = await world.dealer.does("vehicles.get", { path: { id: vehicle } });
  const body = { words: "A horn that sounds.", asking: { minor: 2_450_000, currency: "USD" } };
  await world.dealer.does("vehicles.change", { path: { id: vehicle }, revision, body });
  const { id } = await world.dealer.does("reports.state", { path: { id: vehicle }, body: header });
  const sealed = await seal(world.dealer, id, await write(world.dealer, id, stated));
  expect((await world.inspector.does("vehicles.list")).items).toMatchObject([
    { id: vehicle, words: null, asking: null, withheld: true },
  ]);
  expect((await world.buyer.does("vehicles.list")).items).toMatchObject([{ ...body, withheld: false }]);
  const { report } = await open({ vehicle, statement: sealed.id });
  expect(await world.inspector.does("vehicles.get", { path: { id: vehicle } })).toMatchObject({
    words: null,
    asking: null,
    withheld: true,
  });
  expect(await copy(report)).toEqual(all);
});

test("what is read again is noted no second time, and is for a firm that its reader belongs to since", async () => {
  const vehicle = await makeVehicle(world.dealer);
  const path = { id: vehicle };
  const { revision } = await world.dealer.does("vehicles.get", { path });
  await world.dealer.does("vehicles.change", { path, revision, body: { words: "A horn that sounds." } });
  const { id } = await world.dealer.does("reports.state", { path, body: header });
  await seal(world.dealer, id, await write(world.dealer, id, stated));
  const reader = await anew(world.otherBuyer);
  const firms = async () => {
    await reader.does("vehicles.get", { path });
    const noted = await query<{ firm: string | null }>(
      service().databaseUrl,
      "SELECT organization_id AS firm FROM statement_exposure WHERE vehicle_id = $1 AND account_id = $2 ORDER BY shown_at",
      [vehicle, reader.account],
    );
    return noted.map(({ firm }) => firm);
  };
  expect(await firms()).toEqual([null]);
  expect(await firms()).toEqual([null]);
  await join(world.otherBuyer.account, world.otherInspector.organization);
  expect(await firms()).toEqual([null, world.otherInspector.organization]);
});

test("a share link that nobody signed in to opens again when the inspection is sealed", async () => {
  const published = await publish(world.dealer);
  const path = { token: await share(published.vehicle) };
  const { report } = await open(published);
  expect((await world.nobody.isRefused("sharedStatements.get", { path })).code).toBe("being-inspected");
  await world.otherBuyer.does("sharedStatements.get", { path });
  await seal(world.inspector, report, await write(world.inspector, report, inspected));
  await world.nobody.does("sharedStatements.get", { path });
  const { items } = await world.dealer.does("shareLinks.list", { path: { id: published.vehicle } });
  expect(items[0]?.reads).toBe(2);
  const noted = await query<{ account_id: string | null }>(
    service().databaseUrl,
    "SELECT account_id FROM statement_exposure WHERE share_link_id = $1 ORDER BY shown_at",
    [items[0]?.id],
  );
  expect(noted.map(({ account_id }) => account_id)).toEqual([world.otherBuyer.account, null]);
});

test("of a withdrawn car a buyer keeps the version their order froze, and no other", async () => {
  const published = await publish(world.dealer);
  await order(world.buyer, world.inspector, published.vehicle, published.statement);
  const later = await reseal(world.dealer, published.report, horn("no"));
  const path = { id: published.vehicle };
  const { revision } = await world.dealer.does("listing.get", { path });
  await world.dealer.does("listing.withdraw", { path, revision, body: { reason: "Sold." } });
  const { statements } = await world.buyer.does("vehicles.get", { path });
  expect(statements.map(({ id }) => id)).toEqual([published.statement]);
  const read = (id: string) => world.buyer.ask("reportVersions.document", { path: { id } });
  expect([(await read(published.statement)).status, (await read(later.id)).status]).toEqual([200, 404]);
  expect((await world.buyer.does("listing.get", { path })).statement?.id).toBe(published.statement);
});

test("of a withdrawn car a cancelled order leaves its buyer the version it froze, and the firm its own papers alone", async () => {
  const published = await publish(world.dealer);
  const { report, order: id } = await open(published);
  await write(world.inspector, report, [horn("no")]);
  await world.buyer.does("orders.cancel", { path: { id }, revision: 2, body: { reason: "Bought another." } });
  const later = await reseal(world.dealer, published.report, headliner("spent"));
  const path = { id: published.vehicle };
  const { revision } = await world.dealer.does("listing.get", { path });
  await world.dealer.does("listing.withdraw", { path, revision, body: { reason: "Sold." } });

  const statusOf = async (person: typeof world.buyer, version: string) =>
    (await person.ask("reportVersions.document", { path: { id: version } })).status;
  expect(await statusOf(world.buyer, published.statement)).toBe(200);
  expect(await statusOf(world.buyer, later.id)).toBe(404);
  expect((await world.buyer.does("vehicles.get", { path })).statements.map((each) => each.id)).toEqual([
    published.statement,
  ]);
  expect(await statusOf(world.inspector, published.statement)).toBe(404);
  expect(await statusOf(world.inspector, later.id)).toBe(404);
  expect((await world.inspector.isRefused("vehicles.get", { path })).code).toBe("not-found");
  const kept = await world.inspector.does("reports.get", { path: { id: report } });
  expect(kept.report.findings.map(({ item }) => item)).toEqual(["electrics.horn"]);
  const refused = await world.inspector.isRefused("reports.seal", {
    path: { id: report },
    revision: kept.revision,
  });
  expect(refused.code).toBe("order-state");
});
