import { connect } from "node:net";
import { once } from "node:events";
import { Problem } from "@evenhand/shared/problem";
import { beforeAll, expect, test } from "vitest";
import { createApp } from "../../apps/api/src/app.ts";
import { calendarBody, siteBody } from "../api/setup/booking-story.ts";
import { query } from "../api/setup/database.ts";
import { testConfig, useService } from "../api/setup/service.ts";
import { car, header } from "../api/setup/story.ts";
import { makeWorld, type World } from "../api/setup/world.ts";
import { send } from "../api/setup/send.ts";

const service = useService({ emptyBetween: false });
let world: World;
beforeAll(async () => {
  world = await makeWorld(service());
});

const makeCar = (change: object) => ({
  organization: world.dealer.organization,
  vehicle: { ...car, ...change },
});
const firstProblem = async (route: "vehicles.create" | "sites.create" | "calendars.create", body: object) => {
  const person = route === "calendars.create" ? world.inspector : world.dealer;
  const { code, problems } = await person.isRefused(route, { body });
  return [code, problems?.[0]?.at];
};

test("half a character, NUL and endless nesting are refused at their place, in values and in keys", async () => {
  expect(await firstProblem("vehicles.create", makeCar({ make: "half \ud800" }))).toEqual([
    "invalid-fields",
    "/vehicle/make",
  ]);
  expect(await firstProblem("vehicles.create", makeCar({ model: "a\0b" }))).toEqual([
    "invalid-fields",
    "/vehicle/model",
  ]);
  expect(await firstProblem("vehicles.create", makeCar({ "a\0b": 1 }))).toEqual([
    "invalid-fields",
    "/vehicle/?",
  ]);
  const deep: unknown = Array.from({ length: 200 }).reduce<unknown>((inner) => [inner], "end");
  expect(await firstProblem("vehicles.create", makeCar({ form: deep }))).toEqual([
    "invalid-fields",
    `/vehicle/form${"/0".repeat(30)}`,
  ]);
  const listed = await world.buyer.isRefused("vehicles.list", { query: { q: "a\0b" } });
  expect([listed.code, listed.problems?.[0]?.at]).toEqual(["invalid-fields", "query/q"]);
});

test("the year 0000 is refused, and a day that a zone left out is refused as any past one", async () => {
  const { id } = await world.dealer.does("sites.create", {
    body: siteBody(world.dealer, { hours: { zone: "Pacific/Apia", open: [] } }),
  });
  const ask = (from: string, until: string) =>
    world.dealer.ask("sites.days", { path: { id }, query: { from, until } });
  const year = await ask("0000-01-01", "0000-01-02");
  expect([year.status, Problem.parse(year.body).problems?.map(({ at }) => at)]).toEqual([
    422,
    ["query/from", "query/until"],
  ]);
  // 30 December 2011 never was in Samoa. Neither day can be booked any more, and both are told so alike.
  for (const day of ["2011-12-29", "2011-12-30"]) {
    const past = await ask(day, day);
    expect([past.status, Problem.parse(past.body).problems?.map(({ at }) => at)]).toEqual([
      422,
      ["query/until"],
    ]);
  }
});

const asking = (minor: number, currency: string) => ({ ...makeCar({}), asking: { minor, currency } });

test("money is never less than nothing and in a currency in use", async () => {
  expect(await firstProblem("vehicles.create", asking(-1, "USD"))).toEqual([
    "invalid-fields",
    "/asking/minor",
  ]);
  expect(await firstProblem("vehicles.create", asking(2 ** 53 - 1, "USD"))).toEqual([
    "invalid-fields",
    "/asking/minor",
  ]);
  expect(await firstProblem("vehicles.create", asking(100, "QQQ"))).toEqual([
    "invalid-fields",
    "/asking/currency",
  ]);
  const fees = { currency: "QQQ", perVisit: 1, perExtraCar: 1, perMile: 1 };
  expect(await firstProblem("calendars.create", calendarBody(world.inspector, { fees }))).toEqual([
    "invalid-fields",
    "/fees/currency",
  ]);
});

test("a zone that is none is refused when it is written, not when the report is sealed", async () => {
  const { id } = await world.dealer.does("vehicles.create", { body: makeCar({}) });
  const body = { ...header, visit: { ...header.visit, zone: "Mars/Olympus" } };
  const refused = await world.dealer.isRefused("reports.state", { path: { id }, body });
  expect([refused.code, refused.problems?.[0]?.at]).toEqual(["invalid-fields", "/visit/zone"]);
});

test("no name turns the direction of what is written after it", async () => {
  const turned = "Yard \u202Egnp.tseuqer";
  expect(await firstProblem("sites.create", siteBody(world.dealer, { name: turned }))).toEqual([
    "invalid-fields",
    "/name",
  ]);
  expect(await firstProblem("vehicles.create", makeCar({ make: turned }))).toEqual([
    "invalid-fields",
    "/vehicle/make",
  ]);
});

const raw = (method: string, path: string) =>
  send(service().url, { method, path, headers: world.dealer.credentials });

test("an address that is none is a problem, not a failure", async () => {
  for (const path of ["/%", "/api/v1/vehicles/%", "/%ff", `/api/v1/vehicles/${"x".repeat(500)}`]) {
    const { status, type, text } = await raw("GET", path);
    expect([path, status, type]).toEqual([path, 404, "application/problem+json; charset=utf-8"]);
    expect(Problem.parse(JSON.parse(text)).detail).toContain("nothing");
  }
});

test("a method that an address does not take is told which it takes", async () => {
  const answers = await Promise.all(
    ["DELETE", "PATCH", "OPTIONS"].map((method) =>
      fetch(`${service().url}/api/v1/vehicles`, { method, headers: world.dealer.credentials }),
    ),
  );
  expect(answers.map(({ status, headers }) => [status, headers.get("allow")])).toEqual(
    answers.map(() => [405, "GET, HEAD, POST"]),
  );
  const reading = await fetch(`${service().url}/api/v1/summaries/x/decision`);
  expect([reading.status, reading.headers.get("allow")]).toEqual([405, "POST"]);
});

test("of many who make the one thing there can be one of at once, one makes it and no other sees a failure", async () => {
  const vehicles = await Promise.all(
    Array.from({ length: 5 }, () => world.dealer.does("vehicles.create", { body: makeCar({}) })),
  );
  for (const { id } of vehicles) {
    const answers = await Promise.all(
      Array.from({ length: 6 }, () => world.dealer.ask("reports.state", { path: { id }, body: header })),
    );
    expect(answers.map(({ status }) => status).toSorted((a, b) => a - b)).toEqual([
      201, 409, 409, 409, 409, 409,
    ]);
  }
  const body = { ...makeCar({}) };
  const key = "the-same-key-for-all";
  const same = await Promise.all(
    Array.from({ length: 6 }, () => world.dealer.ask("vehicles.create", { body, key })),
  );
  expect(same.every(({ status }) => status === 201 || status === 409)).toBe(true);
  const rows = await query<{ count: string }>(
    service().databaseUrl,
    "SELECT count(*) FROM idempotency WHERE key = $1",
    [key],
  );
  expect(rows[0]?.count).toBe("1");
});

/** A port at which nobody listens. */
async function closedPort(): Promise<number> {
  const { createServer } = await import("node:net");
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  await once(server, "close");
  return typeof address === "object" && address !== null ? address.port : 0;
}

test("while the database is away everybody is told when to come again, and afterwards all goes on", async () => {
  const { createServer } = await import("node:net");
  const port = await closedPort();
  const real = new URL(service().databaseUrl);
  const through = new URL(real);
  through.hostname = "127.0.0.1";
  through.port = String(port);
  const sockets = new Set<ReturnType<typeof connect>>();
  const proxy = createServer((client) => {
    const upstream = connect(Number(real.port), real.hostname);
    for (const socket of [client, upstream]) {
      sockets.add(socket);
      socket.on("error", () => socket.destroy());
      socket.on("close", () => [client, upstream].forEach((each) => each.destroy()));
    }
    client.pipe(upstream).pipe(client);
  });
  proxy.listen(port, "127.0.0.1");
  await once(proxy, "listening");
  const app = await createApp(testConfig(through.href, { MAIL_FOLDER: service().mailFolder }));
  try {
    await app.listen(0, "127.0.0.1");
    const url = (await app.getUrl()).replace("[::1]", "127.0.0.1");
    const ask = () =>
      Promise.all(
        ["/api/v1/vehicles", "/api/v1/account", "/ready"].map((path) =>
          fetch(url + path, { headers: world.dealer.credentials }),
        ),
      );
    expect((await ask()).map(({ status }) => status)).toEqual([200, 200, 200]);
    proxy.close();
    for (const socket of sockets) socket.destroy();
    await new Promise((resolve) => setTimeout(resolve, 50));
    const away = await ask();
    expect(away.map(({ status, headers }) => [status, headers.get("retry-after")])).toEqual(
      away.map(() => [503, "5"]),
    );
    const changing = await fetch(`${url}/api/v1/vehicles`, {
      method: "POST",
      headers: {
        ...world.dealer.credentials,
        origin: url,
        "content-type": "application/json",
        "idempotency-key": "a-key-of-its-own",
      },
      body: JSON.stringify(makeCar({})),
    });
    expect([changing.status, changing.headers.get("retry-after")]).toEqual([503, "5"]);
    proxy.listen(port, "127.0.0.1");
    await once(proxy, "listening");
    expect((await ask()).map(({ status }) => status)).toEqual([200, 200, 200]);
  } finally {
    await app.close();
    proxy.close();
    for (const socket of sockets) socket.destroy();
  }
});
