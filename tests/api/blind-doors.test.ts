import { type Access, accessTable, type RouteId, routeIds } from "@evenhand/shared/access";
import type { FindingInput } from "@evenhand/shared/finding";
import { beforeAll, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { addressOf, Person } from "./setup/person.ts";
import { send } from "./setup/send.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  car,
  entryAt,
  headliner,
  header,
  horn,
  inspected,
  order,
  readComparison,
  reseal,
  seal,
  setOperation,
  summarize,
  treadDepth,
  write,
} from "./setup/story.ts";
import { joinPerson, makeWorld, type World } from "./setup/world.ts";

const service = useService({ emptyBetween: false });

/** What stands in the statement, the dealer's words and all that is made of them, and nowhere else. */
const secret = "zebrawood";
const telltale = /zebrawood|7\.125|7125313|intermittent|heavy-wear/;
const price = { minor: 7_125_313, currency: "USD" };
const telling: FindingInput[] = [
  { ...treadDepth("left-front", 7.125, 7.125, 7.125), note: `${secret} tires`, person: "rowan" },
  { ...horn("intermittent"), note: secret },
  { ...headliner("heavy-wear"), note: secret },
];
const tellingHeader = {
  ...header,
  terms: `${secret} terms`,
  instruments: header.instruments.map((each) => ({ ...each, name: `${secret} gauge` })),
  persons: header.persons.map((each) => ({ ...each, name: `${secret} person` })),
};

type Scene = {
  world: World;
  vehicle: string;
  report: string;
  comparison: string;
  summary: string;
  inspection: string;
  token: string;
  ids: readonly string[];
};
let scene: Scene;

/** The car with everything a service can hold about it: versions, a question, comparisons, a release, a summary, a counter. */
async function tellEverything(world: World) {
  const { dealer, buyer } = world;
  const { id: vehicle } = await dealer.does("vehicles.create", {
    body: { organization: dealer.organization, vehicle: car, asking: price, words: `As fine as ${secret}.` },
  });
  const begun = await dealer.does("reports.state", { path: { id: vehicle }, body: tellingHeader });
  const first = await seal(dealer, begun.id, await write(dealer, begun.id, telling));
  const acquisition = await dealer.does("reports.state", {
    path: { id: vehicle },
    body: { ...tellingHeader, kind: "acquisition" },
  });
  await write(dealer, acquisition.id, telling);
  const again = { ...horn("intermittent"), note: `${secret} again` };
  const second = await reseal(dealer, begun.id, again);
  await dealer.does("comparisons.create", { path: { id: vehicle }, body: { a: first.id, b: second.id } });
  const question = await buyer.does("questions.create", {
    path: { id: vehicle },
    body: { item: "electrics.horn", text: "Does it sound?" },
  });
  const answer = { finding: { answer: horn("intermittent").answer, note: `${secret} answer` }, seal: true };
  await dealer.does("questions.answer", { path: { id: question.id }, revision: 1, body: answer });
  return { vehicle, report: begun.id };
}

/** Another firm has inspected it, and the buyer of that inspection has gone on to a counter-offer. */
async function decideOnIt({ buyer, otherInspector, dealer }: World, vehicle: string) {
  const { statements } = await buyer.does("vehicles.get", { path: { id: vehicle } });
  const ordered = await order(buyer, otherInspector, vehicle, statements[0]?.id ?? "");
  await acceptOrder(otherInspector, ordered);
  const { id } = await otherInspector.does("reports.inspect", { path: { id: ordered }, body: header });
  const sealed = await seal(otherInspector, id, await write(otherInspector, id, inspected));
  const comparison = sealed.comparison ?? "";
  const entry = entryAt(await readComparison(buyer, comparison), "wheels.tread-depth", "left-front");
  await buyer.does("releases.create", { path: { id: comparison }, body: { entries: [entry] } });
  const { id: summary, hash } = await summarize(buyer, comparison);
  const counter = { decision: "counter", hash, price, conditions: `A horn, and no ${secret}.` };
  await buyer.does("summaries.decide", { path: { id: summary }, body: counter });
  const path = { id: vehicle };
  const { revision } = await dealer.does("listing.get", { path });
  await dealer.does("listing.withdraw", { path, revision, body: { reason: `${secret} reason` } });
  await dealer.does("listing.publish", { path, revision: revision + 1, body: {} });
  return { comparison, summary };
}

const tables = [
  "vehicle",
  "inspection_order",
  "buyer_case",
  "report",
  "report_version",
  "comparison",
  "release",
  "summary",
  "decision",
  "question",
];

beforeAll(async () => {
  const world = await makeWorld(service());
  const told = await tellEverything(world);
  const decided = await decideOnIt(world, told.vehicle);
  const { token } = await world.dealer.does("shareLinks.create", {
    path: { id: told.vehicle },
    body: { name: "A friend", expires: new Date(Date.now() + 86_400_000).toISOString() },
  });
  const { statements } = await world.otherBuyer.does("vehicles.get", { path: { id: told.vehicle } });
  const ordered = await order(world.otherBuyer, world.inspector, told.vehicle, statements[0]?.id ?? "");
  await acceptOrder(world.inspector, ordered);
  const begun = await world.inspector.does("reports.inspect", { path: { id: ordered }, body: header });
  const notSeen = { kind: "not-seen", reason: "no-time" } as const;
  await write(
    world.inspector,
    begun.id,
    telling.map(({ item, position }) => ({ item, position, answer: notSeen })),
  );
  const rows = await query<{ id: string }>(
    service().databaseUrl,
    tables.map((table) => `SELECT id FROM ${table}`).join(" UNION ALL "),
  );
  const ids = [...rows.map(({ id }) => id), world.dealer.organization, world.inspector.organization];
  scene = { world, ...told, ...decided, token, inspection: begun.id, ids };
}, 120_000);

const reads = routeIds.filter((route) => accessTable[route].method === "GET");

type Asking = { readonly path?: Record<string, string>; readonly query?: Record<string, string> };

/** Every way to ask a reading route: for everything there is, whatever kind of thing it asks for. */
const askings = (route: RouteId): Asking[] => {
  const { path }: Access = accessTable[route];
  if (path.includes(":token")) return [{ path: { token: scene.token } }];
  if (path.includes(":id")) return scene.ids.map((id) => ({ path: { id } }));
  return [{}, { query: { vehicle: scene.vehicle } }, { query: { q: "Corvane" } }];
};

/** As it comes, without the contract it is held against elsewhere: this asks many thousand times. */
const answerTo = (person: Person, route: RouteId, { path, query: words }: Asking) =>
  send(person.url, {
    method: "GET",
    path: `${addressOf(route, path)}${words === undefined ? "" : `?${new URLSearchParams(words).toString()}`}`,
    headers: { origin: person.url, ...person.credentials },
  });

/** The routes at which what was told reached this person. */
async function reached(person: Person): Promise<RouteId[]> {
  const found: RouteId[] = [];
  for (const route of reads) {
    const answers = await Promise.all(askings(route).map((asked) => answerTo(person, route, asked)));
    if (answers.some(({ text }) => telltale.test(text))) found.push(route);
  }
  return found;
}

/** Somebody of the inspector's firm who also belongs to the other's. */
async function alsoOf(other: Person, name: string, role: "admin" | "member"): Promise<Person> {
  const person = await joinPerson(service(), scene.world.inspector.organization, name, role);
  await query(service().databaseUrl, "INSERT INTO membership VALUES ($1, $2, 'admin', now())", [
    person.account,
    other.organization,
  ]);
  return person;
}

const doors: RouteId[] = [
  "comparisons.answer",
  "comparisons.cost",
  "comparisons.document",
  "decisions.get",
  "decisions.list",
  "exports.get",
  "landedCost.get",
  "listing.get",
  "questions.get",
  "questions.list",
  "releases.get",
  "releases.list",
  "reportVersions.document",
  "reports.get",
  "sharedStatements.get",
  "summaries.document",
  "summaries.get",
  "vehicles.get",
  "vehicles.list",
];

test("the doors through which something of a statement can be read are these, tried over every reading route", async () => {
  const { dealer, buyer } = scene.world;
  const found = new Set([...(await reached(dealer)), ...(await reached(buyer))]);
  expect([...found].toSorted()).toEqual(doors);
});

test.each<[string, keyof World | null, "admin" | "member"]>([
  ["an administrator of the firm", null, "admin"],
  ["a member of the firm", null, "member"],
  ["a member who also belongs to the dealer", "dealer", "member"],
  ["an administrator who also belongs to the dealer", "dealer", "admin"],
  ["a member who also belongs to another dealer", "otherDealer", "member"],
  ["a member who also belongs to a buyer who has everything", "buyer", "member"],
  ["a member who also belongs to the buyer who ordered", "otherBuyer", "member"],
  ["a member who also belongs to the firm that is done with the car", "otherInspector", "member"],
  ["a member who is also an operator", "operator", "member"],
])("0 bytes of it reach %s before they commit", async (name, other, role) => {
  const { inspector } = scene.world;
  const person =
    other === null
      ? await joinPerson(service(), inspector.organization, name, role)
      : await alsoOf(scene.world[other], name, role);
  expect(await reached(person)).toEqual([]);
});

test("nor a program of the firm's, nor whoever opens the share link without saying who they are", async () => {
  const { inspector, nobody } = scene.world;
  const body = { name: "a", scopes: ["read"], expires: new Date(Date.now() + 3_600_000).toISOString() };
  const { token } = await inspector.does("tokens.create", { body });
  expect(await reached(new Person(service().url, { token }))).toEqual([]);
  const opened = await nobody.isRefused("sharedStatements.get", { path: { token: scene.token } });
  expect(opened).toMatchObject({ code: "being-inspected", status: 409 });
});

test("nor do changes tell it: a conflict, a refusal or an answer of a second membership", async () => {
  const { world, report, comparison, vehicle, summary } = scene;
  const dealing = await alsoOf(world.dealer, "Dora Twice", "member");
  const buying = await alsoOf(world.buyer, "Bert Twice", "member");
  const stale = { operations: [setOperation(horn("no"), 7)] };
  const asked = [
    await dealing.ask("reports.operate", { path: { id: report }, body: stale }),
    await dealing.ask("reports.revise", { path: { id: report } }),
    await dealing.ask("reports.seal", { path: { id: report }, revision: 1 }),
    await buying.ask("releases.create", { path: { id: comparison }, body: { entries: [0] } }),
    await buying.ask("summaries.create", { path: { id: comparison }, body: {} }),
    await buying.ask("summaries.decide", {
      path: { id: summary },
      body: { decision: "decline", hash: "0".repeat(64) },
    }),
  ];
  expect(asked.map(({ status }) => status)).toEqual([404, 404, 404, 404, 404, 404]);
  const [a, b] = (await world.buyer.does("vehicles.get", { path: { id: vehicle } })).statements;
  const pair = { path: { id: vehicle }, body: { a: a?.id, b: b?.id } };
  expect((await buying.isRefused("comparisons.create", pair)).code).toBe("not-found");
});

test("no mail and no notice holds any of it", async () => {
  const kept = await query<{ text: string }>(
    service().databaseUrl,
    "SELECT row_to_json(m)::text AS text FROM mail m UNION ALL SELECT row_to_json(n)::text FROM notice n",
  );
  expect(kept.length).toBeGreaterThan(5);
  expect(kept.filter(({ text }) => telltale.test(text))).toEqual([]);
});

test("not seen has opened nothing; an answer opens its own place, and that it was shown is kept", async () => {
  const { inspector, otherBuyer } = scene.world;
  const shown = () =>
    query<{ item: string; door: string }>(
      service().databaseUrl,
      "SELECT item, door FROM statement_exposure WHERE organization_id = $1",
      [inspector.organization],
    );
  expect(await shown()).toEqual([]);
  const { statements } = await otherBuyer.does("vehicles.get", { path: { id: scene.vehicle } });
  const path = { id: statements[0]?.id ?? "" };
  await inspector.does("reports.operate", {
    path: { id: scene.inspection },
    body: { operations: [setOperation(horn("no"), 1)] },
  });
  const { findings } = await inspector.does("reportVersions.document", { path });
  expect(findings.map(({ item }) => item)).toEqual(["electrics.horn"]);
  expect(await shown()).toEqual([{ item: "electrics.horn", door: "statement" }]);
});
