import { accessTable, isRouteId, routeIds } from "@evenhand/shared/access";
import { contractTable } from "@evenhand/shared/http/contracts";
import { expect, test } from "vitest";
import { CostlyInterceptor } from "../../apps/api/src/platform/http/costly.interceptor.ts";
import { IdempotencyInterceptor } from "../../apps/api/src/platform/http/idempotency.interceptor.ts";
import { handlers } from "../api/setup/served-routes.ts";

test("there are handlers to look at", () => {
  expect(handlers.length).toBeGreaterThan(50);
});

test.each(handlers)("$controller.$method stands in the access table", ({ id }) => {
  expect(typeof id === "string" && isRouteId(id)).toBe(true);
});

test("no two handlers are one route", () => {
  const ids = handlers.map(({ id }) => id);
  expect(new Set(ids).size).toBe(ids.length);
});

test.each(handlers)("$controller.$method holds what is sent against its own contract", ({ id, schemas }) => {
  const contract = typeof id === "string" && isRouteId(id) ? contractTable[id] : undefined;
  const asked = [contract?.body, contract?.query].filter((schema) => schema !== undefined);
  expect(new Set(schemas)).toEqual(new Set(asked));
  expect(schemas.every((schema) => asked.some((each) => each === schema))).toBe(true);
});

test.each(handlers)(
  "$controller.$method is called as it is, unless it is costly or done once by a key",
  (handler) => {
    const { id, interceptors } = handler;
    if (typeof id !== "string" || !isRouteId(id)) throw new TypeError("it stands in no table");
    const wanted = [
      ...(contractTable[id].costly === true ? [CostlyInterceptor] : []),
      ...(accessTable[id].once === "key" ? [IdempotencyInterceptor] : []),
    ];
    expect(interceptors).toEqual(wanted);
  },
);

test("no two entries of the table are one address", () => {
  const addresses = routeIds.map(
    (id) => `${accessTable[id].method} ${accessTable[id].path.replaceAll(/:\w+/g, ":")}`,
  );
  expect(addresses.filter((address, index) => addresses.indexOf(address) !== index)).toEqual([]);
});

test.each(routeIds)("%s says whom it is for", (id) => {
  const { public: open, who } = accessTable[id];
  expect(open === true ? who.length === 0 : who.length > 0).toBe(true);
});

const changing = routeIds.filter(
  (id) => accessTable[id].method === "POST" || accessTable[id].method === "PUT",
);
test.each(changing)("%s says how a repeat is kept from doing it twice", (id) => {
  expect(accessTable[id].once).toBeDefined();
});

const secrets = /token|secret|password/i;
test.each(routeIds.filter((id) => accessTable[id].once === "key"))(
  "%s keeps no secret with its answer",
  (id) => {
    const { answer } = contractTable[id];
    const fields = answer === null || !("shape" in answer) ? [] : Object.keys(Object(answer.shape));
    expect(fields.filter((field) => secrets.test(field))).toEqual([]);
  },
);
