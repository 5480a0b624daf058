import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { PictureQuestionKind } from "@evenhand/shared/evidence";
import { contracts } from "@evenhand/shared/http/contracts";
import { afterAll, beforeAll, expect, test } from "vitest";
import { createApp } from "../../apps/api/src/app.ts";
import { loadDemo } from "../../apps/api/src/commands/load-demo.ts";
import { toldLater } from "../../apps/api/src/demo/told-dates.ts";
import { cloneDatabase, query } from "./setup/database.ts";
import { signIn } from "./setup/world.ts";
import { testConfig } from "./setup/service.ts";

/** A Friday in the afternoon. */
const today = new Date("2026-11-27T21:00:00Z");

const folder = mkdtempSync(join(tmpdir(), "evenhand-demo-"));
const configOf = (url: string) => testConfig(url, { STORAGE_FOLDER: join(folder, new URL(url).pathname) });

let [first, second] = ["", ""];
beforeAll(async () => {
  [first, second] = [await cloneDatabase("demo_first"), await cloneDatabase("demo_second")];
  await loadDemo(configOf(first), today);
  await loadDemo(configOf(second), today);
}, 240_000);
afterAll(() => rmSync(folder, { recursive: true, force: true }));

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
  const { state, accounts } = await loadDemo(configOf(first), today);
  expect(state).toBe("there");
  expect(accounts.length).toBeGreaterThan(5);
  expect(await query(first, digest)).toEqual(before);
});

test("an older demo is known as one", async () => {
  await query(second, "UPDATE demo_load SET revision = revision - 1");
  expect((await loadDemo(configOf(second))).state).toBe("older");
});

test("its cars are approved, countered and declined, each by the hash of its summary; the main case is declined in the buyer's words", async () => {
  const { main } = await loadDemo(configOf(first), today);
  const rows = await query<{ comparison: string; decision: string; same: boolean; words: number }>(
    first,
    `SELECT s.comparison_id AS comparison, d.decision, d.hash = s.hash AS same, coalesce(length(d.conditions), 0) AS words
     FROM decision d JOIN summary s ON s.id = d.summary_id ORDER BY d.decision`,
  );
  expect(rows.map(({ decision, same }) => [decision, same])).toEqual([
    ["approve", true],
    ["counter", true],
    ["decline", true],
  ]);
  const declined = rows.find(({ decision }) => decision === "decline");
  expect(declined?.comparison).toBe(main.comparison);
  expect(declined?.words).toBeGreaterThan(100);
});

test("its visits stand in every state somebody can wait in, and everything waits that a person can answer", async () => {
  const [waiting] = await query(
    first,
    `SELECT (SELECT array_agg(state ORDER BY state) FROM appointment) AS visits,
       (SELECT count(*)::int FROM question WHERE state = 'asked') AS questions,
       (SELECT count(*)::int FROM complaint WHERE answered_at IS NULL) AS complaints,
       (SELECT array_agg(name) FROM inspector_calendar WHERE admission = 'applied') AS applied,
       (SELECT array_agg(DISTINCT state ORDER BY state) FROM release) AS settling,
       (SELECT array_agg(state) FROM hand_over) AS carried,
       (SELECT count(*)::int FROM site) AS sites`,
  );
  expect(waiting).toEqual({
    visits: ["accepted", "cancelled", "confirmed", "requested", "under-way"],
    questions: 2,
    complaints: 1,
    applied: ["Pereder Stroud"],
    settling: ["accepted", "finding-stands", "left-open", "released", "remedy-offered"],
    carried: ["claim-open"],
    sites: 2,
  });
});

test.each(["2026-05-19T00:30:00Z", "2026-11-27T16:00:00Z", "2027-02-28T23:00:00Z"])(
  "loaded at %s, nothing in it lies more than a week before, and nothing sealed after",
  async (at) => {
    const moment = new Date(at);
    const later = toldLater("2026-05-19", moment);
    expect(later % (7 * 86_400_000)).toBe(0);
    const end = Date.parse("2026-05-19T00:00:00Z") + later;
    expect(end).toBeLessThanOrEqual(moment.getTime());
    expect(moment.getTime() - end).toBeLessThan(7 * 86_400_000);
  },
);

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

const wholeWorld = `SELECT a.id AS account, m.organization_id AS organization FROM account a JOIN membership m ON m.account_id = a.id
  JOIN organization o ON o.id = m.organization_id WHERE o.kind IN ('buyer', 'dealer', 'inspector') ORDER BY a.name`;

test("photographs stand ready on both sides, and lead somebody to a question of each kind", async () => {
  const states = await query<{ state: string }>(first, "SELECT DISTINCT state FROM evidence_file");
  expect(states).toEqual([{ state: "ready" }]);
  const cars = await query<{ id: string }>(first, "SELECT id FROM vehicle ORDER BY id");
  const app = await createApp(configOf(first));
  await app.listen(0, "127.0.0.1");
  const url = (await app.getUrl()).replace("[::1]", "127.0.0.1");
  const kinds = new Set<string>();
  for (const who of await query<{ account: string; organization: string }>(first, wholeWorld)) {
    const person = await signIn({ url, databaseUrl: first }, who);
    for (const { id } of cars) {
      const { status, body } = await person.ask("evidence.ofVehicle", { path: { id } });
      if (status !== 200) continue;
      const { items } = contracts["evidence.ofVehicle"].answer.parse(body);
      for (const { questions } of items) for (const { kind } of questions) kinds.add(kind);
    }
  }
  await app.close();
  expect([...kinds].toSorted((a, b) => a.localeCompare(b))).toEqual(
    PictureQuestionKind.options.toSorted((a, b) => a.localeCompare(b)),
  );
});
