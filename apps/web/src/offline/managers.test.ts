import "fake-indexeddb/auto";
import { problemType } from "@evenhand/shared/http/problem-codes";
import { afterEach, beforeEach, describe, expect, test, vi } from "vitest";
import { Refusal, unreachable } from "../service/refusal.ts";
import type { Managers } from "./draft-queue.ts";
import { managersOf, storeOf, whyFailed } from "./managers.ts";
import { store, Store, type KeptFinding } from "./store.ts";
import { hornWorks } from "./testing/horn.ts";

const refusal = (type: string, status: number) => new Refusal({ type, title: "", status, detail: "" });

test("no answer at all is no signal; a sealed report is sealed; everything else is a refusal", () => {
  expect(whyFailed(new Refusal(unreachable))).toBe("lose-signal");
  expect(whyFailed(refusal(problemType("report-sealed"), 409))).toBe("seal");
  expect(whyFailed(refusal(problemType("not-found"), 404))).toBe("refuse");
  expect(whyFailed(refusal("unreachable", 502))).toBe("refuse");
  expect(whyFailed(new Error("no room"))).toBe("refuse");
});

const report = "018f0000-0000-7000-8000-000000000001";
const other = "018f0000-0000-7000-8000-000000000002";
const place = "electrics.horn@";

/** Watches how many findings are kept. */
const follow = (watch: Managers["store"]["watch"]) => {
  const counts: number[] = [];
  const looks = new Set<() => void>();
  const end = watch(
    ({ findings }) => {
      counts.push(findings.size);
      for (const look of looks) look();
    },
    (why) => {
      throw why;
    },
  );
  const told = (count: number) =>
    new Promise<void>((done) => {
      const look = () => {
        if (counts.at(-1) === count) done();
      };
      looks.add(look);
      look();
    });
  return { counts, end, told };
};

describe("the store of one report", () => {
  beforeEach(async () => Promise.all(store.tables.map((table) => table.clear())));

  test("gives what is kept of it, and nothing of another", async () => {
    const { read, keep, keepGate } = storeOf(report);
    await keep(place, { finding: hornWorks });
    await keepGate("lift", "2026-05-04T15:00:00.000Z");
    await storeOf(other).keep(place, { finding: null });
    await storeOf(other).keepGate("road", "2026-05-04T16:00:00.000Z");
    const { draft, findings, gates } = await read();
    expect(draft).toBeUndefined();
    expect([...findings]).toMatchObject([[place, { report, place, finding: hornWorks, state: "waiting" }]]);
    expect(gates).toEqual([{ report, stage: "lift", time: "2026-05-04T15:00:00.000Z" }]);
  });

  test("settles a conflict as the person says", async () => {
    const { read, settle } = storeOf(report);
    const kept: KeptFinding = { report, place, finding: hornWorks, base: 3, state: "conflict", theirs: null };
    await store.findings.put(kept);
    await settle(kept, "theirs");
    expect((await read()).findings.size).toBe(0);
  });

  test("tells whoever watches, at once and of every change, until they end it", async () => {
    const { watch, keep } = storeOf(report);
    const one = follow(watch);
    await one.told(0);
    await keep(place, { finding: hornWorks });
    await one.told(1);
    one.end();
    const two = follow(watch);
    await keep("electrics.lamps@plate", { finding: hornWorks });
    await two.told(2);
    two.end();
    expect(one.counts).not.toContain(2);
  });

  test("says why it cannot be read", async () => {
    const broken = new Store("broken");
    broken.use({
      stack: "dbcore",
      create: (core) => ({
        ...core,
        table: (name) => ({
          ...core.table(name),
          get: () => Promise.reject(new Error("the disk is broken")),
        }),
      }),
    });
    const why = await new Promise((failed) => {
      storeOf(report, broken).watch(() => {}, failed);
    });
    expect(why).toMatchObject({ message: "the disk is broken" });
  });
});

describe("the page's own clock and signal", () => {
  afterEach(() => {
    vi.useRealTimers();
    vi.unstubAllGlobals();
  });

  test("the clock tells this device's hour, and rings once, after as long as it was told, or not at all", () => {
    vi.useFakeTimers({ now: new Date("2026-05-04T15:00:00Z") });
    const { clock } = managersOf(report);
    expect(clock.now()).toEqual(new Date("2026-05-04T15:00:00Z"));
    const rang: string[] = [];
    clock.ringAfter(350, () => rang.push("kept"));
    const end = clock.ringAfter(350, () => rang.push("ended"));
    vi.advanceTimersByTime(349);
    expect(rang).toEqual([]);
    end();
    vi.advanceTimersByTime(1000);
    expect(rang).toEqual(["kept"]);
  });

  test("the signal is heard whenever it returns, until nobody listens", () => {
    const page = new EventTarget();
    vi.stubGlobal("addEventListener", page.addEventListener.bind(page));
    vi.stubGlobal("removeEventListener", page.removeEventListener.bind(page));
    let heard = 0;
    const deafen = managersOf(report).onSignal(() => {
      heard += 1;
    });
    page.dispatchEvent(new Event("offline"));
    expect(heard).toBe(0);
    page.dispatchEvent(new Event("online"));
    page.dispatchEvent(new Event("online"));
    expect(heard).toBe(2);
    deafen();
    page.dispatchEvent(new Event("online"));
    expect(heard).toBe(2);
  });
});
