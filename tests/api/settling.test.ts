import type { Release } from "@evenhand/shared/http/releases";
import { beforeAll, expect, test } from "vitest";
import { SettlementService } from "../../apps/api/src/capabilities/releases/index.ts";
import {
  type BookingWorld,
  confirm,
  makeBookingWorld,
  monday,
  move,
  newClock,
} from "./setup/booking-story.ts";
import { standingOn } from "./setup/homes.ts";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import {
  acceptOrder,
  entryAt,
  header,
  headliner,
  horn,
  inspected,
  order,
  readComparison,
  reseal,
  seal,
  summarize,
  treadDepth,
  write,
} from "./setup/story.ts";

/** Lines of one inspection on their several ways to an end. The steps follow one another. */
const clock = newClock();
const service = useService({ clock, emptyBetween: false });
let world: BookingWorld;
const did = { order: "", report: "", comparison: "", visit: "", again: "" };
/** The released lines by their item. */
const lines: Record<"horn" | "tire" | "headliner", string> = { horn: "", tire: "", headliner: "" };
type Which = keyof typeof lines;

beforeAll(async () => {
  clock.set(monday);
  world = await makeBookingWorld(service());
  did.order = await order(world.buyer, world.inspector, world.vehicle, world.statement);
  await acceptOrder(world.inspector, did.order);
  const path = { id: did.order };
  did.report = (await world.inspector.does("reports.inspect", { path, body: header })).id;
  const findings = [
    ...inspected.filter(({ item }) => item !== "interior.headliner"),
    headliner("spent"),
    treadDepth("left-rear", 1, 1, 1),
  ];
  const revision = await write(world.inspector, did.report, findings);
  did.comparison = (await seal(world.inspector, did.report, revision)).comparison ?? "";
});

const minutes = (count: number): void => clock.set(new Date(clock.now().getTime() + count * 60_000));
const see = (who: Person, which: Which): Promise<Release> =>
  who.does("releases.get", { path: { id: lines[which] } });
const revisions = async (which: readonly Which[]) => {
  const seen = await Promise.all(which.map((one) => see(world.buyer, one)));
  return seen.map(({ id, revision }) => ({ id, revision }));
};
const act = async (who: Person, which: readonly Which[], body: object) =>
  who.ask("releases.move", { body: { lines: await revisions(which), ...body } });
const states = async (): Promise<string[]> =>
  Promise.all(
    (["horn", "tire", "headliner"] as const).map(async (one) => (await see(world.buyer, one)).state),
  );
const sweep = () => service().app.get(SettlementService).sweep();

test("lines are laid with a deadline in hours the site is open", async () => {
  const comparison = await readComparison(world.buyer, did.comparison);
  const entries = [
    entryAt(comparison, "electrics.horn"),
    entryAt(comparison, "wheels.tread-depth", "left-front"),
    entryAt(comparison, "interior.headliner"),
  ];
  const { items } = await world.buyer.does("releases.create", {
    path: { id: did.comparison },
    body: { entries },
  });
  [lines.horn = "", lines.tire = "", lines.headliner = ""] = items.map(({ id }) => id);
  // Twenty-four hours from Monday, nine o'clock, at ten a day: Wednesday, one o'clock in the afternoon, in Chicago.
  expect((await see(world.dealer, "horn")).deadline).toBe("2027-05-05T18:00:00.000Z");
});

test("a contest with evidence is read by the buyer as it was sent, and by the inspector once asked", async () => {
  const evidence = [
    { kind: "document", name: "Bill of the horn", says: null },
    { kind: "reading", of: "horn at one meter", value: 96, unit: "dB", instrument: "sound meter" },
  ];
  const body = { move: "contest", words: "It sounds; my shop measured it.", evidence };
  expect((await act(world.dealer, ["horn", "tire"], body)).status).toBe(201);
  const seen = await see(world.buyer, "horn");
  expect(seen).toMatchObject({ as: "buyer", state: "contested", reason: body.words });
  expect(seen.thread).toMatchObject([{ by: "dealer", move: "contest", words: body.words, evidence }]);
  const path = { id: lines.horn };
  expect((await world.inspector.ask("releases.get", { path })).status).toBe(404);
  expect(await standingOn(world.buyer, world.vehicle)).toBe("yours: settle, answer-contest of the buyer");
  expect((await act(world.buyer, ["horn", "tire"], { move: "ask", words: "Is it so?" })).status).toBe(201);
  expect((await see(world.inspector, "horn")).thread.map(({ move: one }) => one)).toEqual(["contest", "ask"]);
  expect((await world.inspector.ask("releases.get", { path: { id: lines.headliner } })).status).toBe(404);
  expect((await world.otherInspector.ask("releases.get", { path })).status).toBe(404);
  expect(await standingOn(world.inspector, world.vehicle)).toBe(
    "yours: settle, answer-dispute of the inspector",
  );
});

test("nobody moves what is not theirs to move, and nothing moves where one of several cannot", async () => {
  for (const [who, body] of [
    [world.dealer, { move: "stand", words: "No." }],
    [world.buyer, { move: "accept", words: "Yes." }],
    [world.inspector, { move: "accept", words: "Yes." }],
  ] as const)
    expect((await act(who, ["horn"], body)).status).toBe(404);
  const mixed = await act(world.dealer, ["horn", "headliner"], { move: "contest", words: "Both." });
  expect([mixed.status, mixed.body.lines]).toEqual([409, [{ id: lines.horn, revision: 3, state: "asked" }]]);
  expect((await act(world.otherDealer, ["horn"], { move: "accept", words: "Yes." })).status).toBe(404);
  expect((await act(world.inspector, ["horn"], { move: "stand" })).status).toBe(422);
  expect(await states()).toEqual(["asked", "asked", "released"]);
});

test("of two who move it at once one wins, and the other is told what it is now", async () => {
  const answers = await Promise.all([
    act(world.inspector, ["tire"], { move: "stand", words: "I measured it twice." }),
    act(world.dealer, ["tire"], { move: "accept", words: "It is worn." }),
  ]);
  expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409]);
  const { state, revision } = await see(world.buyer, "tire");
  const lost = answers.find(({ status }) => status === 409);
  expect(lost?.body.lines).toEqual([{ id: lines.tire, revision, state }]);
  expect(["accepted", "finding-stands"]).toContain(state);
  const seen = await world.dealer.does("listing.get", { path: { id: world.vehicle } });
  expect([seen.listed, seen.openFaults.map(({ item }) => item)]).toEqual([false, ["wheels.tread-depth"]]);
});

test("what a remedy is offered for stays between buyer and dealer", async () => {
  const offer = { move: "offer-price", price: { minor: 85_000, currency: "USD" } };
  expect((await act(world.dealer, ["headliner"], { ...offer, price: undefined })).status).toBe(422);
  await act(world.dealer, ["headliner"], offer);
  expect((await act(world.buyer, ["headliner"], { move: "refuse" })).status).toBe(422);
  await act(world.buyer, ["headliner"], { move: "refuse", words: "Too little." });
  const repair = { move: "offer-remedy", remedy: "repair", words: "A new one, by June." };
  await act(world.dealer, ["headliner"], repair);
  await act(world.buyer, ["headliner"], { move: "take" });
  await act(world.dealer, ["headliner"], {
    move: "prove",
    words: "Done.",
    evidence: [{ kind: "document", name: "The bill" }],
  });
  expect(await standingOn(world.buyer, world.vehicle)).toBe("yours: settle, check-remedy of the buyer");
  await act(world.buyer, ["headliner"], { move: "confirm" });
  const { state, thread, deadline } = await see(world.dealer, "headliner");
  expect([state, deadline]).toEqual(["settled", null]);
  expect(thread.map(({ remedy }) => remedy?.kind ?? null)).toEqual([
    "price",
    null,
    "repair",
    null,
    null,
    null,
  ]);
});

test("another look is booked as a short visit of what is in dispute, though the car is off the list", async () => {
  await act(world.inspector, ["horn"], { move: "look-again" });
  expect(await standingOn(world.buyer, world.vehicle)).toBe("yours: settle, book-look of the buyer");
  const brief = await world.buyer.does("brief.get", { path: { id: world.vehicle } });
  expect([brief.depth, brief.items.some(({ item }) => item === "electrics.horn")]).toEqual([
    "first-look",
    true,
  ]);
  const { from, looks } = await world.buyer.does("lookFirst.get", { path: { id: world.vehicle } });
  expect([from, looks.map(({ item, again }) => again && item).filter(Boolean)]).toEqual([
    "comparison",
    ["electrics.horn"],
  ]);
  did.visit = await confirm(service(), world);
  expect(await standingOn(world.buyer, world.vehicle)).toBe("others: settle, inspect of the inspector");
});

test("its report goes on with the findings that stand, and ends what was looked at again", async () => {
  const { start, visits } = await world.inspector.does("appointments.get", { path: { id: did.visit } });
  clock.set(new Date(start));
  // The hours for booking it are over before it is made; it is booked, and goes on.
  await sweep();
  expect(await states()).toMatchObject({ 0: "looking-again" });
  await move(service(), world.inspector, "appointments.start", did.visit);
  const path = { id: visits[0]?.order ?? "" };
  did.again = (await world.inspector.does("reports.inspect", { path, body: header })).id;
  const draft = await world.inspector.does("reports.get", { path: { id: did.again } });
  const items = draft.findings.map(({ item }) => item);
  expect([items.includes("electrics.horn"), items.includes("interior.headliner")]).toEqual([false, true]);
  minutes(30);
  const revision = await write(world.inspector, did.again, [horn("yes")]);
  const sealed = await seal(world.inspector, did.again, revision);
  const seen = await see(world.dealer, "horn");
  expect(seen).toMatchObject({ state: "statement-stands", standsIn: null, comparison: did.comparison });
  expect(seen.looked).toMatchObject({ b: { answer: { value: "yes" } } });
  expect(seen.thread.at(-1)).toMatchObject({ by: "seal", move: "clear" });
  const tire = await see(world.buyer, "tire");
  expect(tire.standsIn?.comparison).toBe(sealed.comparison);
  expect(
    await world.buyer.does("releases.list", { query: { comparison: sealed.comparison ?? "" } }),
  ).toMatchObject({
    items: [{}, {}, {}],
  });
  const { summary } = await summarize(world.buyer, sealed.comparison ?? "");
  expect(summary.releases.map(({ state }) => state).toSorted()).toEqual(
    ["settled", "statement-stands", tire.state].toSorted(),
  );
  expect(await standingOn(world.buyer, world.vehicle)).toBe("yours: decide, decide of the buyer");
  did.comparison = sealed.comparison ?? "";
});

test("where the buyer lets the dealer answer first, what is found worse is laid as it is sealed", async () => {
  const { items: cases } = await world.buyer.does("cases.ofPart", { path: { id: lines.horn } });
  const own = { path: { id: cases[0]?.id ?? "" }, body: { allowed: true } };
  expect((await world.dealer.ask("cases.letDealerFirst", own)).status).toBe(403);
  await world.buyer.does("cases.letDealerFirst", own);
  const before = new Set((await world.dealer.does("releases.list")).items.map(({ id }) => id));
  await reseal(world.inspector, did.again, treadDepth("right-front", 1, 1, 1));
  const fresh = (await world.dealer.does("releases.list")).items.filter(({ id }) => !before.has(id));
  expect(fresh.map(({ entry, state }) => `${entry.item} ${entry.position} ${state}`)).toEqual([
    "wheels.tread-depth right-front released",
  ]);
  lines.tire = fresh[0]?.id ?? "";
  await world.buyer.does("cases.letDealerFirst", { ...own, body: { allowed: false } });
});

test("a dealer who keeps silent lets the finding stand, by the deadline and not by the job", async () => {
  clock.set(new Date((await see(world.dealer, "tire")).deadline ?? ""));
  const late = await act(world.dealer, ["tire"], { move: "contest", words: "It is not." });
  expect([late.status, late.body.lines]).toMatchObject([409, [{ state: "finding-stands" }]]);
  expect(await sweep()).toBe(1);
  expect(await sweep()).toBe(0);
  expect((await see(world.buyer, "tire")).thread).toMatchObject([
    { by: "clock", move: "lapse", words: null },
  ]);
});

test("a revision ends what was asked by what it says, and declining the car whatever is left", async () => {
  const { comparison } = await reseal(world.inspector, did.again, treadDepth("right-rear", 1, 1, 1));
  const read = await readComparison(world.buyer, comparison ?? "");
  const path = { id: comparison ?? "" };
  const entries = ["left-rear", "right-rear"].map((at) => entryAt(read, "wheels.tread-depth", at));
  const { items } = await world.buyer.does("releases.create", { path, body: { entries } });
  [lines.tire = "", lines.headliner = ""] = items.map(({ id }) => id);
  await act(world.dealer, ["tire"], { move: "contest", words: "They are new." });
  await act(world.buyer, ["tire"], { move: "ask" });
  await act(world.inspector, ["tire"], { move: "revise", words: "I wrote it in the wrong row." });
  const revised = await reseal(world.inspector, did.again, treadDepth("left-rear", 7, 7, 7));
  expect((await see(world.buyer, "tire")).state).toBe("statement-stands");
  expect((await see(world.buyer, "headliner")).standsIn?.comparison).toBe(revised.comparison);
  const { id, hash } = await summarize(world.buyer, revised.comparison ?? "");
  await world.buyer.does("summaries.decide", { path: { id }, body: { decision: "decline", hash } });
  expect((await see(world.dealer, "headliner")).state).toBe("left-open");
});
