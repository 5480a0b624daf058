import { beforeAll, expect, test } from "vitest";
import { loadDemo } from "../../apps/api/src/commands/load-demo.ts";
import { cloneDatabase, query } from "./setup/database.ts";
import { testConfig } from "./setup/service.ts";

let [first, second] = ["", ""];
beforeAll(async () => {
  [first, second] = [await cloneDatabase("demo_first"), await cloneDatabase("demo_second")];
  await loadDemo(testConfig(first));
  await loadDemo(testConfig(second));
}, 240_000);

const digest = `SELECT 'vehicle' AS what, count(*)::int AS count, md5(string_agg(id::text, ',' ORDER BY id)) AS ids FROM vehicle
  UNION ALL SELECT 'version', count(*)::int, md5(string_agg(id || seal, ',' ORDER BY id)) FROM report_version
  UNION ALL SELECT 'comparison', count(*)::int, md5(string_agg(id || hash, ',' ORDER BY id)) FROM comparison
  UNION ALL SELECT 'release', count(*)::int, md5(string_agg(id::text, ',' ORDER BY id)) FROM release
  UNION ALL SELECT 'summary', count(*)::int, md5(string_agg(id || hash, ',' ORDER BY id)) FROM summary
  UNION ALL SELECT 'decision', count(*)::int, md5(string_agg(id || hash, ',' ORDER BY id)) FROM decision ORDER BY 1`;

test("loaded twice, into two databases, it is the same to the last id and hash", async () => {
  const [one, other] = [await query(first, digest), await query(second, digest)];
  expect(one).toHaveLength(6);
  expect(one).toEqual(other);
});

test("loaded again into the same database, it changes nothing", async () => {
  const before = await query(first, digest);
  const { state, accounts } = await loadDemo(testConfig(first));
  expect(state).toBe("there");
  expect(accounts.length).toBeGreaterThan(5);
  expect(await query(first, digest)).toEqual(before);
});

test("an older demo is known as one", async () => {
  await query(second, "UPDATE demo_load SET revision = revision - 1");
  expect((await loadDemo(testConfig(second))).state).toBe("older");
});

test("the main case is approved, and its hash is that of its summary", async () => {
  const { main } = await loadDemo(testConfig(first));
  const rows = await query<{ decision: string; same: boolean }>(
    first,
    `SELECT d.decision, d.hash = s.hash AS same FROM decision d JOIN summary s ON s.id = d.summary_id
     WHERE s.comparison_id = '${main.comparison}'`,
  );
  expect(rows).toEqual([{ decision: "approve", same: true }]);
});

test("every outcome occurs in its comparisons", async () => {
  const rows = await query<{ outcome: string }>(
    first,
    `SELECT DISTINCT jsonb_array_elements(convert_from(document, 'UTF8')::jsonb->'entries')->>'outcome' AS outcome FROM comparison`,
  );
  expect(rows.map(({ outcome }) => outcome).toSorted()).toEqual([
    "agree",
    "consistent",
    "differ",
    "doubtful",
    "incomparable",
    "unseen",
    "unstated",
  ]);
});
