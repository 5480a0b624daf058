import { maySeeComparison, maySeeVehicle } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";
import { comparisonJson } from "../comparisons/index.ts";
import { maySeeOrder, orderJson } from "../orders/index.ts";

const money = (row: string) => `CASE WHEN ${row}.asking_minor IS NOT NULL
  THEN json_build_object('minor', ${row}.asking_minor, 'currency', ${row}.asking_currency) END`;

const dealer = (row: string) => `(SELECT json_build_object('id', o.id, 'name', o.name)
  FROM organization o WHERE o.id = ${row}.organization_id)`;

const sealed = (version: string) => `json_build_object('id', ${version}.id, 'version', ${version}.number,
  'seal', ${version}.seal, 'sealedAt', instant(${version}.sealed_at))`;

const newestStatement = (row: string) => `(SELECT ${sealed("rv")} FROM report_version rv
  WHERE rv.vehicle_id = ${row}.id AND rv.kind = 'statement' ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1)`;

const vehicleItem = `json_build_object(
  'id', page.id, 'make', page.make, 'model', page.model, 'modelYear', page.model_year,
  'identification', page.identification, 'dealer', ${dealer("page")}, 'listed', page.listed,
  'asking', ${money("page")}, 'words', page.words, 'statement', ${newestStatement("page")},
  'createdAt', instant(page.created_at))`;

const columns = `v.id, v.organization_id, v.make, v.model, v.model_year, v.identification, v.listed,
  v.asking_minor, v.asking_currency, v.words, v.created_at`;

const listOf = (visible: string, search: boolean) =>
  pageStatement(
    `SELECT ${columns} FROM vehicle v WHERE ${visible} AND v.id < $2
     ${search ? "AND v.search LIKE ALL ($4::text[])" : ""} ORDER BY v.id DESC LIMIT $3 + 1`,
    vehicleItem,
    "$3",
  );

/** `$1` organizations, `$2` cursor, `$3` limit, `$4` patterns of the words searched for. */
export const vehicleLists = {
  own: listOf("v.organization_id = ANY($1::uuid[])", false),
  ownSearched: listOf("v.organization_id = ANY($1::uuid[])", true),
  seen: listOf(maySeeVehicle("v"), false),
  seenSearched: listOf(maySeeVehicle("v"), true),
};

/** `$1` organizations, `$2` the car. */
export const vehicleDetail = `
  SELECT json_build_object(
    'id', v.id, 'revision', v.revision, 'vehicle', v.document, 'dealer', ${dealer("v")}, 'listed', v.listed,
    'asking', ${money("v")}, 'words', v.words,
    'statements', coalesce((SELECT json_agg(${sealed("rv")} ORDER BY rv.sealed_at DESC, rv.number DESC)
      FROM report_version rv WHERE rv.vehicle_id = v.id AND rv.kind = 'statement'), '[]'),
    'drafts', coalesce((SELECT json_agg(json_build_object('id', r.id, 'revision', r.revision, 'kind', r.kind) ORDER BY r.id)
      FROM report r WHERE r.vehicle_id = v.id AND r.drafting AND r.order_id IS NULL
        AND r.organization_id = ANY($1::uuid[])), '[]'),
    'orders', coalesce((SELECT json_agg(${orderJson("io")} ORDER BY io.id DESC)
      FROM inspection_order io WHERE io.vehicle_id = v.id AND ${maySeeOrder("io")}), '[]'),
    'comparisons', coalesce((SELECT json_agg(${comparisonJson("c", "a", "b")} ORDER BY c.id DESC)
      FROM comparison c JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
      WHERE c.vehicle_id = v.id AND ${maySeeComparison("a", "b", "v")}), '[]')
  )::text AS body, v.revision
  FROM vehicle v WHERE v.id = $2 AND ${maySeeVehicle("v")}`;

/** Each word becomes a pattern; the characters that mean something in patterns mean themselves. */
export const searchPatterns = (words: string): string[] =>
  words
    .toLowerCase()
    .split(/\s+/)
    .map((word) => `%${word.replaceAll(/[\\%_]/g, String.raw`\$&`)}%`);
