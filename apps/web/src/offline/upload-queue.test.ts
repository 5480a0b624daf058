import "fake-indexeddb/auto";
import type { Problem } from "@evenhand/shared/problem";
import { afterEach, beforeEach, expect, test } from "vitest";
import { Refusal, unreachable } from "../service/refusal.ts";
import { idAt, whyNotSent } from "./send-upload.ts";
import { store, type KeptUpload } from "./store.ts";
import { UploadQueue, type UploadManagers } from "./upload-queue.ts";
import { uploadStore } from "./use-uploads.ts";

const report = "018f0000-0000-7000-8000-000000000001";
const upload = (id: string, more: Partial<KeptUpload> = {}): KeptUpload => ({
  id,
  report,
  item: "wheels.tread-depth",
  position: "left-rear",
  name: `${id}.jpg`,
  file: new Blob(["tread of the left rear tire"], { type: "image/jpeg" }),
  ...more,
});

let stop = (): void => {};
const rings: (() => void)[] = [];
const signals: (() => void)[] = [];
const ends: string[] = [];

/** A queue over this device's store; its line does as it is told. */
const begin = (
  sender: Partial<UploadManagers["sender"]>,
  advise: UploadManagers["advise"] = () => Promise.resolve([]),
): UploadQueue => {
  const queue = new UploadQueue({
    store: uploadStore(),
    sender: {
      send: () => Promise.resolve(),
      drop: () => Promise.resolve(),
      whyFailed: whyNotSent,
      alone: (deed) => deed(),
      ...sender,
    },
    clock: {
      now: () => new Date(0),
      ringAfter: (_, ring) => {
        rings.push(ring);
        // What is silenced rings no more: whoever rang it would have rung nothing, and what is due would wait for ever.
        return () => {
          const at = rings.indexOf(ring);
          if (at >= 0) rings.splice(at, 1);
        };
      },
    },
    onSignal: (back) => {
      signals.push(back);
      return () => {};
    },
    advise,
    arrived: ({ id }) => Promise.resolve(ends.push(id)),
  });
  stop = queue.start();
  return queue;
};
const ring = async (): Promise<void> => {
  await expect.poll(() => rings.length).toBeGreaterThan(0);
  rings.splice(0).forEach((one) => one());
};
const kept = () => store.uploads.toArray();

beforeEach(async () => {
  rings.length = 0;
  signals.length = 0;
  ends.length = 0;
  await store.uploads.clear();
});
afterEach(() => stop());

test("files go one after the other in the order they were added, and leave this device only then", async () => {
  let under = 0;
  const queue = begin({
    send: async () => {
      under += 1;
      expect(under).toBe(1);
      await Promise.resolve();
      under -= 1;
    },
  });
  await queue.add([upload("a"), upload("b"), upload("c")]);
  expect(await kept()).toHaveLength(3);
  await ring();
  await expect.poll(kept).toEqual([]);
  expect(ends).toEqual(["a", "b", "c"]);
});

test("a line that is cut loses nothing: it goes on where it stood once the signal is back", async () => {
  const seen: (string | undefined)[] = [];
  const queue = begin({
    send: async ({ address }, { onAddress, onProgress }) => {
      seen.push(address);
      if (address !== undefined) return;
      await onAddress("/api/v1/uploads/one");
      onProgress(9);
      throw new Refusal(unreachable);
    },
  });
  await queue.add([upload("a")]);
  await ring();
  await expect.poll(() => queue.snapshot().line.state).toBe("waiting-for-signal");
  expect(await kept()).toMatchObject([{ id: "a", address: "/api/v1/uploads/one" }]);
  expect(queue.snapshot().sending).toBeUndefined();
  signals.forEach((back) => back());
  await expect.poll(kept).toEqual([]);
  expect(seen).toEqual([undefined, "/api/v1/uploads/one"]);
});

const full: Problem = {
  type: "https://evenhand.example/problems/evidence-full",
  title: "",
  status: 409,
  detail: "One place takes 40 files.",
};

test("one that the service does not take keeps its reason, and the next ones go", async () => {
  let room = false;
  const queue = begin({
    send: ({ id }) => (id === "a" && !room ? Promise.reject(new Refusal(full)) : Promise.resolve()),
  });
  await queue.add([upload("a"), upload("b")]);
  await ring();
  await expect.poll(kept).toMatchObject([{ id: "a", refusal: full }]);
  expect(ends).toEqual(["b"]);
  room = true;
  await queue.retry("a");
  await expect.poll(kept).toEqual([]);
});

test("what is taken away while it is sent stops, is taken away there too, and can be put back", async () => {
  const dropped: (string | undefined)[] = [];
  const queue = begin({
    send: async ({ id }, { onAddress }, signal) => {
      await onAddress(`/api/v1/uploads/${id}`);
      if (id === "a") await new Promise((_, fail) => signal.addEventListener("abort", fail));
    },
    drop: ({ address }) => Promise.resolve(dropped.push(address)),
  });
  await queue.add([upload("a")]);
  await ring();
  await expect.poll(kept).toMatchObject([{ address: "/api/v1/uploads/a" }]);
  await queue.remove(upload("a"));
  await expect.poll(() => dropped).toEqual(["/api/v1/uploads/a"]);
  await expect.poll(kept).toEqual([]);
  await queue.putBack("z");
  expect(await kept()).toMatchObject([{ id: "z", name: "a.jpg", position: "left-rear" }]);
  expect(queue.snapshot().removed).toBeUndefined();
});

const refuse = (): void => {
  throw new Error("no room");
};

test("a device without room says so, and keeps what it had", async () => {
  const queue = begin({});
  await queue.add([upload("a")]);
  store.uploads.hook("creating", refuse);
  await queue.add([upload("b")]);
  store.uploads.hook("creating").unsubscribe(refuse);
  expect(queue.snapshot().failure).not.toBeNull();
  expect(await kept()).toMatchObject([{ id: "a" }]);
});

const refusal = (code: string, status: number) =>
  new Refusal({ type: `https://evenhand.example/problems/${code}`, title: "", status, detail: "" });

test("a refusal is of the file where asking again changes nothing, of the line otherwise", () => {
  expect(whyNotSent(refusal("evidence-full", 409))).toMatchObject({ refused: { status: 409 } });
  expect(whyNotSent(refusal("report-sealed", 409))).toMatchObject({ refused: { status: 409 } });
  expect(whyNotSent(refusal("not-signed-in", 401))).toBe("refuse");
  expect(whyNotSent(refusal("too-many-requests", 429))).toBe("refuse");
  expect(whyNotSent(new Refusal(unreachable))).toBe("lose-signal");
  expect(idAt("https://cars.example/api/v1/uploads/018f")).toBe("018f");
});

test("a photograph is looked at before it is sent, and what speaks for taking it again stands beside it", async () => {
  const blurred = { advice: "blurred" as const, words: "Blurred; take it again?" };
  const sent: (KeptUpload["advice"] | "none")[] = [];
  const looking = Promise.withResolvers<(typeof blurred)[]>();
  const queue = begin(
    { send: async ({ id }) => sent.push((await store.uploads.get(id))?.advice ?? "none") },
    ({ size }) => (size > 100 ? looking.promise : Promise.resolve([])),
  );
  await queue.add([upload("a", { file: new Blob(["x".repeat(101)]) }), upload("b")]);
  await ring();
  await expect.poll(() => store.uploads.get("b")).toBeDefined();
  expect(sent).toEqual([]);
  looking.resolve([blurred]);
  await expect.poll(() => sent).toEqual([[blurred], "none"]);
});

test("what has arrived since is taken away from the service", async () => {
  const dropped: string[] = [];
  const queue = begin({
    send: (_, { onAddress }) => onAddress("/api/v1/uploads/one"),
    drop: ({ address }) => Promise.resolve(dropped.push(address ?? "")),
  });
  const one = upload("a");
  await queue.add([one]);
  await ring();
  await expect.poll(kept).toEqual([]);
  await queue.remove(one);
  await ring();
  await expect.poll(() => dropped).toEqual(["/api/v1/uploads/one"]);
  await expect.poll(kept).toEqual([]);
});
