import "fake-indexeddb/auto";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { changeFinding } from "./changes.ts";
import { endSession, leaveBy, sendBeforeLeaving } from "./forget.ts";
import { managersOf } from "./managers.ts";
import { pageOwner } from "./owner.ts";
import { store } from "./store.ts";
import { hornWorks } from "./testing/horn.ts";

const report = "018f0000-0000-7000-8000-000000000001";
const keepHorn = () => changeFinding(report, "electrics.horn@", { finding: hornWorks });
const time = "2026-05-04T15:00:00.000Z";

interface Asked {
  readonly method: string;
  readonly path: string;
  readonly ifMatch: string | null;
  readonly body: unknown;
}

const asked: Asked[] = [];
let answer: (asked: Asked) => { readonly status: number; readonly body?: unknown };

/** What the page's line does with a request: it is noted as it goes out, and answered as told. */
const line = async (path: string, init?: RequestInit): Promise<Response> => {
  const request = new Request(new URL(path, "https://evenhand.example"), init);
  const text = await request.text();
  const body: unknown = text === "" ? undefined : JSON.parse(text);
  const one = { method: request.method, path, ifMatch: request.headers.get("if-match"), body };
  asked.push(one);
  const said = answer(one);
  return new Response(said.body === undefined ? null : JSON.stringify(said.body), { status: said.status });
};

beforeEach(async () => {
  await Promise.all(store.tables.map((table) => table.clear()));
  asked.length = 0;
  vi.stubGlobal("fetch", line);
});
afterEach(() => vi.unstubAllGlobals());

const noLine = () => vi.stubGlobal("fetch", () => Promise.reject(new TypeError("no line")));

describe("the page's own service", () => {
  test("is sent each change by its report, and the gates that were read on top of the report as it stands", async () => {
    await keepHorn();
    await store.gates.put({ report, stage: "lift", time });
    answer = ({ method }) => {
      if (method === "POST")
        return { status: 200, body: { revision: 4, results: [{ id: "x", result: "applied", revision: 1 }] } };
      return { status: 200, body: { revision: 4, report: {} } };
    };
    await managersOf(report).sender.send();
    expect(asked).toMatchObject([
      {
        method: "POST",
        path: `/api/v1/reports/${report}/operations`,
        body: { operations: [{ op: "set", base: null, finding: hornWorks }] },
      },
      { method: "GET", path: `/api/v1/reports/${report}` },
      {
        method: "PATCH",
        path: `/api/v1/reports/${report}`,
        ifMatch: '"4"',
        body: { cautionsRead: [{ stage: "lift", time }] },
      },
    ]);
    expect(await store.findings.toArray()).toMatchObject([{ state: "saved", base: 1 }]);
    expect(await store.gates.count()).toBe(0);
  });
});

describe("the session's end", () => {
  test("is asked of the service, and takes everything off this device, or nothing", async () => {
    await keepHorn();
    answer = () => ({ status: 204 });
    await endSession("keep");
    expect(await store.findings.count()).toBe(1);
    await endSession("forget");
    expect(await store.findings.count()).toBe(0);
    expect(asked.map(({ method, path }) => `${method} ${path}`)).toEqual(
      Array(2).fill("DELETE /api/v1/sessions/current"),
    );
  });

  test("that is there already is no obstacle to forgetting", async () => {
    await keepHorn();
    answer = () => ({ status: 401, body: { type: "a", title: "", status: 401, detail: "" } });
    await endSession("forget");
    expect(await store.findings.count()).toBe(0);
  });

  test("that did not come about leaves the device as it was", async () => {
    await keepHorn();
    answer = () => ({ status: 503, body: { type: "a", title: "", status: 503, detail: "" } });
    await expect(endSession("forget")).rejects.toMatchObject({ problem: { status: 503 } });
    noLine();
    await expect(endSession("forget")).rejects.toMatchObject({ problem: { status: 0 } });
    expect(await store.findings.count()).toBe(1);
  });
});

describe("before leaving", () => {
  const account = pageOwner() ?? "inspector";

  test("what waits is sent, and what did not arrive is counted", async () => {
    await keepHorn();
    noLine();
    expect(await sendBeforeLeaving(account)).toBe(1);
    vi.stubGlobal("fetch", line);
    answer = () => ({
      status: 200,
      body: { revision: 4, results: [{ id: "x", result: "applied", revision: 1 }] },
    });
    expect(await sendBeforeLeaving(account)).toBe(0);
  });

  test("a device that does not say what it holds is not taken for an empty one: the person is asked", async () => {
    await keepHorn();
    answer = () => ({ status: 200, body: null });
    expect(await sendBeforeLeaving(account)).toBeNull();
    const left: (number | null)[] = [];
    const stay = (count: number | null) => {
      left.push(count);
      return Promise.resolve("stay" as const);
    };
    expect(await leaveBy(account, () => Promise.resolve(), stay)).toBe(false);
    expect([left, await store.findings.count()]).toEqual([[null], 1]);
  });

  test("another account's page is neither sent nor counted", async () => {
    await keepHorn();
    expect(await sendBeforeLeaving("somebody-else")).toBeNull();
    expect(asked).toEqual([]);
  });
});
