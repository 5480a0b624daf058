import { randomInt } from "node:crypto";
import { v7 } from "uuid";
import type { Clock } from "../clock/index.ts";

/** Makes the ids of stored objects: UUID version 7, so that they sort by the time they were made. */
export abstract class Ids {
  abstract next(): string;
}

/** Counts on within a millisecond, from where chance begins, so that ids made at once sort as they were made (RFC 9562, 6.2). */
export class TimeIds extends Ids {
  private readonly clock: Clock;
  private msecs = -1;
  private seq = 0;
  constructor(clock: Clock) {
    super();
    this.clock = clock;
  }
  override next(): string {
    const msecs = this.clock.now().getTime();
    this.seq = msecs === this.msecs ? this.seq + 1 : randomInt(2 ** 31);
    this.msecs = msecs;
    return v7({ msecs, seq: this.seq });
  }
}
