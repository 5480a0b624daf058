import type { Problem } from "@evenhand/shared/problem";
import { decideLine, lineAtRest, pause, type Line, type LineDeed, type LineEvent } from "./line-states";
import type { Managers, WhyFailed } from "./draft-queue";
import type { KeptUpload } from "./store";

/** What is heard of a file while it is sent. */
export interface Hearing {
  /** Bytes that have gone out, of those not there before. */
  readonly onProgress: (sent: number) => void;
  readonly onAddress: (address: string) => Promise<unknown>;
}

/** Why a file did not arrive: as for answers, or because the service does not take this one. */
export type WhyNotSent = WhyFailed | { readonly refused: Problem };

/** What the queue works with. Everything outside reaches it through these. */
export interface UploadManagers extends Pick<Managers, "clock" | "onSignal"> {
  readonly store: {
    /** In the order they were added. */
    readonly list: () => Promise<readonly KeptUpload[]>;
    /** Calls at once, and whenever something kept has changed. @returns ends it */
    readonly watch: (
      changed: (kept: readonly KeptUpload[]) => void,
      failed: (why: unknown) => void,
    ) => () => void;
    readonly put: (upload: KeptUpload) => Promise<unknown>;
    readonly change: (id: string, change: Partial<KeptUpload>) => Promise<unknown>;
    readonly remove: (id: string) => Promise<unknown>;
  };
  readonly sender: {
    /** Sends what is not there yet. Throws where it did not arrive. */
    readonly send: (upload: KeptUpload, hearing: Hearing, signal: AbortSignal) => Promise<unknown>;
    /** Takes away what the service has of it. */
    readonly drop: (upload: KeptUpload) => Promise<unknown>;
    readonly whyFailed: (error: unknown) => WhyNotSent;
    /** Runs a deed while no other page of this account does the same. */
    readonly alone: (deed: () => Promise<void>) => Promise<void>;
  };
  /** What speaks for taking a photograph again; nothing where it cannot be told. Never throws. */
  readonly advise: (file: Blob) => Promise<NonNullable<KeptUpload["advice"]>>;
  /** The service has all of a file. */
  readonly arrived: (upload: KeptUpload) => Promise<unknown>;
}

export interface UploadsNow {
  /** Nothing until the store was read. */
  readonly kept: readonly KeptUpload[] | undefined;
  /** Why this device's store cannot be read or written. */
  readonly failure: unknown;
  readonly sending: { readonly id: string; readonly sent: number } | undefined;
  /** Taken away last, with its bytes, as long as this page stands. */
  readonly removed: KeptUpload | undefined;
  readonly line: Line;
}

/** A file that is to be sent, or taken away from the service. */
export const isDue = ({ refusal }: KeptUpload): boolean => refusal === undefined;

/**
 * Sends the files kept on this device, one after the other, so that on a weak line one arrives before the next begins. It decides
 * nothing itself: `decideLine` says when to send.
 */
export class UploadQueue {
  private now: UploadsNow = {
    kept: undefined,
    failure: null,
    sending: undefined,
    removed: undefined,
    line: lineAtRest,
  };
  private readonly managers: UploadManagers;
  private readonly listeners = new Set<() => void>();
  /** Photographs that are looked at before they are sent, by the id of the upload. */
  private readonly advising = new Map<string, Promise<void>>();
  /** Where each file of this page went. */
  private readonly addresses = new Map<string, string>();
  private current: { readonly id: string; readonly stop: AbortController } | undefined;
  private silence: () => void = () => {};

  constructor(managers: UploadManagers) {
    this.managers = managers;
  }

  /** How everything stands: the same object until something has changed. */
  readonly snapshot = (): UploadsNow => this.now;

  /** @returns ends it */
  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  /** Begins to watch and to send. @returns ends it */
  readonly start = (): (() => void) => {
    const unwatch = this.managers.store.watch(this.take, (failure) => this.show({ failure }));
    const deafen = this.managers.onSignal(() => this.step({ type: "signal" }));
    return () => {
      this.silence();
      this.current?.stop.abort();
      deafen();
      unwatch();
    };
  };

  /** Keeps files on this device. They are sent by themselves, each once it was looked at here. */
  readonly add = async (uploads: readonly KeptUpload[]): Promise<void> => {
    try {
      for (const upload of uploads) {
        const kept = Promise.resolve(this.managers.store.put(upload));
        this.advising.set(upload.id, this.advise(upload, kept));
        await kept;
      }
      this.show({ failure: null });
    } catch (failure) {
      this.show({ failure });
    }
  };

  /** Takes a file away. Its bytes stay at hand to put it back. */
  readonly remove = async (upload: KeptUpload): Promise<void> => {
    const { store } = this.managers;
    const here = (await store.list()).find(({ id }) => id === upload.id) ?? upload;
    // It may have arrived since: then the service is told to let it go.
    const address = here.address ?? this.addresses.get(upload.id);
    await (address === undefined ? store.remove(upload.id) : store.put({ ...here, address, dropped: true }));
    if (this.current?.id === upload.id) this.current.stop.abort();
    this.show({ removed: upload });
  };

  /** Puts back what was taken away last, as a file of its own. */
  readonly putBack = async (id: string): Promise<void> => {
    const { removed } = this.now;
    if (removed === undefined) return;
    const { report, item, position, name, file } = removed;
    await this.add([{ id, report, item, position, name, file }]);
    this.show({ removed: undefined });
  };

  /** The person asks to try now: also what the service refused. */
  readonly retry = async (id?: string): Promise<void> => {
    if (id !== undefined) await this.managers.store.change(id, { refusal: undefined });
    this.step({ type: "asked" });
  };

  private show(change: Partial<UploadsNow>): void {
    this.now = { ...this.now, ...change };
    for (const listener of this.listeners) listener();
  }

  private readonly take = (kept: readonly KeptUpload[]): void => {
    this.show({ kept });
    this.step({ type: "waiting", count: kept.filter(isDue).length });
  };

  private step(event: LineEvent): void {
    const { line, deeds } = decideLine(this.now.line, event);
    if (line !== this.now.line) this.show({ line });
    for (const deed of deeds) this.does(deed);
  }

  private does(deed: LineDeed): void {
    this.silence();
    if (deed === "send") void this.sendAll();
    if (deed === "ring-later")
      this.silence = this.managers.clock.ringAfter(pause(this.now.line.tries), () =>
        this.step({ type: "rang" }),
      );
  }

  /** Kept first: whatever becomes of looking at it, the photograph is there. */
  private async advise({ id, file }: KeptUpload, kept: Promise<unknown>): Promise<void> {
    try {
      await kept;
      const advice = await this.managers.advise(file);
      if (advice.length > 0) await this.managers.store.change(id, { advice });
    } catch {
      // Whoever kept it says that it could not be kept.
    } finally {
      this.advising.delete(id);
    }
  }

  /** What is added meanwhile is sent in the same turn. */
  private async sendAll(): Promise<void> {
    try {
      await this.managers.sender.alone(async () => {
        for (;;) {
          const next = (await this.managers.store.list()).find(isDue);
          if (next === undefined) return;
          await this.advising.get(next.id);
          await this.sendOne(next);
        }
      });
      this.step({ type: "arrived" });
    } catch (error) {
      const why = this.managers.sender.whyFailed(error);
      this.step({ type: "failed", why: typeof why === "string" ? why : "refuse", refusal: error });
    }
  }

  private async sendOne(upload: KeptUpload): Promise<void> {
    const { store, sender, arrived } = this.managers;
    const stop = new AbortController();
    this.current = { id: upload.id, stop };
    try {
      if (upload.dropped) await sender.drop(upload);
      else await sender.send(upload, this.hearingOf(upload), stop.signal);
      await arrived(upload);
      if (!stop.signal.aborted) await store.remove(upload.id);
    } catch (error) {
      if (stop.signal.aborted) return;
      const why = sender.whyFailed(error);
      if (typeof why === "string") throw error;
      await store.change(upload.id, { refusal: why.refused });
    } finally {
      this.current = undefined;
      this.show({ sending: undefined });
    }
  }

  private hearingOf({ id }: KeptUpload): Hearing {
    return {
      onProgress: (sent) => this.show({ sending: { id, sent } }),
      onAddress: (address) => {
        this.addresses.set(id, address);
        return this.managers.store.change(id, { address });
      },
    };
  }
}
