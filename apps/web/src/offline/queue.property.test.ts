import "fake-indexeddb/auto";
import type { Finding } from "@evenhand/shared/finding";
import type { Operation, OperationResult } from "@evenhand/shared/http/reports";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { changeFinding, settleConflict } from "./changes.ts";
import { store, type KeptFinding } from "./store.ts";
import { sendWaiting } from "./sync.ts";

const report = "018f0000-0000-7000-8000-000000000002";
type Value = "yes" | "no" | null;
const places = [0, 1] as const;
type At = (typeof places)[number];
const placeAt = (at: At): string => `electrics.horn@p${at}`;
const horn = (at: At, value: Value): Finding | null =>
  value === null
    ? null
    : {
        item: "electrics.horn",
        position: `p${at}`,
        answer: { kind: "working", value },
        firmness: "asserted",
        basis: "seen",
      };

interface Held {
  readonly finding: Finding | null;
  readonly revision: number;
}

/** The service as far as a queue sees it: what it holds of a place by its revision, and each operation done once. */
class Service {
  readonly held = new Map<string, Held>();
  private readonly done = new Map<string, number>();
  /** Places whose conflict the person has not settled: nothing of them may arrive. */
  readonly open = new Set<string>();

  put(place: string, finding: Finding | null): number {
    const revision = (this.held.get(place)?.revision ?? 0) + 1;
    this.held.set(place, { finding, revision });
    return revision;
  }

  private fits(place: string, { op, base }: Operation): boolean {
    const held = this.held.get(place);
    if (op === "remove") return held !== undefined && held.finding !== null && held.revision === base;
    return (base ?? 0) === (held?.revision ?? 0) || (held?.finding === null && (base ?? 0) === 0);
  }

  private apply(operation: Operation): OperationResult {
    const { id } = operation;
    const { item, position } = operation.op === "set" ? operation.finding : operation;
    const place = `${item}@${position}`;
    if (this.open.has(place)) throw new Error("sent while the person had not said which of two stands");
    const known = this.done.get(id);
    if (known !== undefined) return { id, result: "duplicate", revision: known };
    if (!this.fits(place, operation)) {
      const held = this.held.get(place);
      return { id, result: "conflict", revision: held?.revision ?? 0, current: held?.finding ?? null };
    }
    const revision = this.put(place, operation.op === "set" ? operation.finding : null);
    this.done.set(id, revision);
    return { id, result: "applied", revision };
  }

  /** `lost`: all of it is done, and the answer never arrives. */
  readonly over = (line: "up" | "down" | "lost") => async (_: string, operations: readonly Operation[]) => {
    if (line === "down") throw new Error("no line");
    const results = operations.map((operation) => this.apply(operation));
    if (line === "lost") throw new Error("the answer was lost");
    for (const [at, { result }] of results.entries()) {
      const sent = operations[at];
      if (result === "conflict" && sent !== undefined) {
        const { item, position } = sent.op === "set" ? sent.finding : sent;
        this.open.add(`${item}@${position}`);
      }
    }
    return { revision: 1, results };
  };
}

const value = fc.constantFrom<Value[]>("yes", "no", null);
const at = fc.constantFrom(...places);
const deed = fc.oneof(
  { weight: 3, arbitrary: fc.record({ deed: fc.constant("type" as const), at, value }) },
  { weight: 1, arbitrary: fc.record({ deed: fc.constant("elsewhere" as const), at, value }) },
  {
    weight: 2,
    arbitrary: fc.record({
      deed: fc.constant("send" as const),
      line: fc.constantFrom("up" as const, "down" as const, "lost" as const),
    }),
  },
  {
    weight: 1,
    arbitrary: fc.record({
      deed: fc.constant("settle" as const),
      at,
      keep: fc.constantFrom("mine" as const, "theirs" as const),
    }),
  },
);
type Deed = typeof deed extends fc.Arbitrary<infer T> ? T : never;

const keptAt = (place: string): Promise<KeptFinding | undefined> => store.findings.get([report, place]);

/** One device and one service, with what the person last said of each place. */
const start = async () => {
  await Promise.all([store.findings.clear(), store.operations.clear()]);
  return { service: new Service(), said: new Map<string, Finding | null>() };
};
type World = Awaited<ReturnType<typeof start>>;

const settle = async ({ service, said }: World, place: string, keep: "mine" | "theirs"): Promise<void> => {
  const kept = await keptAt(place);
  if (kept?.state === "conflict" && keep === "theirs") said.set(place, kept.theirs ?? null);
  await settleConflict({ report, place }, keep);
  service.open.delete(place);
};

const perform = async (world: World, one: Deed): Promise<void> => {
  const { service, said } = world;
  switch (one.deed) {
    case "type": {
      const finding = horn(one.at, one.value);
      said.set(placeAt(one.at), finding);
      return changeFinding(report, placeAt(one.at), { finding });
    }
    case "elsewhere":
      service.put(placeAt(one.at), horn(one.at, one.value));
      return;
    case "send":
      // A line that breaks is no failure of the queue: what was not answered stays in it.
      await sendWaiting(report, service.over(one.line)).catch((error: unknown) => {
        if (one.line === "up") throw error;
      });
      return;
    case "settle":
      return settle(world, placeAt(one.at), one.keep);
  }
};

/** Sends until nothing waits; of two that stand the service's. */
const arrive = async (world: World): Promise<void> => {
  await sendWaiting(report, world.service.over("up"));
  for (const place of world.service.open) await settle(world, place, "theirs");
};

/** Places that wait still, or say otherwise than the service at the same revision. One changed elsewhere since is learned later. */
const notArrived = async ({ service, said }: World): Promise<readonly KeptFinding[]> => {
  const kept = await Promise.all([...said.keys()].map(keptAt));
  return kept
    .filter((one) => one !== undefined)
    .filter(({ place, state, base, finding }) => {
      const held = service.held.get(place);
      const same = JSON.stringify(finding) === JSON.stringify(held?.finding ?? null);
      return state !== "saved" || (base === held?.revision && !same);
    });
};

test("whatever is typed, sent, lost and changed elsewhere, what was said stands here until it has arrived", async () => {
  await fc.assert(
    fc.asyncProperty(fc.array(deed, { minLength: 1, maxLength: 7 }), async (deeds) => {
      const world = await start();
      for (const one of deeds) {
        await perform(world, one);
        for (const [place, finding] of world.said)
          expect((await keptAt(place))?.finding ?? null).toEqual(finding);
      }
      await arrive(world);
      expect(await store.operations.count()).toBe(0);
      expect(await notArrived(world)).toEqual([]);
    }),
    { numRuns: 1000 },
  );
}, 60_000);
