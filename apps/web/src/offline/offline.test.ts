import "fake-indexeddb/auto";
import type { Finding } from "@evenhand/shared/finding";
import {
  type Operation,
  type OperationResult,
  operationsBytes,
  type ReportDraft,
} from "@evenhand/shared/http/reports";
import { beforeEach, describe, expect, test } from "vitest";
import { readyToSeal } from "./before-seal.ts";
import { changeFinding, keepDraft, settleConflict } from "./changes.ts";
import { store } from "./store.ts";
import { sendWaiting } from "./sync.ts";

const report = "018f0000-0000-7000-8000-000000000001";
const place = "electrics.horn@";
const horn = (value: "yes" | "no" | "intermittent"): Finding => ({
  item: "electrics.horn",
  position: "",
  answer: { kind: "working", value },
  firmness: "asserted",
  basis: "seen",
});

type Answer = (operation: Operation) => OperationResult;
const sent: Operation[] = [];
/** A service that answers each change as told, and notes it. */
const answering = (answer: Answer) => (_: string, operations: readonly Operation[]) => {
  sent.push(...operations);
  return Promise.resolve({ revision: 7, results: operations.map(answer) });
};
const applied: Answer = ({ id, base }) => ({ id, result: "applied", revision: (base ?? 0) + 1 });
const conflict =
  (current: Finding | null): Answer =>
  ({ id }) => ({ id, result: "conflict", revision: 4, current });

/** As the service may hold it: also what no contract takes any more. */
const draftOf = (findings: readonly unknown[], revision = 7): ReportDraft => {
  const written: ReportDraft = JSON.parse(
    JSON.stringify({
      id: report,
      revision,
      vehicle: report,
      order: null,
      visit: null,
      brief: null,
      drafting: true,
      report: { findings },
      handbook: { limits: {}, makers: [] },
      findings: findings.map(() => ({ item: "electrics.horn", position: "", revision: 1 })),
      versions: [],
    }),
  );
  return written;
};

beforeEach(async () => {
  sent.length = 0;
  await Promise.all([store.findings.clear(), store.operations.clear(), store.drafts.clear()]);
});
const row = () => store.findings.get([report, place]);

const inConflict = async (theirs: Finding | null) => {
  await changeFinding(report, place, { finding: horn("yes") });
  await sendWaiting(report, answering(conflict(theirs)));
};

test("what is more than the service takes at once is sent in turns, all of it", async () => {
  const places = Array.from({ length: 70 }, (_, at) => `electrics.lamp-${at}`);
  for (const item of places)
    await changeFinding(report, `${item}@`, { finding: { ...horn("yes"), item, note: "é".repeat(4_000) } });
  const bodies: number[] = [];
  await sendWaiting(report, (_, operations) => {
    bodies.push(new TextEncoder().encode(JSON.stringify({ operations })).byteLength);
    return answering(applied)(report, operations);
  });
  expect(sent.map((one) => (one.op === "set" ? one.finding.item : ""))).toEqual(places);
  expect(bodies.length).toBeGreaterThan(1);
  expect(Math.max(...bodies)).toBeLessThan(operationsBytes / 4);
});

describe("a conflict", () => {
  test("keeps both, and nothing more is sent", async () => {
    await inConflict(horn("no"));
    expect(await row()).toMatchObject({
      state: "conflict",
      finding: horn("yes"),
      theirs: horn("no"),
      base: 4,
    });
    expect(await store.operations.count()).toBe(0);
  });

  test("is not decided by typing on: both still stand, with the new words", async () => {
    await inConflict(horn("no"));
    await changeFinding(report, place, { finding: horn("intermittent") });
    expect(await row()).toMatchObject({
      state: "conflict",
      finding: horn("intermittent"),
      theirs: horn("no"),
    });
    await sendWaiting(report, answering(applied));
    expect(sent).toHaveLength(1);
  });

  test("that comes while one types on takes what was typed since with it: nothing writes over the other unasked", async () => {
    await changeFinding(report, place, { finding: horn("yes") });
    await sendWaiting(report, async (_, operations) => {
      if (sent.length === 0) await changeFinding(report, place, { finding: horn("intermittent") });
      return answering(conflict(horn("no")))(report, operations);
    });
    expect(sent).toHaveLength(1);
    expect(await row()).toMatchObject({
      state: "conflict",
      finding: horn("intermittent"),
      theirs: horn("no"),
    });
  });

  test("ends with mine, on top of what the service holds", async () => {
    await inConflict(horn("no"));
    await settleConflict({ report, place }, "mine");
    await sendWaiting(report, answering(applied));
    expect(sent.at(-1)).toMatchObject({ op: "set", base: 4, finding: horn("yes") });
    expect(await row()).toMatchObject({ state: "saved", base: 5, finding: horn("yes") });
    expect((await row())?.theirs).toBeUndefined();
  });

  test("ends with theirs, and a later change goes on top of it", async () => {
    await inConflict(horn("no"));
    await settleConflict({ report, place }, "theirs");
    expect(await row()).toMatchObject({ state: "saved", base: 4, finding: horn("no") });
    await changeFinding(report, place, { finding: horn("intermittent") });
    await sendWaiting(report, answering(applied));
    expect(sent.at(-1)).toMatchObject({ base: 4, finding: horn("intermittent") });
  });

  test("with one that was taken back there ends as nothing, where that is chosen", async () => {
    await inConflict(null);
    await settleConflict({ report, place }, "theirs");
    expect(await row()).toBeUndefined();
  });
});

describe("what was typed and cannot be read", () => {
  const unread = { texts: { "reading.0": "abc" }, unit: "mm" } as const;

  test("stays in its place beside what was read, through sending and through what the service says", async () => {
    await changeFinding(report, place, { finding: horn("yes"), unread });
    await sendWaiting(report, answering(applied));
    await keepDraft(draftOf([horn("no")]));
    expect(await row()).toMatchObject({ unread, finding: horn("yes") });
  });

  test("stays where nothing beside it could be read, and nothing is sent", async () => {
    await changeFinding(report, place, { finding: null, unread });
    await sendWaiting(report, answering(applied));
    expect(await row()).toMatchObject({ unread, finding: null, state: "saved" });
    expect(sent).toHaveLength(0);
  });

  test("goes when it is corrected", async () => {
    await changeFinding(report, place, { finding: null, unread });
    await changeFinding(report, place, { finding: horn("yes") });
    await sendWaiting(report, answering(applied));
    expect((await row())?.unread).toBeUndefined();
  });
});

test("a stored finding that cannot be read any more keeps its place, and is answered anew on top of it", async () => {
  await keepDraft(draftOf([{ ...horn("yes"), answer: { kind: "sounds" } }]));
  expect(await row()).toMatchObject({ state: "refused", finding: null, base: 1 });
  await changeFinding(report, place, { finding: horn("yes") });
  await sendWaiting(report, answering(applied));
  expect(sent).toMatchObject([{ op: "set", base: 1 }]);
  expect(await row()).toMatchObject({ state: "saved", base: 2 });
});

test("a draft that was on its way while a newer answer was saved puts nothing back", async () => {
  await keepDraft(draftOf([horn("no")], 6));
  await changeFinding(report, place, { finding: horn("yes") });
  await sendWaiting(report, answering(applied));
  await keepDraft(draftOf([horn("no")], 6));
  expect(await row()).toMatchObject({ finding: horn("yes"), state: "saved" });
  await keepDraft(draftOf([horn("intermittent")], 8));
  expect(await row()).toMatchObject({ finding: horn("intermittent") });
});

const fetched = (findings: readonly unknown[]) => () => Promise.resolve(draftOf(findings, 9));
const notSent = () => Promise.resolve(null);

describe("before the seal", () => {
  test("what is kept here and not sent stops it, whatever the page shows", async () => {
    await changeFinding(report, place, { finding: horn("yes") });
    await expect(readyToSeal(report, fetched([horn("yes")]), notSent)).rejects.toMatchObject({
      reason: { why: "unsent", places: [place] },
    });
  });

  test("what still stands in line stops it, though its place says that all has arrived", async () => {
    await keepDraft(draftOf([horn("yes")]));
    await store.operations.add({ id: "018f0000-0000-7000-8000-000000000009", report, place });
    await expect(readyToSeal(report, fetched([horn("yes")]), notSent)).rejects.toMatchObject({
      reason: { why: "unsent", places: [place] },
    });
  });

  test("a photograph that is still on this device stops it, at its place; one that was not taken does not", async () => {
    await keepDraft(draftOf([]));
    const photograph = {
      id: "a",
      report,
      item: "electrics.horn",
      position: "",
      name: "horn.jpg",
      file: new Blob(),
    };
    await store.uploads.put(photograph);
    await expect(readyToSeal(report, fetched([]), notSent)).rejects.toMatchObject({
      reason: { why: "unsent", places: [place] },
    });
    const refusal = { type: "evidence-full", title: "", status: 409, detail: "" };
    await store.uploads.update("a", { refusal });
    expect(await readyToSeal(report, fetched([]), notSent)).toBe(9);
    await store.uploads.clear();
  });

  test("what cannot be read stops it", async () => {
    await changeFinding(report, place, { finding: null, unread: { texts: { "reading.0": "abc" } } });
    await expect(
      readyToSeal(report, fetched([]), (id) => sendWaiting(id, answering(applied))),
    ).rejects.toMatchObject({ reason: { why: "unsent" } });
  });

  test("what another device changed stops it once, and is on the page then", async () => {
    await keepDraft(draftOf([]));
    await expect(readyToSeal(report, fetched([horn("no")]), notSent)).rejects.toMatchObject({
      reason: { why: "changed", places: [place] },
    });
    expect(await row()).toMatchObject({ finding: horn("no") });
    expect(await readyToSeal(report, fetched([horn("no")]), notSent)).toBe(9);
  });

  test("sends what waits, and gives the revision of what is seen", async () => {
    await changeFinding(report, place, { finding: horn("yes") });
    const revision = await readyToSeal(report, fetched([horn("yes")]), (id) =>
      sendWaiting(id, answering(applied)),
    );
    expect(revision).toBe(9);
    expect(sent).toHaveLength(1);
  });
});
