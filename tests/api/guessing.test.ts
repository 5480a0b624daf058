import { beforeEach, describe, expect, test } from "vitest";
import { Throttle } from "../../apps/api/src/capabilities/accounts/throttle.ts";
import {
  hashesAtOnce,
  mostHashesWaiting,
  passwordMatches,
} from "../../apps/api/src/platform/auth/password.ts";
import { ProblemError } from "../../apps/api/src/platform/problems/problem-error.ts";
import { Turns } from "../../apps/api/src/platform/database/turns.ts";
import { query } from "./setup/database.ts";
import { useService } from "./setup/service.ts";
import { emailOf, makePerson, password } from "./setup/world.ts";

const service = useService({ environment: { TRUSTED_PROXIES: "loopback" } });
const email = emailOf("Delia");
beforeEach(async () => {
  await makePerson(service(), "dealer", "Delia");
});

/** The status that an attempt from this address is answered with. */
async function attempt(from: string, given: { email: string; password: string }): Promise<number> {
  const answer = await fetch(`${service().url}/api/v1/sessions`, {
    method: "POST",
    headers: { "content-type": "application/json", origin: service().url, "x-forwarded-for": from },
    body: JSON.stringify(given),
  });
  await answer.text();
  return answer.status;
}

/** How many of these attempts, all at once, were answered with each status. */
async function burst(attempts: readonly Promise<number>[]): Promise<Record<number, number>> {
  const counts: Record<number, number> = {};
  for (const status of await Promise.all(attempts)) counts[status] = (counts[status] ?? 0) + 1;
  return counts;
}

const times = <T>(count: number, make: (index: number) => T): T[] =>
  Array.from({ length: count }, (_, index) => make(index));

describe("of guesses that come all at once", () => {
  test("no more are looked at than the limit says, for one name from one address", async () => {
    const counts = await burst(
      times(300, (index) => attempt("192.0.2.1", { email, password: `guess ${index}` })),
    );
    expect(counts).toEqual({ 401: Throttle.pairLimit, 429: 300 - Throttle.pairLimit });
    expect(await attempt("192.0.2.1", { email, password })).toBe(429);
  });

  test("no more are looked at than the limit says, for many names from one network of IPv6", async () => {
    const counts = await burst(
      times(200, (index) =>
        attempt(`2001:db8:0:7::${index.toString(16)}`, {
          email: `n${index}@example.com`,
          password: "the same guess",
        }),
      ),
    );
    expect(counts).toEqual({ 401: Throttle.networkLimit, 429: 200 - Throttle.networkLimit });
    expect(await attempt("2001:db8:0:8::1", { email, password })).toBe(201);
  });
});

test("what is refused at one name counts against nobody else from the same address", async () => {
  await burst(times(200, (index) => attempt("192.0.2.1", { email, password: `guess ${index}` })));
  await makePerson(service(), "dealer", "Oskar");
  expect(await attempt("192.0.2.1", { email: emailOf("Oskar"), password })).toBe(201);
});

test("the right password gives back what it was counted as", async () => {
  const counts = [];
  for (let index = 0; index < Throttle.pairLimit * 2; index += 1)
    counts.push(await attempt("192.0.2.1", { email, password }));
  expect(new Set(counts)).toEqual(new Set([201]));
});

test("strangers' guesses from everywhere shut nobody out of where they signed in before", async () => {
  expect(await attempt("198.51.100.7", { email, password })).toBe(201);
  const throttle = service().app.get(Throttle);
  const admitted = await Promise.allSettled(
    times(400, (index) => throttle.admit({ email, address: `2001:db8:${index.toString(16)}::1` })),
  );
  expect(admitted.filter(({ status }) => status === "fulfilled")).toHaveLength(Throttle.nameLimit);
  expect(await attempt("203.0.113.9", { email, password: "a guess" })).toBe(429);
  expect(await attempt("198.51.100.7", { email, password })).toBe(201);
});

test("an unknown name is counted and refused as a known one is", async () => {
  const unknown = { email: "nobody@example.com", password: "a guess" };
  const answers = { known: [] as number[], unknown: [] as number[] };
  for (let index = 0; index <= Throttle.pairLimit; index += 1) {
    answers.known.push(await attempt("192.0.2.1", { email, password: "a guess" }));
    answers.unknown.push(await attempt("192.0.2.1", unknown));
  }
  expect(answers.unknown).toEqual(answers.known);
  const rows = await query<{ count: number }>(service().databaseUrl, "SELECT count FROM throttle");
  expect(rows.map(({ count }) => count).toSorted((a, b) => a - b)).toEqual([8, 8, 9, 9, 16]);
});

describe("hashes", () => {
  test("are worked out few at a time", async () => {
    const turns = new Turns(hashesAtOnce);
    let [running, most] = [0, 0];
    const work = async (): Promise<void> => {
      running += 1;
      most = Math.max(most, running);
      await new Promise((resolve) => void setTimeout(resolve, 1));
      running -= 1;
    };
    await Promise.all(times(40, () => turns.take(work)));
    expect(most).toBe(hashesAtOnce);
  });

  test("have a line that ends: who would wait longer is told so at once", async () => {
    const asked = hashesAtOnce + mostHashesWaiting + 7;
    // Once, so that the hash that belongs to nobody is there.
    await passwordMatches(null, "first");
    const answers = await Promise.allSettled(times(asked, () => passwordMatches(null, "a guess")));
    const refused = answers.filter((each) => each.status === "rejected");
    expect(refused).toHaveLength(7);
    for (const { reason } of refused) {
      expect(reason).toBeInstanceOf(ProblemError);
      expect(reason).toMatchObject({ code: "too-crowded", status: 503 });
    }
  });
});
