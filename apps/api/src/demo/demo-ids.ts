import { createHash } from "node:crypto";
import { v7 } from "uuid";
import type { Clock } from "../platform/clock/index.ts";
import { Ids } from "../platform/database/ids.ts";

/** The same ids every time: the hour of the story, and numbers drawn from a name and a count. */
export class DemoIds extends Ids {
  private count = 0;
  private readonly clock: Clock;
  constructor(clock: Clock) {
    super();
    this.clock = clock;
  }
  override next(): string {
    this.count += 1;
    const random = createHash("sha256").update(`evenhand demo ${this.count}`).digest().subarray(0, 16);
    return v7({ msecs: this.clock.now().getTime(), random, seq: this.count });
  }
}
