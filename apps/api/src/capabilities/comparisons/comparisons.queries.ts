import { noteShown } from "../../platform/access/exposure.ts";
import { maySeeComparison } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

/** JSON of a comparison joined to its two versions. */
export const comparisonJson = (comparison: string, a: string, b: string): string => `json_build_object(
  'id', ${comparison}.id, 'vehicle', ${comparison}.vehicle_id, 'a', ${a}.id, 'b', ${b}.id,
  'seals', json_build_object('a', ${a}.seal, 'b', ${b}.seal), 'engine', ${comparison}.engine,
  'hash', ${comparison}.hash, 'createdAt', instant(${comparison}.created_at))`;

const joined = `comparison c JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
  JOIN vehicle v ON v.id = c.vehicle_id`;

const meta = "c.id, c.vehicle_id, c.engine, c.hash, c.created_at";

/** `$1` organizations, `$2` cursor, `$3` limit, `$4` vehicle or null. */
export const comparisonList = pageStatement(
  `SELECT ${meta}, a.id AS a_id, a.seal AS a_seal, b.id AS b_id, b.seal AS b_seal FROM ${joined}
   WHERE ${maySeeComparison("a", "b", "v")} AND c.id < $2 AND ($4::uuid IS NULL OR c.vehicle_id = $4)
   ORDER BY c.id DESC LIMIT $3 + 1`,
  `json_build_object('id', page.id, 'vehicle', page.vehicle_id, 'a', page.a_id, 'b', page.b_id,
    'seals', json_build_object('a', page.a_seal, 'b', page.b_seal), 'engine', page.engine, 'hash', page.hash,
    'createdAt', instant(page.created_at))`,
  "$3",
);

/** `$1` organizations, `$2` the comparison. */
export const comparisonDetail = `SELECT ${comparisonJson("c", "a", "b")}::text AS body FROM ${joined}
  WHERE c.id = $2 AND ${maySeeComparison("a", "b", "v")}`;

/**
 * The hashes of the stored bytes, for whoever may see them, noted as shown in the same breath: `$1` organizations, `$2` the
 * comparison, `$3` the account, `$4` now.
 */
export const comparisonHashes = `
  WITH seen AS MATERIALIZED (
    SELECT c.hash, c.answer_hash, c.vehicle_id, c.a_id, c.b_id FROM ${joined}
    WHERE c.id = $2 AND ${maySeeComparison("a", "b", "v")}),
  noted AS (${noteShown(
    "comparison",
    `SELECT seen.vehicle_id, rv.id AS version_id, '' AS item, '' AS position
     FROM seen JOIN report_version rv ON rv.id IN (seen.a_id, seen.b_id) AND rv.kind <> 'inspection'`,
    { account: "$3", now: "$4" },
  )})
  SELECT hash, answer_hash AS "answerHash" FROM seen`;

/** `$1` the comparison. */
export const comparisonDocument = "SELECT document FROM comparison WHERE id = $1";
