import { ProblemError } from "../problems/problem-error.ts";
import type { Transaction } from "./database.ts";
import { run, sql } from "./rows.ts";

export const dayMs = 24 * 60 * 60_000;

/** Until the transaction ends, whoever does the same waits here: counting and adding are one thing. */
export async function oneAtATime(tx: Transaction, what: string, whose: string): Promise<void> {
  await run(tx, sql`SELECT pg_advisory_xact_lock(hashtextextended(${`${what} ${whose}`}, 0))::text`);
}

export const dayLimit = (detail: string): ProblemError =>
  new ProblemError("day-limit", detail, { headers: { "retry-after": String(dayMs / 1000) } });

/** @throws ProblemError `too-many-open` */
export function keepOpenWithin(open: number, most: number, detail: string): void {
  if (open >= most) throw new ProblemError("too-many-open", detail, { members: { open, most } });
}
