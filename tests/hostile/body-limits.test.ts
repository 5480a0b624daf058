import { accessTable, type RouteId } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { usualBodyBytes } from "@evenhand/shared/http/paging";
import { problemCodeOf } from "@evenhand/shared/http/problem-codes";
import { Problem } from "@evenhand/shared/problem";
import { expect, test } from "vitest";
import { addressOf } from "../api/setup/person.ts";
import { servedRoutes } from "../api/setup/served-routes.ts";
import { useService } from "../api/setup/service.ts";
import { send } from "./setup/send.ts";

const service = useService({ emptyBetween: false });
const takesBody = servedRoutes.filter((route) => accessTable[route].method !== "GET");

/** A body of so many bytes that is JSON and holds against nothing. */
const body = (bytes: number): string => `"${"x".repeat(bytes - 2)}"`;
const post = (route: RouteId, bytes: number) =>
  send(service().url, {
    method: accessTable[route].method,
    path: addressOf(route),
    headers: { "content-type": "application/json" },
    body: body(bytes),
  });

test.each(takesBody)("%s takes what its contract may need and not a byte more", async (route) => {
  const most = contractTable[route].bodyBytes ?? usualBodyBytes;
  const [fits, over] = [await post(route, most), await post(route, most + 1)];
  expect([fits.status === 413, over.status]).toEqual([false, 413]);
  const problem = Problem.parse(JSON.parse(over.text));
  expect(problemCodeOf(problem.type)).toBe("body-too-large");
  expect(problem.detail).toContain(`at most ${most / 1024} KiB`);
});

test("few routes take more than the usual, and none more than a megabyte", () => {
  const larger = takesBody.filter((route) => contractTable[route].bodyBytes !== undefined);
  expect(larger.length).toBeLessThan(takesBody.length / 4);
  expect(Math.max(...larger.map((route) => contractTable[route].bodyBytes ?? 0))).toBe(1024 * 1024);
});
