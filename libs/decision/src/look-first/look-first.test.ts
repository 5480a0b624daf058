import { readFileSync } from "node:fs";
import * as fc from "fast-check";
import { analyze } from "@evenhand/comparison/analyze";
import { compiledSheet } from "@evenhand/record/report-document";
import type { Entry } from "@evenhand/shared/comparison";
import { CostTable } from "@evenhand/shared/cost-table";
import { KNOWN } from "@evenhand/shared/http/money";
import { Report } from "@evenhand/shared/report";
import { SEVERITIES, severityRank } from "@evenhand/shared/severity";
import { expect, test } from "vitest";
import { type FirstLook, lookFirst, type LookFirstInput } from "./index.ts";

const demo = new URL("../../../../fixtures/demo/", import.meta.url);
const read = (name: string): unknown => JSON.parse(readFileSync(new URL(name, demo), "utf8"));
const table = CostTable.parse(read("cost-table.json"));
const { sheet } = compiledSheet;
const statement = Report.parse(read("reports/sovrano-statement.json"));
const inspection = Report.parse(read("reports/sovrano-inspection.json"));
const nobody: Report = { ...inspection, findings: [], instruments: [] };

const input = (found: Report, more: Partial<LookFirstInput> = {}): LookFirstInput => ({
  comparison: analyze(statement, found, compiledSheet),
  found,
  sheet,
  table,
  left: 0,
  again: new Set(),
  ...more,
});
const ids = (looks: readonly FirstLook[]): string[] => looks.map(({ item }) => item);
const classOf = ({ severity }: FirstLook): number => Math.min(severityRank(severity), 2);
const isRising = (values: readonly number[]): boolean =>
  values.every((value, at) => at === 0 || (values[at - 1] ?? 0) <= value);

test("before anybody looked: what can stop the money, the dealer's silence first; then what can hurt somebody", () => {
  const looks = lookFirst(input(nobody));
  const halts = looks.filter(({ severity }) => severity === "halt");
  expect(looks.slice(0, halts.length)).toEqual(halts);
  expect(ids(halts.filter(({ known }) => known === "silent"))).toContain("interior.flood-line");
  expect(ids(halts.filter(({ known }) => known === "claimed"))).toContain("identity.lien");
  expect(isRising(halts.map(({ known }) => KNOWN.indexOf(known)))).toBe(true);
  expect(isRising(looks.map(classOf))).toBe(true);
  expect(looks.some(({ byWorth }) => byWorth)).toBe(true);
});

test("after a visit only what is open still: nothing that was seen and judged", () => {
  const looks = lookFirst(input(inspection));
  expect(ids(looks)).not.toContain("identity.lien");
  expect(looks.length).toBeLessThan(lookFirst(input(nobody)).length / 2);
  expect(isRising(looks.map(classOf))).toBe(true);
});

test("what was agreed to be looked at again stands first, the gravest of it first, though it was seen", () => {
  const seen = new Set(["identity.title-holder", "electrics.power-top", "underbody.lift-points"]);
  const looks = lookFirst(input(inspection, { again: seen }));
  const first = looks.filter(({ again }) => again);
  expect(first).toHaveLength(seen.size);
  expect(looks.slice(0, first.length)).toEqual(first);
  expect(first[0]?.item).toBe("identity.title-holder");
});

test("without a table nothing is put in money, and the order is by how grave it can be", () => {
  const looks = lookFirst(input(nobody, { table: null }));
  expect(looks.every(({ byWorth }) => !byWorth)).toBe(true);
  expect(isRising(looks.map(({ severity }) => severityRank(severity)))).toBe(true);
});

const visited = sheet.items.filter(({ answer }) => answer === "faults" || answer === "reading").slice(0, 60);
const [pattern] = input(nobody).comparison.entries;
const entry: fc.Arbitrary<Entry> = fc
  .record({
    item: fc.constantFrom(...visited.map(({ id }) => id)),
    severity: fc.option(fc.constantFrom(...SEVERITIES)),
    outcome: fc.constantFrom("unseen" as const, "doubtful" as const, "incomparable" as const),
    stated: fc.constantFrom("good" as const, null),
    firmness: fc.constantFrom("asserted" as const, "hedged" as const),
  })
  .map(({ item, severity, outcome, stated, firmness }): Entry => {
    if (pattern === undefined) throw new Error("the demo's statement has no lines");
    return {
      ...pattern,
      item,
      severity,
      outcome,
      position: "",
      calls: { a: stated, b: null },
      standing: outcome === "unseen" ? "unseen" : "in-doubt",
      firmness: { a: stated === null ? null : firmness, b: null },
    };
  });

test("danger first, each item once, and the same however the lines stand; a thousand draws", () =>
  fc.assert(
    fc.property(
      fc.array(entry, { maxLength: 12 }),
      fc.integer({ min: -1e6, max: 1e6 }),
      fc.boolean(),
      (entries, left, priced) => {
        const given = { found: nobody, sheet, table: priced ? table : null, left, again: new Set<string>() };
        const looks = lookFirst({ ...given, comparison: { entries } });
        expect(isRising(looks.map(classOf))).toBe(true);
        expect(new Set(ids(looks)).size).toBe(looks.length);
        expect(ids(lookFirst({ ...given, comparison: { entries: entries.toReversed() } }))).toEqual(
          ids(looks),
        );
      },
    ),
    { numRuns: 1_000 },
  ));
