import "fake-indexeddb/auto";
import type { Operation } from "@evenhand/shared/http/reports";
import { beforeEach, describe, expect, test, vi } from "vitest";
import { Refusal, unreachable } from "../service/refusal.ts";
import { changeFinding } from "./changes.ts";
import { leaveBy, type Leaving } from "./forget.ts";
import { forgetArrived, forgetReport, isNotTheirs, onlyHere, sendEverything } from "./leaving.ts";
import { pageOwner } from "./owner.ts";
import { type KeptDraft, store } from "./store.ts";
import { sendWaiting } from "./sync.ts";
import { hornWorks } from "./testing/horn.ts";

const [first, second] = ["018f0000-0000-7000-8000-000000000001", "018f0000-0000-7000-8000-000000000002"];
const keep = (report: string, position = "") =>
  changeFinding(report, `electrics.horn@${position}`, { finding: { ...hornWorks, position } });
const refusal = (status: number) => new Refusal({ type: "a", title: "", status, detail: "" });

/** A service that takes everything. */
const taking = (report: string) =>
  sendWaiting(report, (_: string, operations: readonly Operation[]) =>
    Promise.resolve({
      revision: 2,
      results: operations.map(({ id }) => ({ id, result: "applied", revision: 1 }) as const),
    }),
  );

const draftOf = (id: string): KeptDraft["draft"] => JSON.parse(JSON.stringify({ id, report: {} }));

beforeEach(async () => {
  await Promise.all([store.findings.clear(), store.operations.clear(), store.drafts.clear()]);
});

describe("before signing out", () => {
  test("everything that waits is sent, of every report", async () => {
    await keep(first);
    await keep(first, "left");
    await keep(second);
    expect(await onlyHere()).toEqual(
      new Map([
        [first, 2],
        [second, 1],
      ]),
    );
    expect(await sendEverything(taking)).toBe(0);
    expect(await store.operations.count()).toBe(0);
  });

  test("a photograph that is on this device alone is counted, and one taken away here is not", async () => {
    const photograph = { report: first, item: "", position: "", name: "car.jpg", file: new Blob() };
    await store.uploads.bulkPut([
      { ...photograph, id: "a" },
      { ...photograph, id: "b", dropped: true },
    ]);
    expect(await onlyHere()).toEqual(new Map([[first, 1]]));
    await store.uploads.clear();
  });

  test("what one report refuses keeps no other from being sent, and is counted", async () => {
    await keep(first);
    await keep(second);
    const refusing = (report: string) => (report === first ? Promise.reject(refusal(409)) : taking(report));
    expect(await sendEverything(refusing)).toBe(1);
    expect(await onlyHere()).toEqual(new Map([[first, 1]]));
  });

  test("with no signal everything is counted as left", async () => {
    await keep(first);
    await keep(second);
    expect(await sendEverything(() => Promise.reject(new Refusal(unreachable)))).toBe(2);
  });

  test("what could not be read counts, though there is nothing to send", async () => {
    await store.findings.put({
      report: first,
      place: "electrics.horn@",
      finding: null,
      base: null,
      state: "saved",
      unread: { texts: { "reading.0": "abc" } },
    });
    expect(await sendEverything(taking)).toBe(1);
  });

  test("a store that throws is no empty store", async () => {
    await keep(first);
    await expect(sendEverything(() => Promise.reject(new Error("no room")))).rejects.toThrow("no room");
  });
});

test("after a session that ended unasked only what never arrived stays", async () => {
  await keep(first);
  await taking(first);
  await keep(second);
  await store.drafts.bulkPut([first, second].map((report) => ({ report, draft: draftOf(report) })));
  await forgetArrived();
  expect(await store.drafts.count()).toBe(0);
  expect((await store.findings.toArray()).map(({ report }) => report)).toEqual([second]);
  await taking(second);
  await forgetArrived();
  expect(await store.findings.count()).toBe(0);
});

describe("a report that is not theirs", () => {
  test("is told by what the service says, never by its silence", () => {
    expect([401, 403, 404].map((status) => isNotTheirs(refusal(status)))).toEqual([true, true, true]);
    expect([0, 409, 500, 503].map((status) => isNotTheirs(refusal(status)))).toEqual(Array(4).fill(false));
    expect([isNotTheirs(null), isNotTheirs(new Error("404"))]).toEqual([false, false]);
  });

  test("leaves the device, but for what was typed here and never arrived", async () => {
    await keep(first);
    await taking(first);
    await keep(first, "left");
    await keep(second);
    await taking(second);
    await forgetReport(first);
    const left = await store.findings.toArray();
    expect(left.map(({ report, place }) => [report, place])).toEqual([
      [first, "electrics.horn@left"],
      [second, "electrics.horn@"],
    ]);
    expect(await onlyHere()).toEqual(new Map([[first, 1]]));
  });
});

const unread = (): Promise<unknown> =>
  store.findings.put({
    report: first,
    place: "electrics.horn@",
    finding: null,
    base: null,
    state: "saved",
    unread: { texts: { "reading.0": "abc" } },
  });
/** What happened, in order. */
const leaving = async (answer: Leaving, end = () => Promise.resolve()) => {
  const happened: string[] = [];
  const left = await leaveBy(
    pageOwner() ?? "inspector",
    async () => {
      happened.push("ended");
      await end();
    },
    (count) => {
      happened.push(`asked of ${count}`);
      return Promise.resolve(answer);
    },
  );
  return { happened, left, kept: await store.findings.count() };
};

describe("ending every session, or the account", () => {
  test("asks nothing and forgets all where nothing is left", async () => {
    await store.findings.put({
      report: second,
      place: "electrics.horn@",
      finding: hornWorks,
      base: 1,
      state: "saved",
    });
    expect(await leaving("stay")).toEqual({ happened: ["ended"], left: true, kept: 0 });
  });

  test("asks before it ends anything, and ends nothing where the person stays", async () => {
    await unread();
    expect(await leaving("stay")).toEqual({ happened: ["asked of 1"], left: false, kept: 1 });
  });

  test("keeps what never arrived, or throws it away, as was said", async () => {
    await unread();
    expect(await leaving("keep")).toEqual({ happened: ["asked of 1", "ended"], left: true, kept: 1 });
    expect(await leaving("throw-away")).toEqual({ happened: ["asked of 1", "ended"], left: true, kept: 0 });
  });

  test("forgets nothing where the end was refused: a wrong password, no signal", async () => {
    await unread();
    await expect(leaving("throw-away", () => Promise.reject(refusal(422)))).rejects.toBeInstanceOf(Refusal);
    expect(await store.findings.count()).toBe(1);
  });
});

test("on another account's page nothing of that account is sent, counted or thrown away", async () => {
  await unread();
  await leaving("keep");
  await unread();
  const asked: (number | null)[] = [];
  const ended = await leaveBy(
    "somebody-else",
    () => Promise.resolve(),
    (left) => {
      asked.push(left);
      return Promise.resolve("throw-away");
    },
  );
  expect([asked, ended, await store.findings.count()]).toEqual([[null], true, 1]);
});

/** The page loaded anew by an account. */
const load = async (account: string) => {
  vi.resetModules();
  const owner = await import("./owner.ts");
  expect(owner.takePageFor(account)).toBe(true);
  return { owner, ...(await import("./store.ts")) };
};

describe("what a device keeps", () => {
  test("is one account's: another finds nothing, and the first finds it again", async () => {
    const inspector = await load("inspector");
    await inspector.store.findings.put({
      report: first,
      place: "electrics.horn@",
      finding: hornWorks,
      base: null,
      state: "waiting",
    });
    const dealer = await load("dealer");
    expect(await dealer.store.findings.count()).toBe(0);
    const again = await load("inspector");
    expect(await again.store.findings.count()).toBe(1);
  });

  test("makes a page stay its account's for as long as it is loaded", async () => {
    const { owner } = await load("inspector");
    expect(owner.takePageFor("dealer")).toBe(false);
    expect(owner.pageOwner()).toBe("inspector");
    expect(owner.takePageFor("inspector")).toBe(true);
  });
});
