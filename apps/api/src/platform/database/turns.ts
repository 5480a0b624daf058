/**
 * At most so many at once; the rest wait here, in the order they came. Whoever waits for a connection of the pool is told after
 * seconds that the database does not answer: a crowd at one row is no such failure.
 */
export class Turns {
  private free: number;
  private readonly waiting: (() => void)[] = [];
  constructor(atOnce: number) {
    this.free = atOnce;
  }

  /** How many wait for their turn at this moment. */
  get waitingNow(): number {
    return this.waiting.length;
  }

  async take<T>(work: () => Promise<T>): Promise<T> {
    if (this.free > 0) this.free -= 1;
    else await new Promise<void>((resolve) => this.waiting.push(resolve));
    try {
      return await work();
    } finally {
      const next = this.waiting.shift();
      if (next === undefined) this.free += 1;
      else next();
    }
  }
}
