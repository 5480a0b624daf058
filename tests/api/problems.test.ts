import { Controller, Get, Module, Post } from "@nestjs/common";
import request from "supertest";
import { assert, asyncProperty, constantFrom, dictionary, jsonValue, oneof, string } from "fast-check";
import { accessTable, type RouteId } from "@evenhand/shared/access";
import { Problem } from "@evenhand/shared/problem";
import { beforeEach, expect, test } from "vitest";
import { Person } from "./setup/person.ts";
import { guardedRoutes } from "./setup/served-routes.ts";
import { useService } from "./setup/service.ts";
import { makeWorld, type World } from "./setup/world.ts";

@Controller()
class CarelessController {
  @Get("careless")
  open() {
    return { secret: "nobody checked" };
  }
  @Post("careless/failure")
  fail() {
    return { secret: "nobody checked" };
  }
}
@Module({ controllers: [CarelessController] })
class CarelessModule {}

const service = useService({ modules: [CarelessModule] });
let world: World;
beforeEach(async () => {
  world = await makeWorld(service());
});

test("a route added without an entry in the access table refuses everybody", async () => {
  for (const person of [world.operator, world.dealer, world.nobody]) {
    const answer = await request(person.url).get("/api/v1/careless").set(person.credentials);
    expect([answer.status, answer.text.includes("nobody checked")]).toEqual([403, false]);
  }
});

const post = (type: string, body: string) =>
  request(service().url)
    .post("/api/v1/vehicles")
    .set({ ...world.dealer.credentials, origin: service().url, "content-type": type })
    .send(body);

test("what is no JSON, of the wrong type, or too large is refused as such", async () => {
  const answers = [
    await post("application/json", "{ no json"),
    await post("text/plain", "words"),
    await post("application/x-www-form-urlencoded", "organization=1"),
    await post("application/json", JSON.stringify({ x: "x".repeat(9_000_000) })),
  ];
  expect(answers.map(({ status }) => status)).toEqual([400, 415, 415, 413]);
  for (const answer of answers) expect(Problem.parse(answer.body).status).toBe(answer.status);
});

test("keys that would reach into prototypes are refused", async () => {
  const answer = await request(service().url)
    .post("/api/v1/vehicles")
    .set({ ...world.dealer.credentials, origin: service().url, "content-type": "application/json" })
    .send('{"__proto__":{"admin":true}}');
  expect(answer.status).toBe(400);
});

test("an address or a method that is not there is a problem too", async () => {
  const [address, method] = [
    await request(service().url).get("/api/v1/nowhere"),
    await request(service().url)
      .delete("/api/v1/vehicles")
      .set({ ...world.dealer.credentials, origin: service().url }),
  ];
  expect([address.status, method.status]).toEqual([404, 405]);
  expect(Problem.parse(address.body).detail).toContain("nothing");
  expect(method.headers.allow).toBe("GET, HEAD, POST");
});

test("the problem names the request, and the log has the same name", async () => {
  const answer = await request(service().url).get("/api/v1/nowhere").set("x-request-id", "trace-12345678");
  expect(answer.body.instance).toBe("/requests/trace-12345678");
});

const withBody = guardedRoutes.filter((route) =>
  ["POST", "PATCH", "PUT"].includes(accessTable[route].method),
);
const personOf = (route: RouteId): Person => {
  const kind = accessTable[route].who[0]?.kind;
  if (kind === "buyer") return world.buyer;
  if (kind === "inspector") return world.inspector;
  return kind === "operator" ? world.operator : world.dealer;
};

test("whatever is sent to whichever route, the service never fails, and every refusal says which field", async () => {
  const body = oneof(
    jsonValue(),
    dictionary(constantFrom("operations", "entries", "vehicle", "decision", "hash"), jsonValue()),
  );
  const property = asyncProperty(constantFrom(...withBody), body, string(), async (route, sent, header) => {
    const answer = await personOf(route).ask(route, {
      body: sent,
      path: { id: "01920000-0000-7000-8000-000000000000" },
      headers: { "if-match": JSON.stringify(header).replaceAll(/[^\x20-\x7e]/g, "") },
    });
    expect(answer.status).toBeLessThan(500);
    expect(answer.status !== 422 || answer.body.problems.length > 0).toBe(true);
  });
  await assert(property, { numRuns: 1000 });
}, 300_000);

test("bad parameters of lists are named", async () => {
  const problem = await world.buyer.isRefused("vehicles.list", {
    query: { limit: "0", after: "", sort: "price" },
  });
  expect(problem.code).toBe("invalid-fields");
  expect(problem.problems?.map(({ at }) => at)).toEqual(
    expect.arrayContaining(["query/limit", "query/after"]),
  );
  const cursor = await world.buyer.isRefused("vehicles.list", { query: { after: "somewhere" } });
  expect(cursor.problems).toEqual([{ at: "query/after", reason: "the `next` of the page before" }]);
});
