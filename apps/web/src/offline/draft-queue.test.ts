import { expect, test } from "vitest";
import { DraftQueue, type Kept, type Managers } from "./draft-queue.ts";

const change = { finding: null };
const empty: Kept = { draft: undefined, findings: new Map(), gates: [] };

/** A queue whose store and line do as they are told. */
const start = (store: Partial<Managers["store"]>, send: () => Promise<unknown> = () => Promise.resolve()) => {
  const rings: number[] = [];
  const watching: ((kept: Kept) => void)[] = [];
  const queue = new DraftQueue({
    store: {
      read: () => Promise.resolve(empty),
      watch: (next) => {
        watching.push(next);
        return () => {};
      },
      keep: () => Promise.resolve(),
      settle: () => Promise.resolve(),
      keepGate: () => Promise.resolve(),
      ...store,
    },
    sender: { send, whyFailed: () => "refuse" },
    clock: {
      now: () => new Date(0),
      ringAfter: (wait) => {
        rings.push(wait);
        return () => {};
      },
    },
    onSignal: () => () => {},
  });
  const stop = queue.start();
  return { queue, rings, stop, changed: (kept: Kept) => watching.forEach((next) => next(kept)) };
};

test("what this device cannot keep stands on the page as not kept, until it can", async () => {
  let full = true;
  const { queue } = start({ keep: () => (full ? Promise.reject(new Error("full")) : Promise.resolve()) });
  await queue.keep("a@", change);
  expect(queue.snapshot().writes.lost.get("a@")).toEqual({ nth: 1, change });
  full = false;
  await queue.keep("a@", change);
  expect(queue.snapshot().writes).toMatchObject({ lost: new Map(), underWay: new Map() });
});

test("what was kept and cannot be read again does not count as kept", async () => {
  const { queue } = start({ read: () => Promise.reject(new Error("closed")) });
  await queue.keep("a@", change);
  expect(queue.snapshot().writes.lost.size).toBe(1);
});

test("a store that cannot be read says so", () => {
  const { queue } = start({
    watch: (_, failed) => {
      failed("no store");
      return () => {};
    },
  });
  expect(queue.snapshot()).toMatchObject({ failure: "no store", kept: undefined });
});

test("a gate that was read waits like an answer, with the hour of this device's clock", async () => {
  const gates: { report: string; stage: "road"; time: string }[] = [];
  const { queue, rings } = start({
    keepGate: (_, time) => {
      gates.push({ report: "r", stage: "road", time });
      return Promise.resolve();
    },
    read: () => Promise.resolve({ ...empty, gates }),
  });
  await queue.readCautions("road");
  expect(gates[0]?.time).toBe("1970-01-01T00:00:00.000Z");
  expect(queue.snapshot().line).toMatchObject({ state: "due", waiting: 1 });
  expect(rings).toEqual([350]);
});

test("once it is stopped nothing is set to ring, and what is on its way still arrives", async () => {
  const arrivals: (() => void)[] = [];
  const sent = new Promise<void>((done) => {
    arrivals.push(done);
  });
  const { queue, rings, stop, changed } = start({}, () => sent);
  queue.send();
  stop();
  changed({ ...empty, gates: [{ report: "r", stage: "road", time: "1970-01-01T00:00:00Z" }] });
  for (const arrive of arrivals) arrive();
  await sent;
  await Promise.resolve();
  expect(queue.snapshot().line.state).toBe("due");
  expect(rings).toEqual([]);
});
