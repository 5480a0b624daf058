import "fake-indexeddb/auto";
import { beforeEach, expect, test } from "vitest";
import { Refusal } from "../service/refusal.ts";
import { gatesRead, keepGate, sendGates } from "./gates.ts";
import { store } from "./store.ts";

const report = "018f0000-0000-7000-8000-000000000002";
const time = "2026-05-04T15:00:00Z";
const lift = { stage: "lift", time } as const;
const road = { stage: "road", time: "2026-05-04T16:00:00Z" } as const;

type Read = ReturnType<typeof gatesRead>;
/** A service that holds one report, and refuses the first changes of it as moved. */
const service = (held: Read | undefined, moved = 0) => {
  const state = { held, moved, revision: 3 };
  return {
    state,
    get: () =>
      Promise.resolve(
        JSON.parse(JSON.stringify({ revision: state.revision, report: { cautionsRead: state.held } })),
      ),
    change: (_: string, revision: number, read: Read) => {
      if (state.moved > 0 || revision !== state.revision) {
        state.moved -= 1;
        state.revision += 1;
        return Promise.reject(
          new Refusal({ type: "/problems/moved", title: "Moved", status: 412, detail: "" }),
        );
      }
      state.held = read;
      state.revision += 1;
      return Promise.resolve();
    },
  };
};

beforeEach(async () => store.gates.clear());

test("a gate that was read waits here until the service has it, once, at the first time", async () => {
  await keepGate(report, "lift", time);
  const there = service([road]);
  await sendGates(report, there);
  expect(there.state.held).toEqual([road, lift]);
  expect(await store.gates.count()).toBe(0);
  await keepGate(report, "lift", "2026-05-05T15:00:00Z");
  await sendGates(report, there);
  expect(there.state.held).toEqual([road, lift]);
});

test("a change that came between is no obstacle; where the service cannot be reached it waits on", async () => {
  await keepGate(report, "lift", time);
  const there = service(undefined, 2);
  await sendGates(report, there);
  expect(there.state.held).toEqual([lift]);
  await keepGate(report, "road", road.time);
  const dead = new Refusal({ type: "unreachable", title: "", status: 0, detail: "" });
  await expect(sendGates(report, { ...there, get: () => Promise.reject(dead) })).rejects.toBe(dead);
  expect(await store.gates.toArray()).toEqual([{ report, ...road }]);
});

const refusing = (status: number) => new Refusal({ type: "a", title: "", status, detail: "" });

test("gates are told in the order in which they were read", async () => {
  const early = { ...road, time: "2026-05-04T14:00:00Z" };
  for (const [read, order] of [
    [road, [lift, road]],
    [early, [early, lift]],
  ] as const) {
    await keepGate(report, "road", read.time);
    await keepGate(report, "lift", time);
    const there = service(undefined);
    await sendGates(report, there);
    expect(there.state.held).toEqual(order);
  }
});

test("what came between is tried again four times, anything else is no reason to try again", async () => {
  await keepGate(report, "lift", time);
  for (const [status, tries] of [
    [409, 4],
    [412, 4],
    [422, 1],
    [500, 1],
  ] as const) {
    let asked = 0;
    const change = () => {
      asked += 1;
      return Promise.reject(refusing(status));
    };
    await expect(sendGates(report, { ...service(undefined), change })).rejects.toMatchObject({
      problem: { status },
    });
    expect([status, asked]).toEqual([status, tries]);
  }
  await expect(
    sendGates(report, { ...service(undefined), change: () => Promise.reject(new Error("broken")) }),
  ).rejects.toThrow("broken");
  expect(await store.gates.count()).toBe(1);
});

test("what the service knows already is not sent again, and the kept draft says what was read", async () => {
  await store.drafts.put({
    report,
    draft: JSON.parse(JSON.stringify({ id: report, revision: 3, report: { make: "x" } })),
  });
  await keepGate(report, "lift", "2026-05-05T15:00:00Z");
  const there = service([lift]);
  await sendGates(report, { ...there, change: () => Promise.reject(new Error("sent again")) });
  expect(await store.gates.count()).toBe(0);
  expect(await store.drafts.get(report)).toMatchObject({
    draft: { revision: 3, report: { make: "x", cautionsRead: [lift] } },
  });
});
