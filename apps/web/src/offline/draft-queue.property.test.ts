import "fake-indexeddb/auto";
import type { Finding } from "@evenhand/shared/finding";
import type { ReportDraft } from "@evenhand/shared/http/reports";
import * as fc from "fast-check";
import { expect, test } from "vitest";
import { keepDraft } from "./changes.ts";
import { DraftQueue } from "./draft-queue.ts";
import { storeOf } from "./managers.ts";
import { withWrites } from "./save-state.ts";
import { Store, type KeptFinding } from "./store.ts";
import { sendWaiting } from "./sync.ts";
import { ServiceModel, type LineIs } from "./testing/service-model.ts";

const report = "018f0000-0000-7000-8000-000000000003";
type Value = "yes" | "no" | "intermittent" | null;
const places = ["electrics.horn@p0", "electrics.horn@p1"] as const;
type Place = (typeof places)[number];
const horn = (place: Place, value: Value): Finding | null =>
  value === null
    ? null
    : {
        item: "electrics.horn",
        position: place.slice(-2),
        answer: { kind: "working", value },
        firmness: "asserted",
        basis: "seen",
      };

const draftFrom = (service: ServiceModel): ReportDraft => {
  const held = [...service.held.values()].filter(({ finding }) => finding !== null);
  const draft: ReportDraft = JSON.parse(
    JSON.stringify({
      id: report,
      revision: service.revision,
      drafting: true,
      report: { findings: held.map(({ finding }) => finding) },
      findings: held.map((one) => ({ revision: one.revision })),
    }),
  );
  return draft;
};

/** As text, and the revision of its place at the service when it was said. */
interface Said {
  readonly text: string;
  readonly since: number;
}

/** Stores of devices whose last case has ended well. */
const leftOpen = new Map<string, Store>();

/** One device: its store, which outlives the page; its page with a queue; its line; and a clock that rings when told. */
class Device {
  line: LineIs = "up";
  queue!: DraftQueue;
  /** What the person last said of a place here, until it was given up for the other. */
  readonly said = new Map<Place, Said>();
  /** Drafts the service gave that have not arrived here yet, the oldest first. */
  private readonly underway: ReportDraft[] = [];
  private store!: Store;
  private close = () => {};
  private ring: (() => void) | null = null;
  private signal = () => {};
  private changed: (() => Promise<void>) | null = null;
  readonly name: string;
  private readonly service: ServiceModel;

  constructor(name: string, service: ServiceModel) {
    this.name = name;
    this.service = service;
  }

  /** Another case begins: of the one before nothing is kept. Emptied is sooner than opened anew. */
  async openEmpty(): Promise<void> {
    const left = leftOpen.get(this.name);
    leftOpen.delete(this.name);
    const store = left ?? new Store(this.name);
    await store.transaction("rw", store.tables, () =>
      Promise.all(store.tables.map((table) => table.clear())),
    );
    await this.open(store);
  }

  /** The case has held: the next one begins with the store as it is. */
  leaveOpen(): void {
    this.close();
    this.ring = null;
    leftOpen.set(this.name, this.store);
  }

  async open(store = new Store(this.name)): Promise<void> {
    this.store = store;
    const rows = storeOf(report, store);
    this.queue = new DraftQueue({
      store: {
        ...rows,
        watch: (changed) => {
          this.changed = async () => changed(await rows.read());
          return () => (this.changed = null);
        },
      },
      sender: {
        send: () =>
          sendWaiting(
            report,
            async (_, operations) => this.service.answer(this.line, operations, this.name),
            store,
          ),
        whyFailed: () => "lose-signal",
      },
      clock: {
        now: () => new Date(0),
        ringAfter: (_, ring) => {
          this.ring = ring;
          return () => (this.ring = null);
        },
      },
      onSignal: (back) => {
        this.signal = back;
        return () => (this.signal = () => {});
      },
    });
    this.close = this.queue.start();
    await this.changed?.();
  }

  /** The page goes in the midst of what it does. */
  kill(): void {
    this.close();
    this.ring = null;
    this.store.close();
  }

  async type(place: Place, value: Value): Promise<void> {
    const since = this.service.held.get(place)?.revision ?? 0;
    this.said.set(place, { text: JSON.stringify(horn(place, value)), since });
    await this.queue.keep(place, { finding: horn(place, value) });
  }

  /** Waits until nothing is on its way. */
  async still(): Promise<void> {
    await new Promise<void>((done) => {
      const look = () => {
        if (this.queue.snapshot().line.state !== "sending") done();
      };
      this.queue.subscribe(look);
      look();
    });
    await this.changed?.();
  }

  async wait(): Promise<void> {
    this.ring?.();
    await this.still();
  }

  async getSignal(): Promise<void> {
    this.line = "up";
    this.signal();
    await this.still();
  }

  /** The service gives the draft as it is now: a line that loses one thing may carry another. */
  askDraft(): void {
    this.underway.push(draftFrom(this.service));
  }

  /** One that was given arrives, after however much has happened since; the newest may come before an older one. */
  async takeDraft(which: "oldest" | "newest"): Promise<void> {
    const draft = which === "oldest" ? this.underway.shift() : this.underway.pop();
    if (draft === undefined) return;
    await keepDraft(draft, this.store);
    await this.changed?.();
  }

  async fetch(): Promise<void> {
    if (this.line !== "up") return;
    this.askDraft();
    await this.takeDraft("newest");
  }

  shown(): ReadonlyMap<string, KeptFinding> {
    const { kept, writes } = this.queue.snapshot();
    return withWrites(report, kept?.findings ?? new Map(), writes);
  }

  async settle(place: Place, which: "mine" | "theirs"): Promise<void> {
    const kept = this.shown().get(place);
    if (kept?.state !== "conflict") return;
    if (which === "theirs") this.said.delete(place);
    await this.queue.settle(kept, which);
  }
}

interface World {
  readonly service: ServiceModel;
  readonly devices: readonly [Device, Device];
}

/** Of which revision is what a device shows of a place, where it says that it has arrived; for nothing, the last taking back. */
const revisionShown = (service: ServiceModel, place: Place, kept: KeptFinding | undefined): number =>
  kept?.base ?? (service.said.get(place)?.findLastIndex((one) => one.text === "null") ?? -1) + 1;

/**
 * What was said stands on its device until the service has had it; then that or something newer stands there, and never
 * what the service held before.
 */
const nothingLost = (world: World): void => {
  for (const device of world.devices)
    for (const [place, { text, since }] of device.said) {
      const kept = device.shown().get(place);
      if (JSON.stringify(kept?.finding ?? null) === text) continue;
      const had =
        world.service.said
          .get(place)
          ?.findIndex((one, at) => at >= since && one.by === device.name && one.text === text) ?? -1;
      if (had === -1) expect(text).toBe("null");
      else {
        expect(kept?.state ?? "saved").toBe("saved");
        expect(revisionShown(world.service, place, kept)).toBeGreaterThan(had + 1);
      }
    }
};

type Deed = (device: Device, world: World) => Promise<void> | void;
type Step = fc.AsyncCommand<object, World>;
const step = (name: string, which: 0 | 1, deed: Deed): Step => ({
  check: () => true,
  run: async (_, world) => {
    await deed(world.devices[which], world);
    nothingLost(world);
  },
  toString: () => `${name} on ${which}`,
});

const which = fc.constantFrom(0 as const, 1 as const);
const place = fc.constantFrom(...places);
const value = fc.constantFrom<Value[]>("yes", "no", "intermittent", null);
const edit = fc
  .tuple(which, place, value)
  .map(([on, at, said]) => step(`${at} is ${said}`, on, (device) => device.type(at, said)));
const loseSignal = fc.tuple(which, fc.constantFrom("down" as const, "lost" as const)).map(([on, line]) =>
  step(`line is ${line}`, on, (device) => {
    device.line = line;
  }),
);
const getSignal = which.map((on) => step("signal", on, (device) => device.getSignal()));
const wait = which.map((on) => step("wait", on, (device) => device.wait()));
const fetch = which.map((on) => step("fetch", on, (device) => device.fetch()));
const askDraft = which.map((on) => step("the service gives the draft", on, (device) => device.askDraft()));
const takeDraft = fc
  .tuple(which, fc.constantFrom("oldest" as const, "newest" as const))
  .map(([on, draft]) => step(`the ${draft} draft arrives`, on, (device) => device.takeDraft(draft)));
const killed = which.map((on) =>
  step("kill and open again", on, async (device) => {
    device.kill();
    await device.open();
  }),
);
const killedWhileTyping = fc.tuple(which, place, value).map(([on, at, said]) =>
  step(`kept ${at} ${said}, killed while sending`, on, async (device) => {
    await device.type(at, said);
    device.queue.send();
    const late = device.queue.snapshot().line.state === "sending" ? device.still() : null;
    device.kill();
    await device.open();
    await Promise.race([late, device.still()]);
  }),
);
const typedOn = fc
  .record({
    on: which,
    at: place,
    first: value,
    after: fc.array(value, { maxLength: 2 }),
    draft: fc.boolean(),
  })
  .map(({ on, at, first, after, draft }) =>
    step(
      `${at} is ${first} on its way${draft ? ", a draft arrives" : ""}, and then ${after.join(", ")}`,
      on,
      async (device) => {
        if (draft) device.askDraft();
        await device.type(at, first);
        device.queue.send();
        for (const said of after) await device.type(at, said);
        if (draft) await device.takeDraft("oldest");
        await device.still();
      },
    ),
  );
const settle = fc
  .tuple(which, place, fc.constantFrom("mine" as const, "theirs" as const))
  .map(([on, at, one]) => step(`${one} at ${at}`, on, (device) => device.settle(at, one)));

/** Both get a line, and say of each conflict what stands, until nothing waits. */
const arrive = async (world: World): Promise<void> => {
  for (const device of [...world.devices, ...world.devices]) {
    await device.getSignal();
    nothingLost(world);
    for (const at of places) await device.settle(at, "theirs");
    await device.takeDraft("oldest");
    nothingLost(world);
    await device.fetch();
  }
};

test("edit, lose signal, kill, open again, sync, two devices: nothing is lost, and both end as the service has it", async () => {
  const steps = fc.commands(
    [
      edit,
      edit,
      loseSignal,
      getSignal,
      wait,
      fetch,
      askDraft,
      takeDraft,
      killed,
      killedWhileTyping,
      typedOn,
      settle,
    ],
    { maxCommands: 10 },
  );
  await fc.assert(
    fc.asyncProperty(steps, async (chosen) => {
      const service = new ServiceModel();
      const devices = [new Device("one", service), new Device("two", service)] as const;
      const world: World = { service, devices };
      for (const device of devices) await device.openEmpty();
      await fc.asyncModelRun(() => ({ model: {}, real: world }), chosen);
      await arrive(world);
      for (const device of devices) {
        expect(device.queue.snapshot().line).toMatchObject({ state: "idle", waiting: 0 });
        for (const at of places) {
          const kept = device.shown().get(at);
          expect(kept?.state ?? "saved").toBe("saved");
          expect(kept?.finding ?? null).toEqual(service.held.get(at)?.finding ?? null);
        }
        device.leaveOpen();
      }
    }),
    { numRuns: 1000 },
  );
});
