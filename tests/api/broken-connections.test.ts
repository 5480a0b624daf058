import { connect, createServer, type Server } from "node:net";
import { afterEach, beforeEach, expect, test } from "vitest";
import { Database } from "../../apps/api/src/platform/database/database.ts";
import { findRow, sql } from "../../apps/api/src/platform/database/rows.ts";
import { z } from "zod";
import { workerDatabase } from "./setup/database.ts";
import { testConfig } from "./setup/service.ts";

/** "Ready for the next", in no transaction (PostgreSQL 18, "Message Formats"). */
const ready = Buffer.from([0x5a, 0, 0, 0, 5, 0x49]);

/** What a server says to everybody whose postmaster is gone. */
function goodbye(): Buffer {
  const fields = Buffer.from(
    "SFATAL\0VFATAL\0C57P01\0Mterminating connection due to unexpected postmaster exit\0\0",
  );
  const head = Buffer.alloc(5, "E");
  head.writeUInt32BE(fields.length + 4, 1);
  return Buffer.concat([head, fields]);
}

let server: Server;
let dying = "";
/** So many connections from now on end in the very moment they are ready. */
let ending = 0;

/** Stands before the real server. */
beforeEach(async () => {
  const behind = new URL(await workerDatabase());
  server = createServer((client) => {
    const database = connect(Number(behind.port), behind.hostname);
    client.on("data", (part) => database.write(part)).on("close", () => database.destroy());
    database.on("data", (part) => {
      const ends = ending > 0 && part.subarray(-ready.length).equals(ready);
      if (!ends) return void client.write(part);
      ending -= 1;
      client.end(Buffer.concat([part, goodbye()]));
    });
    for (const each of [client, database]) each.on("error", () => {});
  });
  await new Promise<void>((resolve) => void server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("It listens at no port.");
  const before = new URL(behind);
  before.host = `127.0.0.1:${String(address.port)}`;
  dying = before.href;
});
afterEach(() => void server.close());

const unheard: unknown[] = [];
const note = (error: unknown): void => void unheard.push(error);
beforeEach(() => {
  unheard.length = 0;
  process.on("uncaughtException", note);
});
afterEach(() => void process.off("uncaughtException", note));

const Answer = z.object({ one: z.number() });

test("a connection that ends in the moment it is handed out is said to whoever asked over it, and ends nothing else", async () => {
  const database = new Database(testConfig(dying).database);
  ending = 1;
  await expect(database.transaction((tx) => findRow(tx, Answer, sql`SELECT 1 AS one`))).rejects.toThrow(
    /postmaster exit|not queryable|[Cc]onnection/,
  );
  expect(unheard).toEqual([]);
  expect(await database.transaction((tx) => findRow(tx, Answer, sql`SELECT 1 AS one`))).toEqual({ one: 1 });
  await database.close();
});
