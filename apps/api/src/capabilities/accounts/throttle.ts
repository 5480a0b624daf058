import { createHash } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import { Injectable } from "@nestjs/common";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const windowMs = 15 * 60_000;
const keyOf = (...parts: string[]): Uint8Array<ArrayBuffer> =>
  new Uint8Array(createHash("sha256").update(JSON.stringify(parts)).digest());

type Attempt = { email: string; address: string };

/**
 * Slows guessing down without locking anybody out. Failures count for the address with the name, and for the address alone; both
 * refuse for a while. For the name alone, from wherever, they only make every answer slower, so that a stranger's guesses
 * elsewhere never shut the owner out. Known and unknown names count alike. Only hashes are stored.
 */
@Injectable()
export class Throttle {
  static readonly pairLimit = 8;
  static readonly addressLimit = 60;
  static readonly longestDelayMs = 1_000;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemError `too-many-attempts` */
  async check({ email, address }: Attempt): Promise<void> {
    const now = this.clock.now();
    const pair = await this.count(keyOf("pair", email, address), now);
    const alone = await this.count(keyOf("address", address), now);
    const ends = Math.max(
      pair.count >= Throttle.pairLimit ? pair.ends : 0,
      alone.count >= Throttle.addressLimit ? alone.ends : 0,
    );
    if (ends > now.getTime()) throw tooMany(ends - now.getTime());
    const named = await this.count(keyOf("name", email), now);
    await wait(Math.min(named.count * 20, Throttle.longestDelayMs));
  }

  async failed({ email, address }: Attempt): Promise<void> {
    const now = this.clock.now();
    const ends = new Date(now.getTime() + windowMs);
    const keys = [keyOf("pair", email, address), keyOf("address", address), keyOf("name", email)];
    await this.database.rows({
      text: `INSERT INTO throttle (key, count, window_ends) SELECT each, 1, $2 FROM unnest($1::bytea[]) AS each
             ON CONFLICT (key) DO UPDATE SET
               count = CASE WHEN throttle.window_ends > $3 THEN throttle.count + 1 ELSE 1 END,
               window_ends = CASE WHEN throttle.window_ends > $3 THEN throttle.window_ends ELSE $2 END`,
      values: [keys.map((key) => Buffer.from(key)), ends, now],
    });
  }

  async succeeded({ email, address }: Attempt): Promise<void> {
    await this.database.rows({
      text: "DELETE FROM throttle WHERE key = $1 OR window_ends < $2",
      values: [keyOf("pair", email, address), this.clock.now()],
    });
  }

  private async count(key: Uint8Array, now: Date): Promise<{ count: number; ends: number }> {
    const row = await this.database.findRow<{ count: number; window_ends: Date }>({
      text: "SELECT count, window_ends FROM throttle WHERE key = $1 AND window_ends > $2",
      values: [key, now],
    });
    return row === null ? { count: 0, ends: 0 } : { count: row.count, ends: row.window_ends.getTime() };
  }
}

function tooMany(milliseconds: number): ProblemError {
  const seconds = Math.ceil(milliseconds / 1000);
  return new ProblemError(
    "too-many-attempts",
    `Too many attempts from here. Try again in ${seconds} seconds.`,
    {
      headers: { "retry-after": String(seconds) },
    },
  );
}
