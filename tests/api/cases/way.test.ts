import { beforeAll, expect, test } from "vitest";
import { type BookingWorld, hold, makeBookingWorld, monday, move, newClock } from "../setup/booking-story.ts";
import { caseOn, home, standingOn } from "../setup/homes.ts";
import type { Person } from "../setup/person.ts";
import { useService } from "../setup/service.ts";
import { entryAt, header, inspected, readComparison, seal, summarize, write } from "../setup/story.ts";

/** One case from the first question to a decision, as each party's first screen has it. The steps follow one another. */
const clock = newClock();
const service = useService({ clock, emptyBetween: false });
let world: BookingWorld;
beforeAll(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
});

/** How the case stands with buyer, dealer and inspector. */
const standings = async (): Promise<string[]> =>
  Promise.all([world.buyer, world.dealer, world.inspector].map((who) => standingOn(who, world.vehicle)));
const did: Record<"question" | "visit" | "order" | "draft" | "comparison" | "release", string> = {
  question: "",
  visit: "",
  order: "",
  draft: "",
  comparison: "",
  release: "",
};

/** The case as one of the three has it. */
const caseOf = async (who: Person) =>
  who.does("cases.get", { path: { id: (await caseOn(who, world.vehicle))?.id ?? "" } });
const mattersTo = async (who: Person) =>
  (await caseOf(who)).matters.map(({ id, state, lines }) => `${id} ${state} ${lines}`);

test("nothing is a case before a buyer begins something", async () => {
  expect(await standings()).toEqual(["none", "none", "none"]);
});

test("a question in draft is the buyer's alone", async () => {
  const body = { item: "electrics.horn", text: "Does it sound?", send: false };
  did.question = (await world.buyer.does("questions.create", { path: { id: world.vehicle }, body })).id;
  expect(await standings()).toEqual(["yours: ask, send-question of the buyer", "none", "none"]);
});

test("once sent it is the dealer's to answer, and the buyer can go on meanwhile", async () => {
  await world.buyer.does("questions.change", {
    path: { id: did.question },
    revision: 1,
    body: { move: "send" },
  });
  expect(await standings()).toEqual([
    "yours: ask, choose-brief of the buyer",
    "yours: ask, answer-question of the dealer",
    "none",
  ]);
});

test("an answer in a draft waits for the dealer's seal; sealed, it waits for nobody", async () => {
  const body = { finding: { answer: { kind: "working", value: "yes" } }, seal: false };
  await world.dealer.does("questions.answer", { path: { id: did.question }, revision: 2, body });
  expect(await standingOn(world.dealer, world.vehicle)).toBe("yours: ask, publish-answer of the dealer");
  const row = await caseOn(world.dealer, world.vehicle);
  const draft = await world.dealer.does("reports.get", { path: { id: row?.standing.next?.subject ?? "" } });
  await seal(world.dealer, world.report, draft.revision);
  expect(await standings()).toEqual(["yours: book, choose-brief of the buyer", "rest: ask", "none"]);
});

test("an hour held, asked for, accepted, confirmed is each time another's turn, with its deadline", async () => {
  did.visit = await hold(world.buyer, world.vehicle);
  const held = await caseOn(world.buyer, world.vehicle);
  const path = { id: did.visit };
  const seen = await world.buyer.does("appointments.get", { path });
  expect(held?.standing.next).toMatchObject({
    step: "request-hour",
    until: seen.deadline,
    subject: did.visit,
  });
  expect(await standings()).toEqual(["yours: book, request-hour of the buyer", "rest: ask", "none"]);
  await move(service(), world.buyer, "appointments.request", did.visit, { terms: seen.terms.version });
  expect(await standings()).toEqual([
    "others: book, accept-hour of the inspector",
    "rest: ask",
    "yours: book, accept-hour of the inspector",
  ]);
  expect((await caseOn(world.inspector, world.vehicle))?.buyer).toBeNull();
  await move(service(), world.inspector, "appointments.accept", did.visit, { independent: true });
  expect(await standings()).toEqual([
    "others: book, give-access of the dealer",
    "yours: book, give-access of the dealer",
    "others: book, give-access of the dealer",
  ]);
  expect((await caseOn(world.inspector, world.vehicle))?.buyer?.name).toBe("Bea's firm");
  const { plan } = await world.dealer.does("appointments.get", { path });
  const permissions = plan.toAllow.map((each) => ({ ...each, allowed: true }));
  await move(service(), world.dealer, "appointments.confirm", did.visit, { access: true, permissions });
  expect(await standings()).toEqual([
    "others: look, inspect of the inspector",
    "others: look, inspect of the inspector",
    "yours: look, inspect of the inspector",
  ]);
  expect((await caseOn(world.inspector, world.vehicle))?.standing.next?.until).toBe(seen.start);
});

test("an order with an hour is one visit, and its report is the inspector's alone until it is sealed", async () => {
  const booked = await world.inspector.does("appointments.get", { path: { id: did.visit } });
  clock.set(new Date(booked.start));
  await move(service(), world.inspector, "appointments.start", did.visit);
  did.order = booked.visits[0]?.order ?? "";
  const path = { id: did.order };
  did.draft = (await world.inspector.does("reports.inspect", { path, body: header })).id;
  expect(await standings()).toEqual([
    "others: look, report-visit of the inspector",
    "others: look, report-visit of the inspector",
    "yours: look, seal of the inspector",
  ]);
  const { id = "" } = (await caseOn(world.inspector, world.vehicle)) ?? {};
  const { parts } = await world.inspector.does("cases.get", { path: { id } });
  expect(parts.visits).toMatchObject([{ appointment: did.visit, order: did.order, report: did.draft }]);
  const ofBuyer = await world.buyer.does("cases.get", { path: { id } });
  expect(ofBuyer.parts.visits).toMatchObject([{ appointment: did.visit, report: null }]);
});

test("sealed, the comparison is the buyer's to read, and the inspector's work is at rest", async () => {
  const revision = await write(world.inspector, did.draft, inspected);
  did.comparison = (await seal(world.inspector, did.draft, revision)).comparison ?? "";
  expect(await standings()).toEqual(["yours: read, read of the buyer", "rest: read", "rest: read"]);
  expect((await caseOn(world.buyer, world.vehicle))?.standing.next?.subject).toBe(did.comparison);
});

test("its matters are the answer's, worst first: open to the buyer, without a state to the inspector, none to the dealer", async () => {
  const answer = await world.buyer.does("comparisons.answer", { path: { id: did.comparison } });
  const { matters } = await caseOf(world.buyer);
  const expected = [...answer.matters, ...answer.unknown].map(({ matter }) => matter);
  expect(expected.length).toBeGreaterThan(2);
  expect(matters.map(({ headline, next, lines, state }) => ({ headline, next, lines, state }))).toEqual(
    expected.map(({ headline, next, lines }) => ({
      headline,
      next: next.words,
      lines: lines.length,
      state: "open",
    })),
  );
  expect(matters.map(({ comparison, place }) => [comparison, place])).toEqual(
    expected.map((_matter, place) => [did.comparison, place]),
  );
  expect(matters.filter(({ unknown }) => unknown)).toHaveLength(answer.unknown.length);
  const seen = await caseOf(world.inspector);
  expect(seen.matters).toEqual(matters.map((matter) => ({ ...matter, state: null })));
  expect((await caseOf(world.dealer)).matters).toEqual([]);
});

test("items laid before the dealer are the dealer's turn; answered, the buyer's again", async () => {
  const entry = entryAt(await readComparison(world.buyer, did.comparison), "electrics.horn");
  const path = { id: did.comparison };
  const { items } = await world.buyer.does("releases.create", { path, body: { entries: [entry] } });
  did.release = items[0]?.id ?? "";
  expect(await standings()).toEqual([
    "others: settle, answer-items of the dealer",
    "yours: settle, answer-items of the dealer",
    "rest: read",
  ]);
  expect(await mattersTo(world.buyer)).toContain("lamps laid 1");
  expect(await mattersTo(world.dealer)).toEqual(["lamps laid 1"]);
  await world.dealer.does("releases.move", { body: { lines: items, move: "contest", words: "It sounds." } });
  expect(await mattersTo(world.buyer)).toContain("lamps contested 1");
  expect(await mattersTo(world.dealer)).toEqual(["lamps contested 1"]);
  expect(await standings()).toEqual([
    "yours: settle, answer-contest of the buyer",
    "others: settle, answer-contest of the buyer",
    "rest: read",
  ]);
  const lines = [{ id: did.release, revision: 2 }];
  await world.buyer.does("releases.move", { body: { lines, move: "leave" } });
  expect(await mattersTo(world.dealer)).toEqual(["lamps left-open 1"]);
  expect(await standings()).toEqual(["yours: decide, sum-up of the buyer", "rest: settle", "rest: read"]);
});

test("a counter-offer is the dealer's to answer; taken, the car is bought, and collecting it the buyer's", async () => {
  const earlier = await summarize(world.buyer, did.comparison);
  const { id, hash } = await summarize(world.buyer, did.comparison);
  expect(await standingOn(world.buyer, world.vehicle)).toBe("yours: decide, decide of the buyer");
  clock.set(new Date(clock.now().getTime() + 60_000));
  const body = { decision: "counter", hash, conditions: "A horn that sounds." };
  const counter = await world.buyer.does("summaries.decide", { path: { id }, body });
  expect(await standings()).toEqual([
    "others: decide, answer-counter of the dealer",
    "yours: decide, answer-counter of the dealer",
    "rest: read",
  ]);
  await world.dealer.does("decisions.answer", {
    path: { id: counter.id },
    revision: 1,
    body: { answer: "accept", note: "Agreed." },
  });
  expect(await standings()).toEqual([
    "yours: collect, before-money of the buyer",
    "rest: collect",
    "rest: read",
  ]);
  const { id: itself = "" } = (await caseOn(world.buyer, world.vehicle)) ?? {};
  const { parts } = await world.buyer.does("cases.get", { path: { id: itself } });
  expect(parts).toMatchObject({
    questions: [{ id: did.question, state: "published" }],
    inspections: [{ version: 1, comparison: did.comparison }],
    released: { waiting: 0, accepted: 0, leftOpen: 1 },
    summaries: [
      { id, decision: "counter-accepted" },
      { id: earlier.id, decision: null },
    ],
    decisions: [{ id: counter.id, state: "counter-accepted" }],
  });
});

test("the case is one and the same to all three, and each has it once", async () => {
  const rows = await Promise.all(
    [world.buyer, world.dealer, world.inspector].map((who) => caseOn(who, world.vehicle)),
  );
  expect(new Set(rows.map((row) => row?.id)).size).toBe(1);
  expect((await home(world.buyer)).yours).toHaveLength(1);
});
