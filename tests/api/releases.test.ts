import type { Comparison } from "@evenhand/shared/comparison";
import { beforeEach, expect, test } from "vitest";
import { useService } from "./setup/service.ts";
import {
  entryAt,
  horn,
  inspect,
  inspected,
  type Inspected,
  readComparison,
  reseal,
  treadDepth,
} from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
let way: Inspected;
let comparison: Comparison;
beforeEach(async () => {
  world = await makeWorld(service());
  const better = treadDepth("right-front", 11, 11, 11);
  way = await inspect(world, [
    ...inspected.filter(({ position }) => position !== "right-front"),
    { ...better, person: "rowan", note: "Fresh." },
  ]);
  comparison = await readComparison(world.buyer, way.comparison);
});

const tire = () => entryAt(comparison, "wheels.tread-depth", "left-front");
const release = (...entries: number[]) =>
  world.buyer.does("releases.create", { path: { id: way.comparison }, body: { entries } });
const answer = (
  id: string,
  { answer: move, reason: words }: { answer: string; reason: string },
  revision = 1,
) => world.dealer.ask("releases.move", { body: { lines: [{ id, revision }], move, words } });

test("the dealer gets the two answers of that item and nothing else of the inspection", async () => {
  const { items } = await release(tire());
  const seen = await world.dealer.does("releases.get", { path: { id: items[0]?.id ?? "" } });
  expect(seen).toMatchObject({
    state: "released",
    entry: { item: "wheels.tread-depth", position: "left-front", outcome: "differ" },
    a: {
      answer: { values: [{ value: 8 }, { value: 8 }, { value: 8 }] },
      instrumentName: "tread depth gauge",
    },
    b: { answer: { values: [{ value: 2 }, { value: 2 }, { value: 2 }] } },
  });
  expect(seen.matter).toEqual({
    id: "tires",
    severity: "danger",
    headline: "Not as stated: tires",
    found: false,
  });
  expect(JSON.stringify(seen)).not.toMatch(/rowan|Fresh|horn|headliner/);
  expect((await world.dealer.does("releases.list")).items).toHaveLength(1);
});

const matterIn = (text: string): string => /"matter"\s*:\s*(\{.*?\})/.exec(text)?.[1] ?? text;

test("what the dealer is told of a matter is the same to the byte whatever else was found of it", async () => {
  const [item] = (await release(tire())).items;
  const told = await world.dealer.ask("releases.get", { path: { id: item?.id ?? "" } });
  const worse = {
    item: "wheels.tire-age",
    position: "left-front",
    answer: { kind: "choice" as const, option: "over-ten-years" },
  };
  const found = await inspect(world, [
    ...inspected,
    worse,
    { ...worse, position: "right-rear", note: "Split to the cord." },
  ]);
  const entry = entryAt(
    await readComparison(world.buyer, found.comparison),
    "wheels.tread-depth",
    "left-front",
  );
  const path = { id: found.comparison };
  const laid = await world.buyer.does("releases.create", { path, body: { entries: [entry] } });
  const seen = await world.dealer.ask("releases.get", { path: { id: laid.items[0]?.id ?? "" } });
  expect(matterIn(seen.text)).toBe(matterIn(told.text));
  expect(seen.text).not.toMatch(/tire-age|ten-years|cord/);
});

test("another dealer and another buyer get none of it", async () => {
  await release(tire());
  expect((await world.otherDealer.does("releases.list")).items).toEqual([]);
  expect((await world.otherBuyer.does("releases.list")).items).toEqual([]);
});

test("what was found better, what both agree on and what is not there cannot be released; each is named", async () => {
  const better = entryAt(comparison, "wheels.tread-depth", "right-front");
  const unseen = entryAt(comparison, "interior.headliner");
  const problem = await world.buyer.isRefused("releases.create", {
    path: { id: way.comparison },
    body: { entries: [tire(), better, unseen, 99_999] },
  });
  expect(problem).toMatchObject({ code: "entry-not-releasable", status: 422 });
  expect(problem.problems).toEqual([
    { at: "/entries/1", reason: "it was found better than stated" },
    { at: "/entries/2", reason: "the two do not dispute it" },
    { at: "/entries/3", reason: "the comparison has no such entry" },
  ]);
  expect((await world.dealer.does("releases.list")).items).toEqual([]);
});

test("releasing again what lies there already changes nothing", async () => {
  const first = await release(tire());
  expect(await release(tire(), entryAt(comparison, "electrics.horn"))).toMatchObject({
    items: [first.items[0], {}],
  });
  expect((await world.dealer.does("releases.list")).items).toHaveLength(2);
});

test("an accepted item is answered for good, and the buyer sees the reason", async () => {
  const [{ id } = { id: "" }] = (await release(tire())).items;
  expect((await answer(id, { answer: "accept", reason: "They are worn." })).status).toBe(201);
  expect(await world.buyer.does("releases.get", { path: { id } })).toMatchObject({
    state: "accepted",
    reason: "They are worn.",
    revision: 2,
  });
  const again = await answer(id, { answer: "contest", reason: "On second thought." }, 2);
  expect(again.body.type).toBe("https://evenhand.example/problems/release-state");
});

test("an accepted fault withdraws the car until a new statement answers it", async () => {
  const [{ id } = { id: "" }] = (await release(tire())).items;
  await answer(id, { answer: "accept", reason: "They are worn." });
  expect((await world.otherBuyer.ask("vehicles.get", { path: { id: way.vehicle } })).status).toBe(404);
  expect((await world.buyer.does("vehicles.get", { path: { id: way.vehicle } })).listed).toBe(false);
  const { revision } = await world.dealer.does("vehicles.get", { path: { id: way.vehicle } });
  const back = { path: { id: way.vehicle }, revision, body: { listed: true } };
  expect((await world.dealer.isRefused("vehicles.change", back)).code).toBe("faults-unanswered");
  await reseal(world.dealer, way.statementReport, treadDepth("left-front", 2, 2, 2));
  expect((await world.otherBuyer.does("vehicles.get", { path: { id: way.vehicle } })).listed).toBe(true);
});

test("a contested item leaves the car listed", async () => {
  const [{ id } = { id: "" }] = (await release(entryAt(comparison, "electrics.horn"))).items;
  await answer(id, { answer: "contest", reason: "It sounds." });
  expect((await world.otherBuyer.does("vehicles.get", { path: { id: way.vehicle } })).listed).toBe(true);
});

test("of two answers at once, one counts", async () => {
  const [{ id } = { id: "" }] = (await release(tire())).items;
  const statuses = await Promise.all([
    answer(id, { answer: "accept", reason: "Yes." }),
    answer(id, { answer: "contest", reason: "No." }),
  ]);
  expect(statuses.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409]);
});

test("what was released stays as it was when a new version is sealed", async () => {
  const [{ id } = { id: "" }] = (await release(entryAt(comparison, "electrics.horn"))).items;
  const before = await world.dealer.ask("releases.get", { path: { id } });
  await reseal(world.inspector, way.inspectionReport, horn("yes"));
  expect((await world.dealer.ask("releases.get", { path: { id } })).text).toBe(before.text);
});
