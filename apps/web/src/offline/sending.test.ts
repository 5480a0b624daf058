import "fake-indexeddb/auto";
import type { Finding } from "@evenhand/shared/finding";
import type { Operation, OperationResult, ReportDraft } from "@evenhand/shared/http/reports";
import { beforeEach, describe, expect, test } from "vitest";
import { changeFinding, keepDraft } from "./changes.ts";
import { store, type KeptFinding } from "./store.ts";
import { sendWaiting } from "./sync.ts";

const report = "018f0000-0000-7000-8000-000000000003";
const place = "electrics.lamps@left-stop";
const lamp = (value: "yes" | "no" | "intermittent", position = "left-stop"): Finding => ({
  item: "electrics.lamps",
  position,
  answer: { kind: "working", value },
  firmness: "asserted",
  basis: "seen",
});
const type = (value: "yes" | "no" | "intermittent" | null, position = "left-stop") =>
  changeFinding(report, `electrics.lamps@${position}`, {
    finding: value === null ? null : lamp(value, position),
  });
const row = () => store.findings.get([report, place]);
const held = (more: Partial<KeptFinding> = {}): KeptFinding => ({
  report,
  place,
  finding: lamp("yes"),
  base: 3,
  state: "saved",
  ...more,
});

type Answer = (operation: Operation) => OperationResult;
const bodies: (readonly Operation[])[] = [];
const applied: Answer = ({ id, base }) => ({ id, result: "applied", revision: (base ?? 0) + 1 });
const refused: Answer = ({ id }) => ({
  id,
  result: "refused",
  problems: [{ at: "answer", reason: "No such answer." }],
});
/** A service that notes what it is sent and answers as told; `meanwhile` happens before it does. */
const sendTo = (answer: Answer, meanwhile: () => Promise<unknown> = () => Promise.resolve()) =>
  sendWaiting(report, async (_, operations) => {
    bodies.push(operations);
    await meanwhile();
    return { revision: 7, results: operations.map(answer) };
  });
const draft: ReportDraft = JSON.parse(
  JSON.stringify({ id: report, revision: 2, report: { findings: [] }, findings: [] }),
);
const values = () =>
  bodies.map((body) =>
    body.map((one) =>
      one.op === "set" && one.finding.answer.kind === "working" ? one.finding.answer.value : one.op,
    ),
  );

beforeEach(async () => {
  bodies.length = 0;
  await Promise.all(
    [store.findings, store.operations, store.drafts, store.gates].map((table) => table.clear()),
  );
});

describe("what waits", () => {
  test("is sent once, as it was typed last", async () => {
    await type("no");
    await type("intermittent");
    await type("yes");
    expect(await row()).toMatchObject({ state: "waiting", base: null });
    expect(await store.operations.count()).toBe(1);
    await sendTo(applied);
    expect(values()).toEqual([["yes"]]);
    expect(await row()).toMatchObject({ state: "saved", base: 1, finding: lamp("yes") });
  });

  test("of each place is by itself", async () => {
    await type("no", "left-stop");
    await type("yes", "right-stop");
    expect(await store.operations.count()).toBe(2);
    await sendTo(applied);
    expect(values()).toEqual([["no", "yes"]]);
  });

  test("and was typed while it was being sent follows on top of it, in a turn of its own", async () => {
    await type("no");
    await sendTo(applied, async () => {
      if (bodies.length === 1) await type("yes");
    });
    expect(values()).toEqual([["no"], ["yes"]]);
    expect(bodies.flat().map(({ base }) => base)).toEqual([null, 1]);
    expect(await row()).toMatchObject({ state: "saved", base: 2, finding: lamp("yes") });
  });

  test("is waiting still while only an earlier answer of its place has arrived", async () => {
    await type("no");
    const lost = sendTo(applied, async () => {
      if (bodies.length === 2) throw new Error("no signal");
      await type("yes");
    });
    await expect(lost).rejects.toThrow("no signal");
    expect(await row()).toMatchObject({ state: "waiting", base: 1, finding: lamp("yes") });
  });

  test("and was sent without an answer goes again as it was, under the same name, before what was typed since", async () => {
    await type("no");
    await expect(sendTo(applied, () => Promise.reject(new Error("no signal")))).rejects.toThrow("no signal");
    await type("yes");
    await type("intermittent");
    const known: Answer = (operation) =>
      operation.id === bodies[0]?.[0]?.id
        ? { id: operation.id, result: "duplicate", revision: 9 }
        : applied(operation);
    await sendTo(known);
    expect(values()).toEqual([["no"], ["no"], ["intermittent"]]);
    expect(bodies[1]?.[0]).toEqual(bodies[0]?.[0]);
    expect(bodies[2]?.[0]?.base).toBe(9);
    expect(await row()).toMatchObject({ state: "saved", base: 10 });
  });

  test("and was not answered, beside what was, waits and is sent again", async () => {
    await type("no", "left-stop");
    await type("yes", "right-stop");
    await sendWaiting(report, async (_, operations) => {
      bodies.push(operations);
      return { revision: 7, results: operations.slice(0, 1).map(applied) };
    });
    expect(values()).toEqual([["no", "yes"], ["yes"]]);
    expect(bodies[1]?.[0]).toEqual(bodies[0]?.[1]);
    expect((await store.findings.toArray()).map(({ state }) => state)).toEqual(["saved", "saved"]);
  });

  test("is sent two hundred at a time", async () => {
    for (let at = 0; at < 201; at += 1) await type("yes", `p${at}`);
    await sendTo(applied);
    expect(bodies.map(({ length }) => length)).toEqual([200, 1]);
  });

  test("has arrived for good: a draft that the service gave before puts nothing back, though none was kept here", async () => {
    await type("no");
    await sendTo(applied);
    await keepDraft(draft);
    expect(await row()).toMatchObject({ state: "saved", finding: lamp("no") });
    expect(await store.drafts.count()).toBe(0);
    await keepDraft({ ...draft, revision: 7 });
    expect(await row()).toBeUndefined();
  });
});

describe("what was taken back", () => {
  test("is taken back at the service, by its place, and is gone here", async () => {
    await store.findings.put(held());
    await type(null);
    await sendTo(applied);
    expect(bodies.flat()).toMatchObject([
      { op: "remove", item: "electrics.lamps", position: "left-stop", base: 3 },
    ]);
    expect(await row()).toBeUndefined();
  });

  test("and never was at the service is no matter of the service", async () => {
    await type("no");
    await type(null);
    await sendTo(applied);
    expect(bodies).toEqual([]);
    expect([await row(), await store.operations.count()]).toEqual([undefined, 0]);
  });

  test("and answered anew while that was under way stands anew", async () => {
    await store.findings.put(held());
    await type(null);
    await sendTo(applied, async () => {
      if (bodies.length === 1) await type("no");
    });
    expect(values()).toEqual([["remove"], ["no"]]);
    expect(await row()).toMatchObject({ state: "saved", base: 5, finding: lamp("no") });
  });

  test("stays in its place with what was typed there and cannot be read", async () => {
    await store.findings.put(held());
    const unread = { texts: { "reading.0": "abc" } };
    await changeFinding(report, place, { finding: null, unread });
    await sendTo(applied);
    expect(values()).toEqual([["remove"]]);
    expect(await row()).toMatchObject({ state: "saved", unread, finding: null });
  });
});

describe("what the service refuses", () => {
  test("stands as it was typed with why, until it is answered otherwise", async () => {
    await store.findings.put(held());
    await type("no");
    await sendTo(refused);
    expect(await row()).toMatchObject({
      state: "refused",
      base: 3,
      finding: lamp("no"),
      problems: [{ at: "answer", reason: "No such answer." }],
    });
    await type("yes");
    await sendTo(applied);
    const saved = await row();
    expect(saved).toMatchObject({ state: "saved", base: 4, finding: lamp("yes") });
    expect(saved?.problems).toBeUndefined();
  });

  test("and was typed on meanwhile waits, as it is typed now", async () => {
    await type("no");
    const lost = sendTo(refused, async () => {
      if (bodies.length === 2) throw new Error("no signal");
      await type("yes");
    });
    await expect(lost).rejects.toThrow("no signal");
    expect(await row()).toMatchObject({ state: "waiting", finding: lamp("yes") });
  });
});
