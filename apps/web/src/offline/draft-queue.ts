import type { Stage } from "@evenhand/shared/sheet";
import { decideLine, lineAtRest, pause, type Line, type LineDeed, type LineEvent } from "./line-states";
import { noWrites, writesAfter, type Writes, type WriteStep } from "./save-state";
import type { Change, KeptDraft, KeptFinding, KeptGate } from "./store";

/** What is kept of one report. */
export interface Kept {
  readonly draft: KeptDraft | undefined;
  readonly findings: ReadonlyMap<string, KeptFinding>;
  readonly gates: readonly KeptGate[];
}

/** Why the service gave nothing: it was not reached, it said no, or the report is sealed. */
export type WhyFailed = Extract<LineEvent, { type: "failed" }>["why"];

/** What a queue works with. Everything outside reaches it through these. */
export interface Managers {
  readonly store: {
    readonly read: () => Promise<Kept>;
    /** Calls at once, and whenever something kept has changed. @returns ends it */
    readonly watch: (changed: (kept: Kept) => void, failed: (why: unknown) => void) => () => void;
    readonly keep: (place: string, change: Change) => Promise<void>;
    readonly settle: (kept: KeptFinding, which: "mine" | "theirs") => Promise<void>;
    readonly keepGate: (stage: Stage, time: string) => Promise<void>;
  };
  readonly sender: {
    /** Sends all that waits. Throws where it did not arrive. */
    readonly send: () => Promise<unknown>;
    readonly whyFailed: (error: unknown) => WhyFailed;
  };
  readonly clock: {
    readonly now: () => Date;
    /** Calls after so many milliseconds. @returns ends it */
    readonly ringAfter: (wait: number, ring: () => void) => () => void;
  };
  /** Calls whenever the signal returns. @returns ends it */
  readonly onSignal: (back: () => void) => () => void;
}

export interface QueueNow {
  /** Nothing until the store was read. */
  readonly kept: Kept | undefined;
  /** Why this device's store cannot be read. */
  readonly failure: unknown;
  readonly writes: Writes;
  readonly line: Line;
}

const waitingIn = ({ findings, gates }: Kept): number =>
  [...findings.values()].filter(({ state }) => state === "waiting").length + gates.length;

/**
 * Runs the queue of one report: keeps what is said on this device, and sends it when there is a line. It decides nothing itself:
 * `decideLine` says when to send, `decidePlace` what becomes of each place, `writesAfter` what has been kept.
 */
export class DraftQueue {
  private now: QueueNow = { kept: undefined, failure: null, writes: noWrites, line: lineAtRest };
  private readonly managers: Managers;
  private readonly listeners = new Set<() => void>();
  private begun = 0;
  private running = false;
  private silence: () => void = () => {};

  constructor(managers: Managers) {
    this.managers = managers;
  }

  /** How everything stands: the same object until something has changed. */
  readonly snapshot = (): QueueNow => this.now;

  /** @returns ends it */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Begins to watch and to send. @returns ends it; what is on its way still arrives */
  readonly start = (): (() => void) => {
    this.running = true;
    // What waited when it ran before is counted anew.
    this.step({ type: "waiting", count: 0 });
    const unwatch = this.managers.store.watch(this.take, (failure) => this.show({ failure }));
    const deafen = this.managers.onSignal(() => this.step({ type: "signal" }));
    return () => {
      this.running = false;
      this.silence();
      deafen();
      unwatch();
    };
  };

  /** Keeps what was said of a place on this device. Whether it was kept is in `writes`. */
  readonly keep = (place: string, change: Change): Promise<void> =>
    this.write({ place, change, seen: change }, () => this.managers.store.keep(place, change));

  /** Ends a conflict. Both stand until it has been kept which one does. */
  readonly settle = (kept: KeptFinding, which: "mine" | "theirs"): Promise<void> =>
    this.write({ place: kept.place, change: kept, seen: null }, () =>
      this.managers.store.settle(kept, which),
    );

  /** Keeps that the cautions at a stage's gate were read. */
  readonly readCautions = async (stage: Stage): Promise<void> => {
    await this.managers.store.keepGate(stage, this.managers.clock.now().toISOString());
    this.take(await this.managers.store.read());
  };

  /** The person asks to try now. */
  readonly send = (): void => this.step({ type: "asked" });

  /** The service gave the draft, and it takes changes. */
  readonly open = (): void => this.step({ type: "open" });

  private show(change: Partial<QueueNow>): void {
    this.now = { ...this.now, ...change };
    for (const listener of this.listeners) listener();
  }

  private readonly take = (kept: Kept): void => {
    this.show({ kept });
    this.step({ type: "waiting", count: waitingIn(kept) });
  };

  private note(step: WriteStep): void {
    this.show({ writes: writesAfter(this.now.writes, step) });
  }

  /** Nothing counts as kept before the write has ended and what was kept has been read again. */
  private async write(
    { place, change, seen }: { place: string; change: Change; seen: Change | null },
    deed: () => Promise<void>,
  ): Promise<void> {
    this.begun += 1;
    const nth = this.begun;
    this.note({ type: "began", nth, place, change: seen });
    try {
      await deed();
      this.take(await this.managers.store.read());
      this.note({ type: "kept", nth, place });
    } catch {
      this.note({ type: "failed", nth, place, change });
    }
  }

  private step(event: LineEvent): void {
    const { line, deeds } = decideLine(this.now.line, event);
    if (line !== this.now.line) this.show({ line });
    if (this.running) for (const deed of deeds) this.does(deed);
  }

  private does(deed: LineDeed): void {
    this.silence();
    const { clock } = this.managers;
    if (deed === "send") void this.sendNow();
    if (deed === "ring-later")
      this.silence = clock.ringAfter(pause(this.now.line.tries), () => this.step({ type: "rang" }));
  }

  private async sendNow(): Promise<void> {
    const { send, whyFailed } = this.managers.sender;
    try {
      await send();
      this.step({ type: "arrived" });
    } catch (error) {
      this.step({ type: "failed", why: whyFailed(error), refusal: error });
    }
  }
}
