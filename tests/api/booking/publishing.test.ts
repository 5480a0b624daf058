import { beforeEach, describe, expect, test } from "vitest";
import sharp from "sharp";
import request from "supertest";
import { Arrivals } from "../../../apps/api/src/capabilities/evidence/arrivals.ts";
import { makeBookingWorld, type BookingWorld, monday, newClock } from "../setup/booking-story.ts";
import { query } from "../setup/database.ts";
import { send } from "../setup/evidence-story.ts";
import { photograph } from "../setup/pictures.ts";
import { useService } from "../setup/service.ts";
import {
  acceptOrder,
  draftStatement,
  entryAt,
  headliner,
  horn,
  inspect,
  makeVehicle,
  order,
  readComparison,
  reseal,
  seal,
} from "../setup/story.ts";

const clock = newClock();
const service = useService({ clock });
let world: BookingWorld;
beforeEach(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});
const later = (days: number) => new Date(clock.now().getTime() + days * 86_400_000);
const share = (vehicle: string) =>
  world.dealer.does("shareLinks.create", {
    path: { id: vehicle },
    body: { name: "Bea's brother", expires: later(30).toISOString() },
  });
/** A car of the dealer's, listed with a statement that has a photograph of the horn. */
async function publishWith(photo: Buffer): Promise<{ vehicle: string; statement: string }> {
  const vehicle = await makeVehicle(world.dealer);
  const draft = await draftStatement(world.dealer, vehicle);
  const file = await send(world.dealer, draft.id, photo, { item: "electrics.horn" });
  await service().app.get(Arrivals, { strict: false }).take(file);
  return { vehicle, statement: (await seal(world.dealer, draft.id, draft.revision)).id };
}
const open = (token: string) => world.nobody.ask("sharedStatements.get", { path: { token } });

test("the dealer withdraws and publishes again; the reason stays with the dealer", async () => {
  const path = { id: world.vehicle };
  const { revision } = await world.dealer.does("listing.get", { path });
  clock.set(later(1));
  await world.dealer.does("listing.withdraw", { path, revision, body: { reason: "In the paint shop." } });
  expect((await world.otherBuyer.ask("vehicles.get", { path })).status).toBe(404);
  clock.set(later(1));
  await world.dealer.does("listing.publish", { path, revision: revision + 1, body: {} });
  const { history, listed } = await world.buyer.does("listing.get", { path });
  expect(listed).toBe(true);
  expect(history.map(({ cause, reason }) => [cause, reason])).toEqual([
    ["sealed", null],
    ["withdrawn", null],
    ["published", null],
  ]);
  expect((await world.dealer.does("listing.get", { path })).history[1]?.reason).toBe("In the paint shop.");
});

test("an accepted fault withdraws the car until a statement says something else of that place", async () => {
  const way = await inspect(world);
  const path = { id: way.vehicle };
  const entry = entryAt(await readComparison(world.buyer, way.comparison), "electrics.horn");
  const { items } = await world.buyer.does("releases.create", {
    path: { id: way.comparison },
    body: { entries: [entry] },
  });
  clock.set(later(1));
  await world.dealer.does("releases.move", { body: { lines: items, move: "accept", words: "Dead." } });
  const seen = await world.dealer.does("listing.get", { path });
  expect(seen).toMatchObject({ listed: false, openFaults: [{ item: "electrics.horn", position: "" }] });
  const refused = await world.dealer.isRefused("listing.publish", {
    path,
    revision: seen.revision,
    body: {},
  });
  expect(refused).toMatchObject({ code: "faults-unanswered", openFaults: [{ item: "electrics.horn" }] });
  clock.set(later(1));
  await reseal(world.dealer, way.statementReport, headliner("even-wear"));
  expect((await world.dealer.does("listing.get", { path })).listed).toBe(false);
  clock.set(later(1));
  await reseal(world.dealer, way.statementReport, horn("no"));
  const answered = await world.dealer.does("listing.get", { path });
  expect([answered.listed, answered.openFaults]).toEqual([true, []]);
  expect((await world.buyer.does("listing.get", { path })).openFaults).toEqual([]);
});

describe("a share link", () => {
  test("shows a reader who is not signed in the published statement, and counts it", async () => {
    const { token, path } = await share(world.vehicle);
    expect(path).toBe(`/shared/${token}`);
    const { body } = await open(token);
    expect(body).toMatchObject({
      statement: { id: world.statement, version: 1 },
      document: { kind: "statement" },
    });
    const { items } = await world.dealer.does("shareLinks.list", { path: { id: world.vehicle } });
    expect(items).toMatchObject([{ name: "Bea's brother", reads: 1, revokedAt: null }]);
    const [row] = await query<{ text: string }>(
      service().databaseUrl,
      "SELECT row_to_json(s)::text AS text FROM share_link s",
    );
    expect(row?.text).not.toContain(token);
  });

  test("shows the statement's photographs as copies, under the same conditions, and those of no other car", async () => {
    const photo = await photograph();
    const { statement, vehicle } = await publishWith(photo);
    const [one, other] = [await share(vehicle), await share(world.vehicle)];
    const { body } = await open(one.token);
    expect(body.pictures).toMatchObject([{ item: "electrics.horn", position: "", width: 1600 }]);
    expect((await open(other.token)).body.pictures).toEqual([]);
    const id = body.pictures[0]?.id ?? "";
    const see = (token: string) => world.nobody.ask("sharedStatements.small", { path: { token, id } });
    const seen = await see(one.token);
    expect([seen.status, seen.headers["content-type"]]).toEqual([200, "image/webp"]);
    expect((await sharp(seen.body).metadata()).exif).toBeUndefined();
    expect((await see(other.token)).status).toBe(404);
    const orderId = await order(world.buyer, world.inspector, vehicle, statement);
    await acceptOrder(world.inspector, orderId);
    expect((await see(one.token)).status).toBe(404);
    const ofInspector = await world.inspector.ask("sharedStatements.small", {
      path: { token: one.token, id },
    });
    expect(ofInspector.status).toBe(404);
    await world.dealer.does("shareLinks.revoke", { path: { id: one.id } });
    expect((await see(one.token)).status).toBe(404);
  });

  test("is closed when revoked, when it has expired, and while the car is withdrawn", async () => {
    const [first, second] = [await share(world.vehicle), await share(world.vehicle)];
    await world.dealer.does("shareLinks.revoke", { path: { id: first.id } });
    expect((await open(first.token)).status).toBe(404);
    const { revision } = await world.dealer.does("listing.get", { path: { id: world.vehicle } });
    const gone = { path: { id: world.vehicle }, revision, body: { reason: "Sold." } };
    await world.dealer.does("listing.withdraw", gone);
    expect((await open(second.token)).status).toBe(404);
    await world.dealer.does("listing.publish", {
      path: { id: world.vehicle },
      revision: revision + 1,
      body: {},
    });
    expect((await open(second.token)).status).toBe(200);
    clock.set(later(31));
    expect((await open(second.token)).status).toBe(404);
  });

  test("does not open for an inspector who must not know yet what the statement says", async () => {
    const { token } = await share(world.vehicle);
    await acceptOrder(
      world.inspector,
      await order(world.buyer, world.inspector, world.vehicle, world.statement),
    );
    const asked = (person: BookingWorld["buyer"]) =>
      request(service().url).get(`/api/v1/shared-statements/${token}`).set(person.credentials);
    expect((await asked(world.inspector)).status).toBe(404);
    expect((await asked(world.otherInspector)).status).toBe(200);
  });

  test("lasts at most a year", async () => {
    const body = { name: "For ever", expires: later(400).toISOString() };
    const refused = await world.dealer.isRefused("shareLinks.create", { path: { id: world.vehicle }, body });
    expect(refused.code).toBe("expiry-too-far");
  });
});

const ask = (body: object = {}) =>
  world.buyer.does("questions.create", {
    path: { id: world.vehicle },
    body: { item: "electrics.horn", text: "Does it sound?", ...body },
  });

describe("a question", () => {
  const finding = { answer: { kind: "working", value: "no" }, firmness: "hedged" };

  test("in draft is the buyer's alone", async () => {
    const { id } = await ask({ send: false });
    expect((await world.dealer.isRefused("questions.get", { path: { id } })).code).toBe("not-found");
    await world.buyer.does("questions.change", { path: { id }, revision: 1, body: { move: "send" } });
    expect(await world.dealer.does("questions.get", { path: { id } })).toMatchObject({ state: "asked" });
  });

  test("is answered by a finding with its firmness, which the buyer reads once it is sealed", async () => {
    const { id } = await ask();
    const path = { id };
    await world.dealer.does("questions.answer", { path, revision: 1, body: { finding, base: 1 } });
    expect(await world.dealer.does("questions.get", { path })).toMatchObject({ state: "answered", finding });
    expect(await world.buyer.does("questions.get", { path })).toMatchObject({
      state: "answered",
      finding: null,
    });
    const { drafts } = await world.dealer.does("vehicles.get", { path: { id: world.vehicle } });
    const [draft] = drafts;
    await world.dealer.does("reports.seal", {
      path: { id: draft?.id ?? "" },
      revision: draft?.revision ?? 0,
    });
    const seen = await world.buyer.does("questions.get", { path });
    expect(seen).toMatchObject({ state: "published", finding, statement: { version: 2 } });
  });

  test("can be answered and sealed in one, also by a dealer who has no draft open to read a revision in", async () => {
    const { id } = await ask();
    const body = { finding, seal: true };
    await world.dealer.does("questions.answer", { path: { id }, revision: 1, body });
    expect(await world.buyer.does("questions.get", { path: { id } })).toMatchObject({
      state: "published",
      finding,
    });
  });

  test("about a place the sheet does not have, and an answer that is no finding, are refused by name", async () => {
    const wrong = await world.buyer.isRefused("questions.create", {
      path: { id: world.vehicle },
      body: { item: "electrics.horn", position: "left-front", text: "Does it sound?" },
    });
    expect(wrong.problems).toMatchObject([{ at: "/position" }]);
    const { id } = await ask();
    const body = { finding: { answer: { kind: "grade", scale: "house", value: "spent" } }, base: 1 };
    const refused = await world.dealer.isRefused("questions.answer", { path: { id }, revision: 1, body });
    expect(refused.code).toBe("invalid-fields");
    expect(await world.dealer.does("questions.get", { path: { id } })).toMatchObject({ state: "asked" });
  });

  test("is nobody else's", async () => {
    const { id } = await ask();
    for (const person of [world.otherBuyer, world.otherDealer])
      expect((await person.isRefused("questions.get", { path: { id } })).code).toBe("not-found");
  });
});
