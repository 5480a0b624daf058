import "fake-indexeddb/auto";
import type { Finding } from "@evenhand/shared/finding";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { changeFinding, settleConflict } from "./changes.ts";
import { store, type KeptFinding } from "./store.ts";
import { sendWaiting } from "./sync.ts";
import { ServiceModel } from "./testing/service-model.ts";

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
  return { service: new ServiceModel(), said: new Map<string, Finding | null>() };
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
