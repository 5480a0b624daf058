import { v7 } from "uuid";
import { hashSecret, newSecret } from "../../../apps/api/src/platform/auth/secret.ts";
import { query } from "./database.ts";
import { Person } from "./person.ts";
import type { Service } from "./service.ts";
import {
  acceptOrder,
  draftStatement,
  entryAt,
  header,
  horn,
  inspect,
  inspected,
  type Inspected,
  makeVehicle,
  order,
  publish,
  readComparison,
  reseal,
  summarize,
  write,
} from "./story.ts";
import { makeWorld, type World } from "./world.ts";

/** Objects of every kind, prepared so that each route has something it can be asked about. */
export type Scene = {
  service: Service;
  world: World;
  way: Inspected;
  /** Two statements on one car, compared. */
  statements: { vehicle: string; first: string; second: string; comparison: string };
  /** A car with nothing on it; one with a draft; one with a draft to seal. */
  bare: string;
  bareAgain: string;
  draft: { vehicle: string; id: string; revision: number };
  toSeal: { id: string; revision: number };
  sealedReport: string;
  inspectionDraft: string;
  inspectionToSeal: { id: string; revision: number };
  /** Orders that wait for each move; a listed car to order on. */
  orders: { toAccept: string; toDecline: string; toCancel: string; toInspect: string };
  /** A car whose inspection is begun, of which the dealer knows nothing. */
  inspected: string;
  listed: { vehicle: string; statement: string };
  entries: { horn: number; tire: number };
  release: string;
  /** A contested item that the buyer has put to the inspector. */
  askedRelease: string;
  /** Of the same car, and not answered. */
  counterToWithdraw: string;
  summaries: { seen: string; toDecide: string; hash: string };
  counter: string;
};

/** The same account with a session of its own. */
export async function withSession(
  { url, databaseUrl }: Service,
  person: Person,
): Promise<{ person: Person; session: string }> {
  const [session, secret] = [v7(), newSecret()];
  await query(
    databaseUrl,
    `INSERT INTO session (id, account_id, token_hash, device, created_at, last_seen_at, expires_at)
     VALUES ($1, $2, $3, 'another', now(), now(), now() + interval '1 day')`,
    [session, person.account, Buffer.from(hashSecret(secret))],
  );
  const { account, organization } = person;
  return { person: new Person(url, { account, organization, cookie: secret }), session };
}

/** A line that the dealer contested and the buyer put to the inspector, on a car of its own. */
export async function askedLine(world: World): Promise<{ line: string; comparison: string }> {
  const { buyer, dealer } = world;
  const { comparison } = await inspect(world);
  const entry = entryAt(await readComparison(buyer, comparison), "electrics.horn");
  const path = { id: comparison };
  const { items } = await buyer.does("releases.create", { path, body: { entries: [entry] } });
  const line = items[0]?.id ?? "";
  await dealer.does("releases.move", { body: { lines: items, move: "contest", words: "It sounds." } });
  await buyer.does("releases.move", { body: { lines: [{ id: line, revision: 2 }], move: "ask" } });
  return { line, comparison };
}

async function putToInspector(world: World): Promise<{ askedRelease: string; counterToWithdraw: string }> {
  const { buyer } = world;
  const { line, comparison } = await askedLine(world);
  const { id: summary, hash } = await summarize(buyer, comparison);
  const { id: counterToWithdraw } = await buyer.does("summaries.decide", {
    path: { id: summary },
    body: { decision: "counter", hash, conditions: "A horn that sounds." },
  });
  return { askedRelease: line, counterToWithdraw };
}

export async function setScene(service: Service): Promise<Scene> {
  const world = await makeWorld(service);
  const { dealer, buyer, inspector } = world;
  const way = await inspect(world);
  const orderOn = async () => {
    const { vehicle, statement } = await publish(dealer);
    return order(buyer, inspector, vehicle, statement);
  };
  const [bare, bareAgain] = [await makeVehicle(dealer), await makeVehicle(dealer)];
  const draftVehicle = await makeVehicle(dealer);
  const draft = { vehicle: draftVehicle, ...(await draftStatement(dealer, draftVehicle)) };
  const toSeal = await draftStatement(dealer, await makeVehicle(dealer));
  const sealedReport = (await publish(dealer)).report;
  const twice = await publish(dealer);
  const second = (await reseal(dealer, twice.report, horn("no"))).id;
  const pair = { a: twice.statement, b: second };
  const compared = await dealer.does("comparisons.create", { path: { id: twice.vehicle }, body: pair });
  const [toAccept, toDecline, toCancel, toInspect] = [
    await orderOn(),
    await orderOn(),
    await orderOn(),
    await orderOn(),
  ];
  await acceptOrder(inspector, toInspect);
  const beginInspection = async () => {
    const id = await orderOn();
    await acceptOrder(inspector, id);
    return (await inspector.does("reports.inspect", { path: { id }, body: header })).id;
  };
  const [inspectionDraft, begun] = [await beginInspection(), await beginInspection()];
  const inspectionToSeal = { id: begun, revision: await write(inspector, begun, inspected) };
  const begunOrder = await inspector.does("orders.get", { path: { id: toInspect } });
  const comparison = await readComparison(buyer, way.comparison);
  const entries = {
    horn: entryAt(comparison, "electrics.horn"),
    tire: entryAt(comparison, "wheels.tread-depth", "left-front"),
  };
  const made = await buyer.does("releases.create", {
    path: { id: way.comparison },
    body: { entries: [entries.horn] },
  });
  const put = await putToInspector(world);
  const [seen, toDecide, toCounter] = [
    await summarize(buyer, way.comparison),
    await summarize(buyer, way.comparison),
    await summarize(buyer, way.comparison),
  ];
  const counter = await buyer.does("summaries.decide", {
    path: { id: toCounter.id },
    body: { decision: "counter", hash: toCounter.hash, conditions: "A horn that sounds." },
  });
  return {
    service,
    world,
    way,
    statements: { vehicle: twice.vehicle, first: twice.statement, second, comparison: compared.id },
    bare,
    bareAgain,
    draft,
    toSeal,
    sealedReport,
    inspectionDraft,
    inspectionToSeal,
    orders: { toAccept, toDecline, toCancel, toInspect },
    inspected: begunOrder.vehicle.id,
    listed: await publish(dealer),
    entries,
    release: made.items[0]?.id ?? "",
    ...put,
    summaries: { seen: seen.id, toDecide: toDecide.id, hash: toDecide.hash },
    counter: counter.id,
  };
}

export { header };
