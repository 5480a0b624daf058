import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";

const service = join(import.meta.dirname, "..", "..", "apps", "api", "src");

/** What gives rows nobody has held against anything: rows whose type is claimed, and a transaction asked past the reading functions. */
const unread = /\$(?:query|execute)Raw\w*|\.query\s*</g;
const unreadIn = (text: string): string[] => text.match(unread) ?? [];

test("rows of hand-written SQL are read by a schema, in one place", () => {
  const files = readdirSync(service, { recursive: true, encoding: "utf8" }).filter(
    (file) => file.endsWith(".ts") && !file.startsWith(join("platform", "database", "generated")),
  );
  const found = files.flatMap((file) =>
    unreadIn(readFileSync(join(service, file), "utf8")).map((what) => `${file}: ${what}`),
  );
  expect(files.length).toBeGreaterThan(150);
  expect(found.toSorted()).toEqual([
    // What the service is measured against reads nothing: it passes on what comes.
    "bench/floor.ts: .query<",
    "platform/database/database.ts: .query<",
    "platform/database/read-lines.ts: .query<",
    "platform/database/rows.ts: $executeRawUnsafe",
    "platform/database/rows.ts: $queryRawUnsafe",
  ]);
});

test.each([
  "const [order] = await tx.$queryRaw<Order[]>`SELECT id FROM inspection_order`;",
  "await tx.$executeRawUnsafe(text, id);",
  "const { rows } = await pool.query<{ id: string }>(text);",
])("%s is refused", (line) => {
  expect(unreadIn(line)).toHaveLength(1);
});
