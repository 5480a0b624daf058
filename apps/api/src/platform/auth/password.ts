import { hash, verify } from "@node-rs/argon2";

/** OWASP's minimum for Argon2id: 19 MiB, two passes, one lane (Password Storage Cheat Sheet). Argon2id is the library's default. */
const options = { memoryCost: 19_456, timeCost: 2, parallelism: 1 };

export const hashPassword = (password: string): Promise<string> => hash(password, options);

let stranger: Promise<string> | undefined;

/**
 * Does the password belong to this hash? For nobody (`null`) the same work is done against a hash of nobody's, so that an unknown
 * address takes as long as a known one.
 */
export async function passwordMatches(stored: string | null, password: string): Promise<boolean> {
  stranger ??= hashPassword("nobody signs in with this");
  const matches = await verify(stored ?? (await stranger), password);
  return stored !== null && matches;
}
