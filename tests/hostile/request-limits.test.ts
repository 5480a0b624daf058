import { Problem } from "@evenhand/shared/problem";
import { beforeAll, expect, test } from "vitest";
import { makeWorld, type World } from "../api/setup/world.ts";
import { useService } from "../api/setup/service.ts";

const most = { network: 60, account: 20, costly: 5 };
const service = useService({
  emptyBetween: false,
  environment: {
    REQUESTS_BY_ADDRESS: String(most.network),
    REQUESTS_BY_ACCOUNT: String(most.account),
    COSTLY_REQUESTS_BY_ACCOUNT: String(most.costly),
    // The network is the one a proxy names, so that each of the tests comes from one of its own.
    TRUSTED_PROXIES: "127.0.0.1",
  },
});
let world: World;
beforeAll(async () => {
  world = await makeWorld(service());
});

const from = (address: string) => ({ "x-forwarded-for": address });
const counts = (statuses: readonly number[]) =>
  Object.fromEntries(
    [...new Set(statuses)].map((each) => [each, statuses.filter((one) => one === each).length]),
  );

test("of one account so many a minute are taken, the rest are told when to come again, and others go on", async () => {
  const asked = Array.from({ length: 30 }, (_, at) =>
    world.buyer.ask("account.get", { headers: from(`192.0.2.${at}`) }),
  );
  const answers = await Promise.all(asked);
  expect(counts(answers.map(({ status }) => status))).toEqual({ 200: most.account, 429: 30 - most.account });
  const refused = answers.find(({ status }) => status === 429);
  expect(Problem.parse(refused?.body).type).toContain("too-many-requests");
  const seconds = Number(refused?.headers["retry-after"]);
  expect([seconds >= 1, seconds <= 60]).toEqual([true, true]);
  await world.dealer.does("account.get", { headers: from("192.0.2.1") });
});

test("of what keeps the service busy an account gets less, and all else still", async () => {
  const trial = {
    hours: { zone: "UTC", open: [], away: [] },
    from: "2026-05-04",
    until: "2026-05-05",
  };
  const statuses: number[] = [];
  for (let at = 0; at < 8; at += 1)
    statuses.push(
      (await world.inspector.ask("calendars.layOut", { body: trial, headers: from("192.0.2.50") })).status,
    );
  expect(counts(statuses)).toEqual({ 200: most.costly, 429: 8 - most.costly });
  await world.inspector.does("account.get", { headers: from("192.0.2.50") });
});

test("of one network so many are taken, signed in or not, before anything of them is read", async () => {
  const flood = await Promise.all(
    Array.from({ length: 100 }, (_, at) =>
      fetch(`${service().url}/api/v1/sessions`, {
        method: "POST",
        // All of 2001:db8:0:7::/64 is one subscriber's.
        headers: { ...from(`2001:db8:0:7::${at.toString(16)}`), "content-type": "application/json" },
        body: "{ no json",
      }),
    ),
  );
  expect(counts(flood.map(({ status }) => status))).toEqual({ 400: most.network, 429: 100 - most.network });
  const other = await fetch(`${service().url}/api/v1/account`, { headers: from("2001:db8:0:8::1") });
  expect(other.status).toBe(401);
});
