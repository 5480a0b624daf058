import { hash, verify } from "@node-rs/argon2";
import { Turns } from "../database/turns.ts";
import { ProblemError } from "../problems/problem-error.ts";

/** OWASP's minimum for Argon2id: 19 MiB, two passes, one lane (Password Storage Cheat Sheet). Argon2id is the library's default. */
const options = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

/**
 * Hashes are dear by design: few at once, so that whoever signs in leaves processors, memory and Node's own four threads to everybody
 * else, and no endless line of those who wait.
 */
export const hashesAtOnce = 2;
export const mostHashesWaiting = 100;
const turns = new Turns(hashesAtOnce);

async function inTurn<T>(work: () => Promise<T>): Promise<T> {
  if (turns.waitingNow >= mostHashesWaiting)
    throw new ProblemError("too-crowded", "Many people sign in at this moment. Try again in a few seconds.", {
      headers: { "retry-after": "5" },
    });
  return turns.take(work);
}

export const hashPassword = (password: string): Promise<string> => inTurn(() => hash(password, options));

/** A hash that belongs to nobody, made before anybody asks: the first unknown address would take twice as long otherwise. */
const nobodys = hash("nobody signs in with this", options);

/**
 * Does the password belong to this hash? For nobody (`null`) the same work is done against a hash of nobody's, so that an unknown
 * address takes as long as a known one.
 */
export async function passwordMatches(stored: string | null, password: string): Promise<boolean> {
  const against = stored ?? (await nobodys);
  const matches = await inTurn(() => verify(against, password));
  return stored !== null && matches;
}
