import { v7 } from "uuid";
import type { Clock } from "../clock/index.ts";

/** Makes the ids of stored objects: UUID version 7, so that they sort by the time they were made. */
export abstract class Ids {
  abstract next(): string;
}

export class TimeIds extends Ids {
  private readonly clock: Clock;
  constructor(clock: Clock) {
    super();
    this.clock = clock;
  }
  override next(): string {
    return v7({ msecs: this.clock.now().getTime() });
  }
}
