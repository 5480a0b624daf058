import type { LandedCostEntries } from "@evenhand/shared/landed-cost";
import { beforeAll, describe, expect, test } from "vitest";
import { OffersService } from "../../apps/api/src/capabilities/summaries/index.ts";
import { newClock } from "./setup/booking-story.ts";
import { caseOn, standingOn } from "./setup/homes.ts";
import { useService } from "./setup/service.ts";
import { carTo } from "./setup/hand-over-story.ts";
import { inspect, type Inspected, summarize } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const clock = newClock();
const service = useService({ clock, emptyBetween: false });
let world: World;
let way: Inspected;
let path: { id: string };
beforeAll(async () => {
  clock.set(new Date());
  world = await makeWorld(service());
  way = await inspect(world);
  path = { id: (await caseOn(world.buyer, way.vehicle))?.id ?? "" };
});

const nothing: LandedCostEntries = { lines: {}, trip: null, currency: null, rates: [], limit: null };
const usd = (minor: number) => ({ minor, currency: "USD" });

describe("landed cost", () => {
  test("before anything is entered every line says unset, and no total stands for it", async () => {
    const seen = await world.buyer.does("landedCost.get", { path });
    expect(seen).toMatchObject({ revision: 0, savedAt: null, entries: nothing, cost: { totals: [] } });
    expect(seen.cost.without).toContain("sales-tax");
    expect(seen.cost.lines.find(({ line }) => line === "put-right")).toEqual({
      line: "put-right",
      unset: "no-cost-table",
    });
  });

  test("is reckoned from entries, the buyer's own tables and the record, each line with its source", async () => {
    const tires = { row: "tire", per: "place", words: "a tire", low: 9_000, likely: 16_000, high: 30_000 };
    await world.buyer.does("costTable.put", {
      revision: 0,
      body: {
        format: "evenhand-cost-table",
        version: 1,
        name: "Bea's own",
        currency: "USD",
        rows: [{ ...tires, occurs: { differ: 1 } }],
      },
    });
    const bands = [{ upTo: 800, open: 110, enclosed: null }];
    await world.buyer.does("transportRates.put", {
      revision: 0,
      body: { currency: "USD", unit: "mi", per: "distance", bands, source: "two carriers' quotes" },
    });
    const entries: LandedCostEntries = {
      ...nothing,
      lines: { price: { amount: usd(2_000_000), source: "agreed by telephone" } },
      trip: { distance: 500, unit: "mi", carrier: "open" },
    };
    const { revision, cost } = await world.buyer.does("landedCost.put", { path, revision: 0, body: entries });
    expect(revision).toBe(1);
    expect(cost.lines.map((line) => ("amount" in line ? [line.line, line.source.of] : line.unset))).toEqual([
      ["price", "entry"],
      ["put-right", "cost-table"],
      "not-entered",
      ["transport", "rates"],
      "not-entered",
      "not-entered",
      "not-entered",
      "not-entered",
    ]);
    const page = await world.buyer.does("comparisons.cost", { path: { id: way.comparison } });
    const likely = page.cost?.total.likely ?? 0;
    expect(likely).toBeGreaterThan(0);
    expect(cost.totals.map(({ amount }) => amount.likely)).toEqual([2_000_000 + likely + 55_000]);
  });

  test("says who changed which line when, from what to what, to its buyer alone", async () => {
    const { items } = await world.buyer.does("landedCost.history", { path });
    expect(items).toHaveLength(1);
    expect(items[0]).toMatchObject({ revision: 1, savedBy: "Bea", savedAt: expect.stringMatching(/Z$/) });
    const price = { amount: usd(2_000_000), source: "agreed by telephone" };
    const trip = { distance: 500, unit: "mi", carrier: "open" };
    expect(items[0]?.changes).toEqual([
      { of: "line", line: "price", before: null, after: price },
      { of: "trip", before: null, after: trip },
    ]);
    const lower = { ...price, amount: usd(1_900_000) };
    const body = { ...nothing, lines: { price: lower } };
    await world.buyer.does("landedCost.put", { path, revision: 1, body });
    const changed = (await world.buyer.does("landedCost.history", { path })).items;
    expect(changed.map(({ revision }) => revision)).toEqual([2, 1]);
    expect(changed[0]?.changes).toEqual([
      { of: "line", line: "price", before: price, after: lower },
      { of: "trip", before: trip, after: null },
    ]);
    expect((await world.otherBuyer.isRefused("landedCost.history", { path })).status).toBe(404);
    expect((await world.dealer.isRefused("landedCost.history", { path })).status).toBe(403);
  });

  test("what another saved meanwhile is not written over, and nobody else reads it", async () => {
    const stale = { path, revision: 0, body: nothing };
    expect(await world.buyer.isRefused("landedCost.put", stale)).toMatchObject({ code: "revision-moved" });
    expect((await world.otherBuyer.isRefused("landedCost.get", { path })).status).toBe(404);
    for (const other of [world.dealer, world.inspector])
      expect((await other.isRefused("landedCost.get", { path })).status).toBe(403);
    expect(await world.otherBuyer.does("transportRates.get")).toMatchObject({ revision: 0, rates: null });
  });
});

const hour = 3_600_000;
const soon = () => new Date(clock.now().getTime() + hour).toISOString();
const counter = async (more: object = {}): Promise<string> => {
  pass(60_000);
  const { id, hash } = await summarize(world.buyer, way.comparison);
  pass(60_000);
  const body = { decision: "counter", hash, price: usd(1_900_000), until: soon(), ...more };
  return (await world.buyer.does("summaries.decide", { path: { id }, body })).id;
};
const pass = (time: number): void => clock.set(new Date(clock.now().getTime() + time));
const lapse = () => service().app.get(OffersService).lapse();
const standing = () => standingOn(world.buyer, way.vehicle);

describe("an offer", () => {
  test("is countered back with a price, conditions and a time of its own, and taken", async () => {
    const id = await counter();
    const answer = { answer: "counter", price: usd(1_950_000), conditions: "As it stands.", until: soon() };
    await world.dealer.does("decisions.answer", { path: { id }, revision: 1, body: answer });
    expect(await standing()).toBe("yours: decide, answer-offer of the buyer");
    const seen = await world.buyer.does("decisions.get", { path: { id } });
    expect(seen.answer?.offer).toEqual({
      price: answer.price,
      conditions: answer.conditions,
      until: answer.until,
    });
    await world.buyer.does("decisions.reply", { path: { id }, revision: 2, body: { reply: "accept" } });
    expect(await standing()).toBe("yours: collect, before-money of the buyer");
    expect((await world.buyer.does("beforeMoney.get", { path })).bought).toBe(true);
    expect((await world.buyer.does("handOvers.ofCase", { path })).mayArrange).toBe(true);
    const { revision, entries } = await world.buyer.does("landedCost.get", { path });
    const lines = { ...entries.lines };
    delete lines.price;
    const body = { ...entries, lines };
    const { cost, worth } = await world.buyer.does("landedCost.put", { path, revision, body });
    expect(worth).toBeNull();
    expect(cost.lines[0]).toMatchObject({
      amount: { likely: 1_950_000 },
      source: { of: "offer", agreed: true, by: "dealer" },
    });
  });

  test("is withdrawn before an answer, and then nobody's to take", async () => {
    const id = await counter();
    await world.buyer.does("decisions.reply", { path: { id }, revision: 1, body: { reply: "withdraw" } });
    const late = { path: { id }, revision: 2, body: { answer: "accept" } };
    expect(await world.dealer.isRefused("decisions.answer", late)).toMatchObject({
      code: "decision-state",
      state: "counter-withdrawn",
    });
    expect(await standing()).toBe("yours: decide, decide-again of the buyer");
    expect((await world.buyer.does("beforeMoney.get", { path })).bought).toBe(false);
  });

  test("lapses with its time and says so; an answer a moment late is refused", async () => {
    const id = await counter();
    pass(hour);
    const late = { path: { id }, revision: 1, body: { answer: "accept" } };
    expect((await world.dealer.isRefused("decisions.answer", late)).code).toBe("decision-state");
    expect([await lapse(), await lapse()]).toEqual([1, 0]);
    const seen = await world.dealer.does("decisions.get", { path: { id } });
    expect(seen).toMatchObject({ answer: null, ended: { how: "lapsed" } });
    expect(await standing()).toBe("yours: decide, decide-again of the buyer");
  });

  test("of an answer and a withdrawal at once one wins, and the other is told how it stands", async () => {
    const id = await counter();
    const [answered, withdrawn] = await Promise.all([
      world.dealer.ask("decisions.answer", { path: { id }, revision: 1, body: { answer: "accept" } }),
      world.buyer.ask("decisions.reply", { path: { id }, revision: 1, body: { reply: "withdraw" } }),
    ]);
    expect([answered.status, withdrawn.status].toSorted((a, b) => a - b)).toEqual([201, 409]);
    const { answer, ended } = await world.buyer.does("decisions.get", { path: { id } });
    expect([answer !== null, ended !== null]).toEqual([answered.status === 201, withdrawn.status === 201]);
    const lost = answered.status === 409 ? answered : withdrawn;
    expect(lost.body.state).toBe(answer === null ? "counter-withdrawn" : "counter-accepted");
  });

  test("until a time that has passed is refused", async () => {
    const { id, hash } = await summarize(world.buyer, way.comparison);
    const body = { decision: "counter", hash, conditions: "A horn.", until: clock.now().toISOString() };
    const problem = await world.buyer.isRefused("summaries.decide", { path: { id }, body });
    expect(problem).toMatchObject({ code: "invalid-fields", problems: [{ at: "/until" }] });
  });
});

test("what another look is worth is reckoned once a limit is set, in its currency", async () => {
  const { revision, entries, worth } = await world.buyer.does("landedCost.get", { path });
  expect(worth).toBeNull();
  const limited = { path, revision, body: { ...entries, limit: usd(2_100_000) } };
  const seen = await world.buyer.does("landedCost.put", limited);
  expect(seen.worth?.together.currency).toBe("USD");
  const other = { minor: 2_100_000, currency: "EUR" };
  const foreign = { path, revision: revision + 1, body: { ...entries, limit: other } };
  expect((await world.buyer.does("landedCost.put", foreign)).worth).toBeNull();
});

test("before money moves: what the record says stops it until it is said to be done, and only the buyer reads it", async () => {
  const { caseId } = await carTo(world, "bought");
  const at = { path: { id: caseId } };
  const { bought, revision, standing: stands } = await world.buyer.does("beforeMoney.get", at);
  expect({ bought, revision, state: stands.state }).toEqual({ bought: true, revision: 0, state: "stopped" });
  const halts = stands.lines.filter(({ matters }) => matters.some(({ severity }) => severity === "halt"));
  const lines = stands.lines.map(({ line, matters }) => {
    const stopping = matters.filter(({ severity }) => severity === "halt");
    const read = stopping.map(({ id, headline }) => ({ id, headline }));
    const payee = { name: "Ridge Lane Motors", numberFrom: "known-before" } as const;
    const said = { say: "done", words: `I have seen to ${line} myself.`, by: "Bea Marsh", on: "2026-01-05" };
    return [line, { ...said, halts: read, ...(line === "payee" ? { payee } : {}) }];
  });
  const body = { lines: Object.fromEntries(lines) };
  const said = await world.buyer.does("beforeMoney.put", { ...at, revision: 0, body });
  expect(said).toMatchObject({ revision: 1, entries: body, standing: { state: "answered" } });
  for (const { line } of halts) {
    const less = { lines: { ...body.lines, [line]: { ...body.lines[line], say: "not-due" } } };
    const { revision: now } = await world.buyer.does("beforeMoney.get", at);
    const after = await world.buyer.does("beforeMoney.put", { ...at, revision: now, body: less });
    expect(after.standing.state).toBe("stopped");
  }
  const stale = { ...at, revision: 0, body };
  expect(await world.buyer.isRefused("beforeMoney.put", stale)).toMatchObject({ code: "revision-moved" });
  expect((await world.otherBuyer.isRefused("beforeMoney.get", at)).status).toBe(404);
  expect((await world.dealer.isRefused("beforeMoney.get", at)).status).toBe(403);
});
