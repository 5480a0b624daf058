import { randomUUID } from "node:crypto";
import { beforeEach, expect, test } from "vitest";
import { useService } from "./setup/service.ts";
import { headliner, header, horn, makeVehicle, setOperation, treadDepth } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
let report: string;
beforeEach(async () => {
  world = await makeWorld(service());
  const vehicle = await makeVehicle(world.dealer);
  report = (await world.dealer.does("reports.state", { path: { id: vehicle }, body: header })).id;
});

const apply = (...operations: unknown[]) =>
  world.dealer.does("reports.operate", { path: { id: report }, body: { operations } });
const removeHorn = (base: number) => ({
  id: randomUUID(),
  op: "remove",
  item: "electrics.horn",
  position: "",
  base,
});
const findings = async () =>
  (await world.dealer.does("reports.get", { path: { id: report } })).report.findings;

test("a finding is set, changed from the revision last seen, and removed", async () => {
  const set = await apply(setOperation(horn("yes")));
  expect(set).toMatchObject({ revision: 2, results: [{ result: "applied", revision: 1 }] });
  expect((await apply(setOperation(horn("no"), 1))).results).toMatchObject([
    { result: "applied", revision: 2 },
  ]);
  expect(await findings()).toMatchObject([{ item: "electrics.horn", answer: { value: "no" } }]);
  expect((await apply(removeHorn(2))).results).toMatchObject([{ result: "applied", revision: 3 }]);
  expect(await findings()).toEqual([]);
});

test("the same operation sent again is done once, in one request and over two", async () => {
  const operation = setOperation(horn("yes"));
  expect((await apply(operation, operation)).results).toEqual([
    { id: operation.id, result: "applied", revision: 1 },
    { id: operation.id, result: "duplicate", revision: 1 },
  ]);
  await apply(setOperation(horn("no"), 1));
  expect(await apply(operation)).toMatchObject({
    revision: 3,
    results: [{ result: "duplicate", revision: 1 }],
  });
  expect(await findings()).toMatchObject([{ answer: { value: "no" } }]);
});

test("an operation's id with other contents is refused", async () => {
  const operation = setOperation(horn("yes"));
  await apply(operation);
  expect((await apply({ ...operation, finding: horn("no") })).results).toMatchObject([
    { result: "refused", problems: [{ at: "/id" }] },
  ]);
});

test("a change from an older revision is a conflict that shows what is there", async () => {
  await apply(setOperation(horn("yes")));
  await apply(setOperation(horn("no"), 1));
  expect((await apply(setOperation(horn("intermittent"), 1))).results).toMatchObject([
    { result: "conflict", revision: 2, current: { item: "electrics.horn", answer: { value: "no" } } },
  ]);
});

test("a second finding for a place that has one is a conflict, and so is removing what was removed", async () => {
  await apply(setOperation(horn("yes")));
  expect((await apply(setOperation(horn("no")))).results).toMatchObject([
    { result: "conflict", revision: 1 },
  ]);
  await apply(removeHorn(1));
  expect((await apply(removeHorn(1))).results).toMatchObject([
    { result: "conflict", revision: 2, current: null },
  ]);
});

test("what was removed can be set again, and its revision goes on", async () => {
  await apply(setOperation(horn("yes")));
  await apply(removeHorn(1));
  expect((await apply(setOperation(horn("no")))).results).toMatchObject([{ result: "applied", revision: 3 }]);
  const stale = setOperation(horn("yes"), 1);
  expect((await apply(stale)).results).toMatchObject([{ result: "conflict", revision: 3 }]);
});

test("a finding that does not hold against the sheet refuses itself only, with item, position and reason", async () => {
  const wrong = treadDepth("left-front", -3);
  const { results } = await apply(setOperation(wrong), setOperation(horn("yes")));
  expect(results).toMatchObject([
    { result: "refused", problems: [{ item: "wheels.tread-depth", position: "left-front" }] },
    { result: "applied" },
  ]);
  expect(await findings()).toHaveLength(1);
});

test.each([
  ["an unknown item", { item: "wheels.wings", answer: { kind: "working", value: "yes" } }],
  [
    "a wrong unit",
    { ...treadDepth("left-front", 3), answer: { kind: "reading", unit: "psi", values: [{ value: 3 }] } },
  ],
  ["no answer", { item: "electrics.horn" }],
  ["an instrument nobody named", { ...treadDepth("left-front", 3), instrument: "nobody-s" }],
])("%s is refused with what is wrong", async (_, finding) => {
  const { results } = await apply({ id: randomUUID(), op: "set", finding, base: null });
  expect(results).toMatchObject([{ result: "refused", problems: [{ at: expect.stringContaining("/") }] }]);
});

test("of two devices that change one finding at once, one wins and the other sees what is there", async () => {
  await apply(setOperation(horn("yes")));
  const answers = await Promise.all([
    apply(setOperation(horn("no"), 1)),
    apply(setOperation(horn("intermittent"), 1)),
  ]);
  const results = answers.flatMap((answer) => answer.results.map(({ result }) => result));
  expect(results.toSorted()).toEqual(["applied", "conflict"]);
});

test("a statement's findings are nobody's to be blind to; the claim is dropped", async () => {
  await apply(setOperation({ ...headliner("as-new"), blind: true }));
  expect((await findings())[0]).not.toHaveProperty("blind");
});

test("operations of hundreds of findings arrive together", async () => {
  const sealed = await apply(
    ...["left-front", "right-front", "left-rear", "right-rear"].map((at) => setOperation(treadDepth(at, 5))),
  );
  expect(sealed.results.every(({ result }) => result === "applied")).toBe(true);
  expect(sealed.revision).toBe(2);
});
