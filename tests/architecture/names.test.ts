import { readdirSync, readFileSync } from "node:fs";
import { sep } from "node:path";
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
/** Files under a folder, each by the name of what it belongs to: the folder's where it stands in one. */
const owned = (folder: string) =>
  readdirSync(new URL(folder, root), { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts"))
    .map((file) => [file.split(sep)[0]?.replace(/\.ts$/, "") ?? "", textOf(`${folder}/${file}`)] as const);
const entry = /^ {2}"(\w+\.\w+)": \{/gm;
const contracted = routesIn(owned("shared/src/http"), entry);
const allowed = routesIn(owned("shared/src/access"), entry);

test("a route's contract stands under the name of the capability that serves it", () => {
  expect(routeIds.filter((route) => !served.has(route) || !contracted.has(route))).toEqual([]);
  const elsewhere = routeIds.filter((route) => served.get(route) !== contracted.get(route));
  expect(elsewhere).toEqual([]);
});

test("an access entry stands beside the others of its thing, so that all that may be done with it is read at once", () => {
  const groups = routeIds.map((route) => route.split(".")[0]);
  const starts = groups.filter((group, at) => group !== groups[at - 1]);
  expect(starts.filter((group, at) => starts.indexOf(group) !== at)).toEqual([]);
});

test("an access entry stands under the name of the capability that serves its thing", () => {
  const things = new Map(routeIds.toReversed().map((route) => [route.split(".")[0], served.get(route)]));
  const elsewhere = routeIds.filter((route) => things.get(route.split(".")[0]) !== allowed.get(route));
  expect(elsewhere).toEqual([]);
});
