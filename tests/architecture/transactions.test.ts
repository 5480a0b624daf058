import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { accessTable, routeIds } from "@evenhand/shared/access";
import { expect, test } from "vitest";
import { begunTwice } from "./begun-twice.ts";

const service = join(import.meta.dirname, "..", "..", "apps", "api", "src");
const files = new Map(
  readdirSync(service, { recursive: true, encoding: "utf8" })
    .filter((file) => file.endsWith(".ts") && !file.includes("generated"))
    .map((file) => [file, readFileSync(join(service, file), "utf8")] as const),
);

test("a transaction travels as an argument, and in no store", () => {
  expect(files.size).toBeGreaterThan(150);
  const stores = [...files].filter(([, text]) => /AsyncLocalStorage|async_hooks/.test(text));
  expect(stores.map(([file]) => file)).toEqual([]);
});

test("none is begun where one is open", () => {
  expect(begunTwice(files)).toEqual([]);
});

test("handlers of routes with a key are handed the transaction in which the answer is kept, and no others", () => {
  const handed = [...files.values()].flatMap((text) =>
    [
      ...text.matchAll(/@Route\("([\w.]+)"\)\s+(?:@\w+\([^\n]*\)\s+)*(?:async )?\w+\(\s*@InTransaction\(\)/g),
    ].map(([, route = ""]) => route),
  );
  const keyed = routeIds.filter((route) => accessTable[route].once === "key");
  expect(handed.toSorted()).toEqual(keyed.toSorted());
});

const database = "constructor(private readonly database: Database, private readonly other: Other) {}";
const other = `class Other { ${database} begin() { return this.database.transaction((tx) => tx.car.create()); } }`;
test.each([
  [
    "what takes one",
    "change(tx: Transaction) { return this.database.transaction((again) => again.car.update()); }",
  ],
  ["the work of one", "change() { return this.database.transaction((tx) => this.other.begin()); }"],
  [
    "what calls what calls it",
    "twice() { return this.other.begin(); } change(tx: Transaction) { return this.twice(); }",
  ],
])("%s that begins one is seen", (_, method) => {
  expect(begunTwice(new Map([["one.ts", `${other} class One { ${database} ${method} }`]]))).toHaveLength(1);
});

test("what is handed on is fine", () => {
  const one =
    "change() { return this.database.transaction((tx) => this.part(tx)); } part(tx: Transaction) { return tx.car.update(); }";
  expect(begunTwice(new Map([["one.ts", `class One { ${database} ${one} }`]]))).toEqual([]);
});
