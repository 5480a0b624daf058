import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { routeIds } from "@evenhand/shared/access";

const root = new URL("../../", import.meta.url);
const textOf = (path: string): string => readFileSync(new URL(path, root), "utf8");
const namesIn = (path: string): string[] => readdirSync(new URL(path, root));

/** Route by the folder or file in whose text it stands. */
const routesIn = (texts: readonly (readonly [name: string, text: string])[], pattern: RegExp) =>
  new Map(
    texts.flatMap(([name, text]) =>
      [...text.matchAll(pattern)].map(([, route]) => [route ?? "", name] as const),
    ),
  );

const capabilities = "apps/api/src/capabilities/";
const served = routesIn(
  namesIn(capabilities)
    .filter((name) => !name.endsWith(".ts"))
    .flatMap((name) =>
      namesIn(`${capabilities}${name}`).map((file) => [name, textOf(`${capabilities}${name}/${file}`)]),
    ),
  /@Route\("([\w.]+)"/g,
);
const contracted = routesIn(
  namesIn("shared/src/http").map((file) => [file.replace(/\.ts$/, ""), textOf(`shared/src/http/${file}`)]),
  /^ {2}"(\w+\.\w+)": \{/gm,
);

/** Calendars of people and places are one contract, which three capabilities serve. */
const withCalendars: ReadonlySet<string | undefined> = new Set(["sites", "admissions", "booking"]);

test("a route's contract stands under the name of the capability that serves it", () => {
  expect(routeIds.filter((route) => !served.has(route) || !contracted.has(route))).toEqual([]);
  const elsewhere = routeIds.filter(
    (route) =>
      served.get(route) !== contracted.get(route) &&
      !(contracted.get(route) === "calendars" && withCalendars.has(served.get(route))),
  );
  expect(elsewhere).toEqual([]);
});

test("an access entry stands beside the others of its thing, so that all that may be done with it is read at once", () => {
  const groups = routeIds.map((route) => route.split(".")[0]);
  const starts = groups.filter((group, at) => group !== groups[at - 1]);
  expect(starts.filter((group, at) => starts.indexOf(group) !== at)).toEqual([]);
});
