import { randomUUID } from "node:crypto";
import { Problem } from "@evenhand/shared/problem";
import { Offers } from "@evenhand/shared/http/booking";
import { v7 } from "uuid";
import { beforeAll, expect, test } from "vitest";
import { hashSecret, newSecret } from "../../apps/api/src/platform/auth/secret.ts";
import {
  type BookingWorld,
  firstOffer,
  makeBookingWorld,
  monday,
  newClock,
} from "../api/setup/booking-story.ts";
import { query } from "../api/setup/database.ts";
import { useService } from "../api/setup/service.ts";

/** Short in every run; at full length by `npm run test:faults`. */
const full = process.env["FAULTS"] === "full";
const [rounds, crowd] = full ? [20, 1000] : [2, 200];

const clock = newClock();
const service = useService({ clock, emptyBetween: false });
let world: BookingWorld;
let buyers: string[];
beforeAll(async () => {
  world = await makeBookingWorld(service());
  buyers = await makeBuyers(crowd);
});

const on = (text: string, values: unknown[]) => query(service().databaseUrl, text, values);

/** So many buyers, each of an organization of their own, signed in; gives their sessions. */
async function makeBuyers(count: number): Promise<string[]> {
  const people = Array.from({ length: count }, () => ({
    organization: v7(),
    account: v7(),
    session: v7(),
    secret: newSecret(),
  }));
  const column = (pick: (one: (typeof people)[number]) => unknown) => people.map(pick);
  const [organizations, accounts] = [column((one) => one.organization), column((one) => one.account)];
  await on(
    "INSERT INTO organization (id, name, kind, zone, created_at) SELECT id, 'a buyer', 'buyer', 'UTC', now() FROM unnest($1::uuid[]) id",
    [organizations],
  );
  await on(
    `INSERT INTO account (id, name, email, password_hash, created_at)
     SELECT id, 'a buyer', id || '@example.com', '', now() FROM unnest($1::uuid[]) id`,
    [accounts],
  );
  await on(
    "INSERT INTO membership SELECT account, organization, 'admin', now() FROM unnest($1::uuid[], $2::uuid[]) AS m (account, organization)",
    [accounts, organizations],
  );
  await on(
    `INSERT INTO session (id, account_id, token_hash, device, created_at, last_seen_at, expires_at)
     SELECT id, account, decode(hash, 'hex'), 'a test', now(), '2027-05-03T14:00:00Z', '2100-01-01'
     FROM unnest($1::uuid[], $2::uuid[], $3::text[]) AS s (id, account, hash)`,
    [
      column((one) => one.session),
      accounts,
      column(({ secret }) => Buffer.from(hashSecret(secret)).toString("hex")),
    ],
  );
  return people.map(({ secret }) => secret);
}

type Answer = { status: number; body: unknown };

async function ask(secret: string, body: string): Promise<Answer> {
  const response = await fetch(`${service().url}/api/v1/appointments`, {
    method: "POST",
    headers: {
      "content-type": "application/json",
      "idempotency-key": randomUUID(),
      origin: service().url,
      cookie: `evenhand=${secret}`,
    },
    body,
  });
  return { status: response.status, body: await response.json() };
}

test(
  `${crowd} buyers for one hour at once, ${rounds} times: one books it, every other is shown hours that are free`,
  async () => {
    for (let round = 0; round < rounds; round += 1) {
      // The hold of the round before has run out by then, and is in the way until somebody ends it.
      clock.set(new Date(monday.getTime() + round * 11 * 60_000));
      const offer = await firstOffer(world.buyer, world.vehicle);
      const body = JSON.stringify({ vehicles: [world.vehicle], offer });
      const answers = await Promise.all(buyers.map((secret) => ask(secret, body)));
      const count = (status: number) => answers.filter((answer) => answer.status === status).length;
      expect([round, count(201), count(409)]).toEqual([round, 1, crowd - 1]);
      for (const { status, body: refused } of answers) if (status === 409) checkRefusal(refused, offer.start);
      const live = await query<{ count: string }>(
        service().databaseUrl,
        "SELECT count(*) FROM appointment WHERE state = 'held' AND starts_at = $1",
        [offer.start],
      );
      expect(live[0]?.count).toBe("1");
    }
  },
  full ? 3_600_000 : 600_000,
);

/** A clear answer, with at least one other hour in it and never the one that is gone. */
function checkRefusal(body: unknown, gone: string): void {
  const problem = Problem.parse(body);
  expect(problem.type).toMatch(/\/hour-taken$/);
  const { offers } = Offers.parse(problem["offers"]);
  expect(offers.length).toBeGreaterThan(0);
  expect(offers.map(({ start }) => start)).not.toContain(gone);
}
