/** The hour, as the service sees it. Passed in, so that tests and the demo's loader can set it. */
export abstract class Clock {
  abstract now(): Date;
}

export class SystemClock extends Clock {
  override now(): Date {
    return new Date();
  }
}

/** Stands where it is set. */
export class SetClock extends Clock {
  private at: Date;
  constructor(at: Date) {
    super();
    this.at = at;
  }
  override now(): Date {
    return this.at;
  }
  set(at: Date): void {
    this.at = at;
  }
}
