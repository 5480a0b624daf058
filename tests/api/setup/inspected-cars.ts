import { createHash } from "node:crypto";
import type { SectionCounts } from "@evenhand/record/statement-counts";
import { v7 } from "uuid";
import { query } from "./database.ts";
import type { Person } from "./person.ts";
import { car } from "./story.ts";
import type { World } from "./world.ts";

/** What became of a car's statements, by section. */
export type Counts = Readonly<Record<string, SectionCounts>>;

/** What a car's section came to: four statements tested, or two that could only not be contradicted. */
const stated = { places: 10, stated: 8, statedWorse: 0 };
export const confirmed: SectionCounts = {
  ...stated,
  confirmed: 4,
  notContradicted: 1,
  falls: [],
  statedWorse: 1,
};
export const notContradicted: SectionCounts = { ...stated, confirmed: 0, notContradicted: 2, falls: [] };
export const fell: SectionCounts = {
  ...stated,
  confirmed: 3,
  notContradicted: 0,
  falls: [{ line: "made up", by: "figures" }],
};
export const open: SectionCounts = { ...fell, falls: [{ line: "made up", by: null }] };

/** So many cars of the same counts. */
export const alike = (count: number, counts: Counts): Counts[] => Array.from({ length: count }, () => counts);

type Parties = { databaseUrl: string; dealer: Person } & Pick<World, "buyer" | "inspector">;

const seal = (id: string): string => createHash("sha256").update(id).digest("hex");
/** What the reports of a car and their comparison say, where that matters. */
export type Documents = {
  readonly statement: string;
  readonly inspection: string;
  readonly comparison: string;
};
const saysNothing: Documents = { statement: "{}", inspection: "{}", comparison: "{}" };
const row = (counts: Counts, documents: Documents = saysNothing) => {
  const [vehicle, statement, order, inspection, comparison] = [v7(), v7(), v7(), v7(), v7()];
  const seals = { statementSeal: seal(statement), inspectionSeal: seal(inspection), hash: seal(comparison) };
  return { vehicle, statement, order, inspection, comparison, counts, documents, ...seals };
};

/** All that an inspected car leaves, a table a statement. `$1` the cars, `$2` the parties. */
const inserts = [
  `INSERT INTO vehicle (id, organization_id, make, model, model_year, identification, document, listed, revision, search,
      created_at, updated_at)
    SELECT r.vehicle, p.dealer, p.car->>'make', p.car->>'model', (p.car->>'modelYear')::int, r.vehicle, p.car, true, 1, '',
      now(), now()`,
  `INSERT INTO report (id, vehicle_id, organization_id, kind, revision, drafting, header, created_by, created_at, updated_at)
    SELECT r.statement, r.vehicle, p.dealer, 'statement', 1, false, '{}', p.dealer_account, now(), now()`,
  `INSERT INTO report_version (id, report_id, vehicle_id, organization_id, kind, number, seal, document, sealed_by, sealed_at)
    SELECT r.statement, r.statement, r.vehicle, p.dealer, 'statement', 1, r."statementSeal",
      convert_to(r.documents->>'statement', 'UTF8'), p.dealer_account, now()`,
  `INSERT INTO inspection_order (id, vehicle_id, buyer_id, inspector_id, statement_id, state, revision, ordered_by, ordered_at)
    SELECT r."order", r.vehicle, p.buyer, p.inspector, r.statement, 'reported', 1, p.buyer_account, now()`,
  `INSERT INTO report (id, vehicle_id, organization_id, order_id, kind, revision, drafting, header, created_by, created_at,
      updated_at)
    SELECT r.inspection, r.vehicle, p.inspector, r."order", 'inspection', 1, false, '{}', p.inspector_account, now(), now()`,
  `INSERT INTO report_version (id, report_id, vehicle_id, organization_id, buyer_id, order_id, kind, number, seal, document,
      sealed_by, sealed_at)
    SELECT r.inspection, r.inspection, r.vehicle, p.inspector, p.buyer, r."order", 'inspection', 1, r."inspectionSeal",
      convert_to(r.documents->>'inspection', 'UTF8'),
      p.inspector_account, now()`,
  `INSERT INTO comparison (id, vehicle_id, a_id, b_id, engine, hash, document, created_at, statement_counts)
    SELECT r.comparison, r.vehicle, r.statement, r.inspection, 'made up', r.hash,
      convert_to(r.documents->>'comparison', 'UTF8'), now(), r.counts`,
];
const given = `FROM jsonb_to_recordset($1::jsonb) AS r(vehicle uuid, statement uuid, "order" uuid, inspection uuid,
    comparison uuid, counts jsonb, documents jsonb, "statementSeal" text, "inspectionSeal" text, hash text),
  jsonb_to_record($2::jsonb) AS p(dealer uuid, dealer_account uuid, buyer uuid, buyer_account uuid, inspector uuid,
    inspector_account uuid, car jsonb)`;

/** Made-up cars of a dealer, each stated, inspected and compared with these counts; answers their ids. */
export async function insertInspected(
  parties: Parties,
  cars: readonly Counts[],
  documents: readonly Documents[] = [],
): Promise<string[]> {
  const { databaseUrl, dealer, buyer, inspector } = parties;
  const rows = cars.map((counts, index) => row(counts, documents[index]));
  const named = {
    dealer: dealer.organization,
    dealer_account: dealer.account,
    buyer: buyer.organization,
    buyer_account: buyer.account,
    inspector: inspector.organization,
    inspector_account: inspector.account,
    car,
  };
  for (const insert of inserts) {
    await query(databaseUrl, `${insert} ${given}`, [JSON.stringify(rows), JSON.stringify(named)]);
  }
  return rows.map(({ vehicle }) => vehicle);
}
