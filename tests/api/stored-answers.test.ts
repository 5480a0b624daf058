import { CaseHome } from "@evenhand/shared/http/cases";
import { beforeEach, describe, expect, test } from "vitest";
import type { Person } from "./setup/person.ts";
import { useService } from "./setup/service.ts";
import { inspect, type Inspected } from "./setup/story.ts";
import { makeWorld, type World } from "./setup/world.ts";

const service = useService();
let world: World;
let way: Inspected;
beforeEach(async () => {
  world = await makeWorld(service());
  way = await inspect(world);
});

/** As a browser asks, but nothing is unpacked on the way. */
const get = (person: Person, path: string, headers: Record<string, string>) =>
  fetch(`${service().url}/api/v1${path}`, { headers: { ...person.credentials, ...headers } });
const document = (headers: Record<string, string>) =>
  get(world.buyer, `/comparisons/${way.comparison}/document`, headers);

describe("a stored document", () => {
  test("is compressed for whoever takes that, and is the same document", async () => {
    const plain = await document({ "accept-encoding": "identity" });
    const packed = await document({ "accept-encoding": "br, gzip" });
    expect([plain.headers.get("content-encoding"), packed.headers.get("content-encoding")]).toEqual([
      null,
      "gzip",
    ]);
    const [whole, sent] = [
      Number(plain.headers.get("content-length")),
      Number(packed.headers.get("content-length")),
    ];
    expect(sent).toBeLessThan(whole / 3);
    expect(packed.headers.get("etag")).toBe(`W/${plain.headers.get("etag")}`);
    expect(packed.headers.get("vary")).toContain("accept-encoding");
    // Twice, since the second comes from what was kept.
    expect(await packed.text()).toBe(await plain.text());
    expect(await (await document({ "accept-encoding": "gzip" })).json()).toHaveProperty("entries");
  });

  test.each(["identity", "gzip;q=0", "deflate", ""])(
    "is sent as it is to whoever takes %j",
    async (encoding) => {
      const answer = await document({ "accept-encoding": encoding });
      expect(answer.headers.get("content-encoding")).toBeNull();
      expect(await answer.json()).toHaveProperty("entries");
    },
  );

  test("is not sent again to whoever has it, but whether they may see it is asked all the same", async () => {
    const etag = (await document({})).headers.get("etag") ?? "";
    const again = await document({ "if-none-match": etag });
    expect([again.status, await again.text()]).toEqual([304, ""]);
    const other = await document({ "if-none-match": '"another"' });
    expect(other.status).toBe(200);
    const stranger = await get(world.otherBuyer, `/comparisons/${way.comparison}/document`, {
      "if-none-match": etag,
    });
    expect(stranger.status).toBe(404);
  });
});

test("what changes without its revision is never answered with 304", async () => {
  const first = await get(world.buyer, `/vehicles/${way.vehicle}`, {});
  const again = await get(world.buyer, `/vehicles/${way.vehicle}`, {
    "if-none-match": first.headers.get("etag") ?? "",
  });
  expect([first.status, again.status]).toEqual([200, 200]);
});

test("a case, put together for one person, is never compressed, and is the same from what was kept", async () => {
  const home = await get(world.buyer, "/cases?limit=25", {});
  const { yours, others } = CaseHome.parse(await home.json());
  const [own] = [...yours, ...others];
  const ask = () => get(world.buyer, `/cases/${own?.id}`, { "accept-encoding": "gzip" });
  const [first, again] = [await ask(), await ask()];
  const text = await first.text();
  expect([first.status, first.headers.get("content-encoding")]).toEqual([200, null]);
  expect(first.headers.get("content-type")).toBe("application/json; charset=utf-8");
  expect(text.length).toBeGreaterThan(1_400);
  expect(await again.text()).toBe(text);
});
