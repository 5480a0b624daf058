import { createHash } from "node:crypto";
import { setTimeout as wait } from "node:timers/promises";
import { Injectable } from "@nestjs/common";
import { z } from "zod";
import { Clock } from "../../platform/clock/index.ts";
import { Database } from "../../platform/database/database.ts";
import { exists, findRow, readRows, run } from "../../platform/database/rows.ts";
import { clientNetwork } from "../../platform/http/client-network.ts";
import { ProblemError } from "../../platform/problems/problem-error.ts";

const minute = 60_000;
const day = 24 * 60 * minute;

/** How often something may be done within a stretch of time. */
type Limit = { readonly most: number; readonly within: number };
const Counted = z.object({ kind: z.string(), count: z.number(), window_ends: z.date() });
type Attempt = { email: string; address: string };
type Keys = Readonly<Record<"pair" | "network" | "name" | "known", Uint8Array<ArrayBuffer>>>;

const keyOf = (...parts: string[]): Uint8Array<ArrayBuffer> =>
  new Uint8Array(createHash("sha256").update(JSON.stringify(parts)).digest());

function keysOf({ email, address }: Attempt): Keys {
  const network = clientNetwork(address);
  return {
    pair: keyOf("pair", email, network),
    network: keyOf("address", network),
    name: keyOf("name", email),
    known: keyOf("known", email, network),
  };
}

/** One more under a key, whose count begins anew once its window has ended: an upsert of one row. */
const oneMore = (kind: string, key: string, from: string): string => `${kind} AS (
  INSERT INTO throttle (key, count, window_ends) SELECT ${key}, 1, $6 ${from}
  ON CONFLICT (key) DO UPDATE SET
    count = CASE WHEN throttle.window_ends > $7 THEN throttle.count + 1 ELSE 1 END,
    window_ends = CASE WHEN throttle.window_ends > $7 THEN throttle.window_ends ELSE $6 END
  RETURNING '${kind}' AS kind, count, window_ends)`;

/**
 * Counts an attempt before anybody looks at it. The next wider count is touched only where the narrower one lets it through, so
 * that one place's refused attempts count against nobody else's. Rows are taken narrow to wide, so that no two wait in a ring.
 */
const countAttempt = `WITH
  ${oneMore("pair", "$1::bytea", "")},
  ${oneMore("network", "$2::bytea", "FROM pair WHERE pair.count <= $4")},
  ${oneMore("name", "$3::bytea", "FROM network WHERE network.count <= $5")}
  SELECT * FROM pair UNION ALL SELECT * FROM network UNION ALL SELECT * FROM name`;

/**
 * Slows guessing down without locking anybody out. Every attempt is counted first, in one statement, and looked at afterwards: of
 * any number at once no more are looked at than the limits say. For a name from one network, and for a network alone, attempts
 * beyond the limit are refused. For a name from wherever, every further attempt waits longer, and beyond a far limit only networks
 * that the person has signed in from within ninety days are let through. Known and unknown names count alike; only hashes are kept.
 */
@Injectable()
export class Throttle {
  static readonly window = 15 * minute;
  static readonly pairLimit = 8;
  static readonly networkLimit = 60;
  static readonly nameLimit = 300;
  static readonly longestDelayMs = 1_000;
  static readonly knownFor = 90 * day;

  constructor(
    private readonly database: Database,
    private readonly clock: Clock,
  ) {}

  /** @throws ProblemError `too-many-attempts` */
  async admit(attempt: Attempt): Promise<void> {
    const now = this.clock.now();
    const { pair, network, name, known } = keysOf(attempt);
    const ends = new Date(now.getTime() + Throttle.window);
    const counted = await readRows(this.database, Counted, {
      text: countAttempt,
      values: [pair, network, name, Throttle.pairLimit, Throttle.networkLimit, ends, now],
    });
    const widest = counted.at(-1);
    if (widest === undefined) throw new Error("The attempt was not counted.");
    if (widest.kind !== "name") throw tooMany(widest.window_ends, now);
    if (widest.count > Throttle.nameLimit && !(await this.isKnown(known, now)))
      throw tooMany(widest.window_ends, now);
    await wait(Math.min((widest.count - 1) * 20, Throttle.longestDelayMs));
  }

  /** What was right is no guess: it is taken from the counts again, and the network is known from here on. */
  async succeeded(attempt: Attempt): Promise<void> {
    const now = this.clock.now();
    const { pair, network, name, known } = keysOf(attempt);
    await run(this.database, {
      text: `WITH done AS (DELETE FROM throttle WHERE key = $1),
        back AS (UPDATE throttle SET count = greatest(count - 1, 0) WHERE key IN ($2, $3))
        INSERT INTO throttle (key, count, window_ends) VALUES ($4, 0, $5)
        ON CONFLICT (key) DO UPDATE SET window_ends = $5`,
      values: [pair, network, name, known, new Date(now.getTime() + Throttle.knownFor)],
    });
  }

  /** Counts one of something else that is bounded, and says whether it still may be done. */
  async allows(what: string, whose: string, { most, within }: Limit): Promise<boolean> {
    const now = this.clock.now();
    const counted = await findRow(this.database, Counted, {
      text: `WITH ${oneMore("one", "$1::bytea", "").replaceAll("$6", "$2").replaceAll("$7", "$3")} SELECT * FROM one`,
      values: [keyOf(what, whose), new Date(now.getTime() + within), now],
    });
    return counted !== null && counted.count <= most;
  }

  private async isKnown(key: Uint8Array, now: Date): Promise<boolean> {
    return exists(this.database, {
      text: "SELECT 1 FROM throttle WHERE key = $1 AND window_ends > $2",
      values: [key, now],
    });
  }
}

export function tooMany(until: Date, now: Date): ProblemError {
  const seconds = Math.max(1, Math.ceil((until.getTime() - now.getTime()) / 1000));
  return new ProblemError(
    "too-many-attempts",
    `Too many attempts. Try again in ${seconds} seconds. If you do not remember the password, ask for a new one by mail.`,
    { headers: { "retry-after": String(seconds) } },
  );
}
