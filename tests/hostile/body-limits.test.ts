import { accessTable, type RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { usualBodyBytes } from "@evenhand/shared/http/paging";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { Problem } from "@evenhand/shared/problem";
import { once } from "node:events";
import { connect } from "node:net";
import { expect, test } from "vitest";
import { addressOf, type Person } from "../api/setup/person.ts";
import { servedRoutes } from "../api/setup/served-routes.ts";
import { useService } from "../api/setup/service.ts";
import { makePerson } from "../api/setup/world.ts";
import { send } from "../api/setup/send.ts";

const service = useService({ emptyBetween: false });
const takesBody = servedRoutes.filter((route) => accessTable[route].method !== "GET");

const large = takesBody.filter(
  (route) => contractTable[route].bodyBytes !== undefined && !accessTable[route].public,
);

/** A body of so many bytes that is JSON and holds against nothing. */
const body = (bytes: number): string => `"${"x".repeat(bytes - 2)}"`;
const post = (route: RouteId, bytes: number, { credentials }: Pick<Person, "credentials">) =>
  send(service().url, {
    method: accessTable[route].method,
    path: addressOf(route),
    headers: { "content-type": "application/json", origin: service().url, ...credentials },
    body: body(bytes),
  });

test.each(takesBody)("%s takes what its contract may need and not a byte more", async (route) => {
  const most = contractTable[route].bodyBytes ?? usualBodyBytes;
  // What is large is read from who is signed in only; some of the others end the session they are asked in.
  const who = large.includes(route) ? await makePerson(service(), "dealer", route) : { credentials: {} };
  const [fits, over] = [await post(route, most, who), await post(route, most + 1, who)];
  expect([fits.status === 413, over.status]).toEqual([false, 413]);
  const problem = Problem.parse(JSON.parse(over.text));
  expect(problemCodeOf(problem.type)).toBe("body-too-large");
  expect(problem.detail).toContain(`at most ${most / 1024} KiB`);
});

test.each(large)("%s refuses who is not signed in before a byte of the body has come", async (route) => {
  const socket = connect(Number(new URL(service().url).port), "127.0.0.1");
  const { method } = accessTable[route];
  const length = contractTable[route].bodyBytes ?? 0;
  socket.write(
    `${method} ${addressOf(route)} HTTP/1.1\r\nHost: here\r\nContent-Type: application/json\r\nContent-Length: ${length}\r\n\r\n`,
  );
  const [answer] = await once(socket, "data");
  socket.destroy();
  expect(String(answer)).toMatch(/^HTTP\/1.1 401 [^]*not-signed-in/);
});

test("few routes take more than the usual, none more than a megabyte, and what carries a file to be read four", () => {
  const carriesFile: readonly RouteId[] = ["reports.readSheet", "reports.readSpoken"];
  for (const route of carriesFile) expect(contractTable[route].bodyBytes).toBe(4 * 1024 * 1024);
  const larger = takesBody.filter(
    (route) => contractTable[route].bodyBytes !== undefined && !carriesFile.includes(route),
  );
  expect(larger.length).toBeLessThan(takesBody.length / 4);
  expect(Math.max(...larger.map((route) => contractTable[route].bodyBytes ?? 0))).toBe(1024 * 1024);
});
