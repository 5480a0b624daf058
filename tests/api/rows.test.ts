import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { z } from "zod";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import {
  exists,
  findRow,
  readRows,
  run,
  type Source,
  sql,
  WrongRow,
} from "../../apps/api/src/platform/database/rows.ts";
import { workerDatabase } from "./setup/database.ts";
import { testConfig } from "./setup/service.ts";

let database: Database;
beforeAll(async () => {
  database = new Database(testConfig(await workerDatabase()).database);
});
afterAll(() => database.close());

const inside = <T>(ask: (source: Source) => Promise<T>): Promise<T> => database.transaction(ask);
const outside = <T>(ask: (source: Source) => Promise<T>): Promise<T> => ask(database);
const Car = z.object({
  id: z.uuid(),
  doors: z.int(),
  seen: z.date(),
  marks: z.array(z.object({ at: z.string() })),
});
const id = "0197c1a0-0000-7000-8000-000000000001";
const seen = new Date("2027-05-03T14:00:00Z");
const car = (doors: unknown, marks: unknown = [{ at: "hood" }]) =>
  sql`SELECT ${id}::uuid AS id, ${JSON.stringify(doors)}::json AS doors, ${seen}::timestamptz AS seen,
    ${JSON.stringify(marks)}::jsonb AS marks`;

describe.each([
  ["in a transaction", inside],
  ["outside any", outside],
])("%s", (_, ask) => {
  test("a row is what its schema says, and comes as it says", async () => {
    expect(await ask((source) => readRows(source, Car, car(5)))).toEqual([
      { id, doors: 5, seen, marks: [{ at: "hood" }] },
    ]);
    const none = sql`SELECT ${id}::uuid AS id WHERE false`;
    expect(await ask((source) => findRow(source, Car, none))).toBeNull();
    expect(await ask((source) => exists(source, none))).toBe(false);
    expect(await ask((source) => exists(source, sql`SELECT 1`))).toBe(true);
    const lock = sql`SELECT pg_advisory_xact_lock(${7})`;
    expect(await ask((source) => run(source, lock))).toBeUndefined();
  });

  test("a wrong row is an error that names statement and column, and no value", async () => {
    const wrong = ask((source) => findRow(source, Car, car("five", [{ at: 7 }])));
    await expect(wrong).rejects.toThrow(WrongRow);
    await expect(wrong).rejects.toThrow(
      /^The statement "SELECT \$1::uuid AS id, .*" gave a row that is not what it says\. column "doors": .*; column "marks"\/0\/at: /,
    );
    await expect(wrong).rejects.not.toThrow("five");
    const named = ask((source) =>
      readRows(source, Car, { ...car(5), name: "a-car", text: "SELECT 1 AS id", values: [] }),
    );
    await expect(named).rejects.toThrow(
      'The statement "a-car" gave a row that is not what it says. column "id": ',
    );
  });
});
