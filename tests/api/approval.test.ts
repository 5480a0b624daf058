import { createHash } from "node:crypto";
import { canonicalJson } from "@evenhand/record/canonical-json";
import { beforeEach, describe, expect, test } from "vitest";
import { query } from "./setup/database.ts";
import { caseOn } from "./setup/homes.ts";
import { useService } from "./setup/service.ts";
import { acknowledgeAll, horn, inspect, type Inspected, reseal, summarize } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
let way: Inspected;
beforeEach(async () => {
  world = await makeWorld(service());
  way = await inspect(world);
});

const approval = ({ hash, summary }: Awaited<ReturnType<typeof summarize>>) => ({
  decision: "approve",
  hash,
  acknowledgements: acknowledgeAll(summary),
});

test("the hash is that of the bytes, and the bytes are canonical", async () => {
  const { id, hash } = await summarize(world.buyer, way.comparison);
  const { text, headers } = await world.buyer.ask("summaries.document", {
    path: { id },
    headers: { "accept-encoding": "identity" },
  });
  expect(createHash("sha256").update(text).digest("hex")).toBe(hash);
  expect(canonicalJson(JSON.parse(text))).toBe(text);
  expect(headers["etag"]).toBe(`"${hash}"`);
});

test("an approval stores the hash that was seen", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  await world.buyer.does("summaries.decide", { path: { id: summarized.id }, body: approval(summarized) });
  const seen = await world.buyer.does("summaries.get", { path: { id: summarized.id } });
  expect(seen).toMatchObject({ moved: [], decision: { decision: "approve", hash: summarized.hash } });
  const { id = "" } = (await caseOn(world.buyer, way.vehicle)) ?? {};
  const { matters } = await world.buyer.does("cases.get", { path: { id } });
  const answered = matters.filter(({ state }) => state === "answered-for");
  expect(answered.map((matter) => matter.id).toSorted()).toEqual(
    summarized.summary.openMatters.flatMap((open) => open.matters).toSorted(),
  );
});

test("another hash than the summary's is refused", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  const body = { ...approval(summarized), hash: "0".repeat(64) };
  const problem = await world.buyer.isRefused("summaries.decide", { path: { id: summarized.id }, body });
  expect(problem).toMatchObject({ code: "summary-hash", status: 409 });
});

test("after a new version of the inspection, a second approval of the old summary says what moved", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  await world.buyer.does("summaries.decide", { path: { id: summarized.id }, body: approval(summarized) });
  await reseal(world.inspector, way.inspectionReport, horn("intermittent"));
  const problem = await world.buyer.isRefused("summaries.decide", {
    path: { id: summarized.id },
    body: approval(summarized),
  });
  expect(problem).toMatchObject({ code: "summary-moved", status: 409 });
  expect(problem["moved"]).toEqual([
    {
      what: "inspection",
      id: way.inspectionReport,
      was: "1",
      now: "2",
      findings: [{ item: "electrics.horn", position: "" }],
    },
  ]);
});

test("a new statement, a release and an answer each move a summary", async () => {
  const { id } = await summarize(world.buyer, way.comparison);
  await reseal(world.dealer, way.statementReport, horn("no"));
  const { items } = await world.buyer.does("releases.create", {
    path: { id: way.comparison },
    body: { entries: [(await summarize(world.buyer, way.comparison)).summary.inDoubt[0]?.entry] },
  });
  const first = await world.buyer.does("summaries.get", { path: { id } });
  expect(first.moved.map(({ what, was, now }) => ({ what, was, now }))).toEqual([
    { what: "statement", was: "1", now: "2" },
    { what: "release", was: null, now: "1" },
  ]);
  await world.dealer.does("releases.move", {
    body: { lines: items, move: "contest", words: "It sounded yesterday." },
  });
  const second = await world.buyer.does("summaries.get", { path: { id } });
  expect(second.moved).toContainEqual(expect.objectContaining({ what: "release", was: null, now: "2" }));
});

test("a second decision on what has not moved is refused", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  await world.buyer.does("summaries.decide", { path: { id: summarized.id }, body: approval(summarized) });
  const problem = await world.buyer.isRefused("summaries.decide", {
    path: { id: summarized.id },
    body: approval(summarized),
  });
  expect(problem.code).toBe("summary-decided");
});

test("an open matter that is not answered for is named, in words", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  const [, ...rest] = acknowledgeAll(summarized.summary);
  const name = summarized.summary.openMatters[0]?.name;
  const problem = await world.buyer.isRefused("summaries.decide", {
    path: { id: summarized.id },
    body: { ...approval(summarized), acknowledgements: rest },
  });
  expect(problem).toMatchObject({
    code: "matters-unanswered",
    status: 422,
    problems: [{ reason: `${name ?? "no name"}: say what you will do about it` }],
  });
});

test("the worn tire can hurt somebody, and is among the open matters", async () => {
  const { summary } = await summarize(world.buyer, way.comparison);
  const tires = summary.openMatters.find(({ id }) => id === "tires");
  expect(tires?.lines).toContainEqual(
    expect.objectContaining({ item: "wheels.tread-depth", position: "left-front", standing: "differs" }),
  );
});

test("of two approvals at once, one is the decision", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  const ask = () =>
    world.buyer.ask("summaries.decide", { path: { id: summarized.id }, body: approval(summarized) });
  const answers = await Promise.all([ask(), ask(), ask()]);
  expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([201, 409, 409]);
});

test("an approval and a new version at once never both count on the old findings", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  const [decided] = await Promise.all([
    world.buyer.ask("summaries.decide", { path: { id: summarized.id }, body: approval(summarized) }),
    reseal(world.inspector, way.inspectionReport, horn("intermittent")),
  ]);
  const [row] = await query<{ before: boolean }>(
    service().databaseUrl,
    `SELECT d.decided_at <= max(v.sealed_at) AS before FROM decision d, report_version v
     WHERE v.report_id = $1 AND v.number = 2 GROUP BY d.decided_at`,
    [way.inspectionReport],
  );
  expect(decided.status === 409 || row?.before === true).toBe(true);
});

describe("a counter-offer", () => {
  const price = { minor: 4_150_000, currency: "USD" };

  test("goes to the dealer without what the buyer acknowledged, and is answered once", async () => {
    const { id, hash } = await summarize(world.buyer, way.comparison);
    const decision = await world.buyer.does("summaries.decide", {
      path: { id },
      body: { decision: "counter", hash, price, conditions: "A horn that sounds." },
    });
    const seen = await world.dealer.does("decisions.get", { path: { id: decision.id } });
    expect(seen).toMatchObject({
      price,
      conditions: "A horn that sounds.",
      summary: null,
      acknowledgements: [],
    });
    await world.dealer.does("decisions.answer", {
      path: { id: decision.id },
      revision: 1,
      body: { answer: "accept", note: "Agreed." },
    });
    const again = await world.dealer.isRefused("decisions.answer", {
      path: { id: decision.id },
      revision: 2,
      body: { answer: "refuse" },
    });
    expect(again.code).toBe("decision-state");
    expect((await world.buyer.does("decisions.get", { path: { id: decision.id } })).answer?.answer).toBe(
      "accept",
    );
  });

  test("without a price or conditions is no offer", async () => {
    const { id, hash } = await summarize(world.buyer, way.comparison);
    const problem = await world.buyer.isRefused("summaries.decide", {
      path: { id },
      body: { decision: "counter", hash },
    });
    expect(problem).toMatchObject({ code: "invalid-fields", problems: [{ at: "/price" }] });
  });
});

test("declining is free, whatever moved", async () => {
  const { id, hash } = await summarize(world.buyer, way.comparison);
  await reseal(world.inspector, way.inspectionReport, horn("yes"));
  await world.buyer.does("summaries.decide", { path: { id }, body: { decision: "decline", hash } });
  const { items } = await world.dealer.does("decisions.list");
  expect(items).toMatchObject([{ decision: "decline" }]);
});

test("with a cost table the summary gives a range, the same for the same summary, and a new table moves it", async () => {
  const table = {
    format: "evenhand-cost-table",
    version: 1,
    name: "Bea's own",
    currency: "USD",
    rows: [
      { row: "tires", words: "a tire", low: 10_000, likely: 16_000, high: 30_000, occurs: { differ: 0.9 } },
    ],
  };
  await world.buyer.does("costTable.put", { revision: 0, body: table });
  const first = await summarize(world.buyer, way.comparison);
  const second = await summarize(world.buyer, way.comparison);
  expect(first.summary.cost).toEqual(second.summary.cost);
  expect(first.summary.cost?.table).toBe("Bea's own");
  await world.buyer.does("costTable.put", { revision: 1, body: { ...table, name: "Dearer" } });
  const seen = await world.buyer.does("summaries.get", { path: { id: first.id } });
  expect(seen.moved).toMatchObject([{ what: "cost-table", was: "1", now: "2" }]);
});

test("people stand in the summary as ids", async () => {
  const { id } = await summarize(world.buyer, way.comparison);
  const { text } = await world.buyer.ask("summaries.document", { path: { id } });
  for (const name of ["Bea", "Delia", "Ines", "Rowan"]) expect(text).not.toContain(name);
});

test("the summary carries every matter with its state, what was stated beside what was found, and what is broken", async () => {
  const { summary } = await summarize(world.buyer, way.comparison);
  const page = await world.buyer.does("comparisons.answer", { path: { id: way.comparison } });
  const matters = [...page.matters, ...page.unknown].map(({ matter }) => matter);
  expect(summary.matters.map(({ headline, state }) => [headline, state])).toEqual(
    matters.map(({ headline }) => [headline, "open"]),
  );
  const grave = matters.filter(({ severity }) => severity === "halt" || severity === "danger");
  expect(summary.openMatters.flatMap((open) => open.matters).length).toBe(grave.length);
  const tread = summary.inDoubt.find(({ item }) => item === "wheels.tread-depth");
  expect(tread?.said?.stated).toMatch(/^8/);
  expect(tread?.said?.found).toMatch(/^2/);
  const [line = -1] = summary.inDoubt
    .filter(({ item }) => item === "wheels.tread-depth")
    .map(({ entry }) => entry);
  const entries = [line];
  await world.buyer.does("releases.create", { path: { id: way.comparison }, body: { entries } });
  const later = (await summarize(world.buyer, way.comparison)).summary;
  expect(later.matters.find(({ id }) => id === "tires")).toMatchObject({ state: "laid", laid: 1 });
  expect(later.matters.filter(({ laid }) => laid !== 0).map(({ id }) => id)).toEqual(["tires"]);
});

test("words that answer for one matter that stops the money do not answer for another", async () => {
  const summarized = await summarize(world.buyer, way.comparison);
  const halts = summarized.summary.openMatters.filter(({ severity }) => severity === "halt");
  const words = "The title company holds the money until it is cleared.";
  const acknowledgements = acknowledgeAll(summarized.summary).map((one) => ({ ...one, words }));
  const ask = { path: { id: summarized.id }, body: { ...approval(summarized), acknowledgements } };
  expect(halts.length).toBeGreaterThan(1);
  const problem = await world.buyer.isRefused("summaries.decide", ask);
  expect(problem.problems?.map(({ reason }) => reason)).toEqual(
    halts.slice(1).map(({ name }) => expect.stringMatching(`^${name}: .*stand at another`)),
  );
});

describe("what was typed before deciding", () => {
  const draft = {
    decision: "approve",
    answers: [{ matter: "tires", answer: "first", words: "new ones on" }],
    price: "",
    conditions: "",
  };

  test("is kept, refused over what is newer, and gone once it is decided", async () => {
    const summarized = await summarize(world.buyer, way.comparison);
    const path = { id: summarized.id };
    const put = { path, revision: 0, body: draft };
    expect(await world.buyer.does("summaries.draft", put)).toEqual({ revision: 1, draft });
    expect((await world.buyer.isRefused("summaries.draft", put)).status).toBe(412);
    expect((await world.buyer.does("summaries.get", { path })).draft).toEqual({ revision: 1, draft });
    expect((await world.otherBuyer.isRefused("summaries.draft", { ...put, revision: 1 })).status).toBe(404);
    await world.buyer.does("summaries.decide", { path, body: approval(summarized) });
    expect((await world.buyer.does("summaries.get", { path })).draft).toEqual({ revision: 0, draft: null });
    expect((await world.buyer.isRefused("summaries.draft", put)).code).toBe("summary-decided");
  });
});

test("a summary stored before there were matters is read as it was, and decided on", async () => {
  const { id } = await summarize(world.buyer, way.comparison);
  const made = await world.buyer.does("summaries.document", { path: { id } });
  if (made.version !== 2) throw new Error("It is of an older version.");
  const { matters: _m, broken: _b, bothBad: _bad, ...rest } = made;
  const plain = (items: typeof made.inDoubt) => items.map(({ said: _said, ...item }) => item);
  const old = {
    ...rest,
    version: 1,
    inDoubt: plain(made.inDoubt),
    unseen: plain(made.unseen),
    openMatters: [{ matter: "title", severity: "halt", lines: plain(made.unseen).slice(0, 1) }],
  };
  const text = canonicalJson(old);
  const hash = createHash("sha256").update(text).digest("hex");
  const url = service().databaseUrl;
  await query(url, "ALTER TABLE summary DISABLE TRIGGER summary_sealed");
  await query(url, "UPDATE summary SET document = convert_to($2, 'UTF8'), hash = $3 WHERE id = $1", [
    id,
    text,
    hash,
  ]);
  await query(url, "ALTER TABLE summary ENABLE TRIGGER summary_sealed");
  expect((await world.buyer.ask("summaries.document", { path: { id } })).text).toBe(text);
  const words = "The title company holds the money.";
  const acknowledgements = [{ matter: "title", answer: "first", words }];
  await world.buyer.does("summaries.decide", {
    path: { id },
    body: { decision: "approve", hash, acknowledgements },
  });
  const seen = await world.buyer.does("summaries.get", { path: { id } });
  expect(seen.decision?.acknowledgements).toEqual(acknowledgements);
});
