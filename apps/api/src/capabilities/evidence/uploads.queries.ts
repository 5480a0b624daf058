import { mustBeBlind } from "../../platform/access/row-access.ts";

/** One's own report; no statement to whoever must be blind. */
export const mayWorkOn = `r.organization_id = ANY($1::uuid[])
  AND (r.kind = 'inspection' OR NOT ${mustBeBlind("r.vehicle_id")})`;

/** Held until the transaction ends, so that nobody seals while a file is announced. `$1` organizations, `$2` the report. */
export const reportToAddTo = `
  SELECT r.id, r.organization_id AS "organizationId", r.kind::text AS kind, r.drafting
  FROM report r WHERE r.id = $2 AND ${mayWorkOn} FOR UPDATE OF r`;

/** What counts at a place of a report: neither taken away nor refused by itself. */
const there = "e.report_id = $1::uuid AND e.removed_at IS NULL AND e.refused IS NULL";

/** `$1` the report, `$2` item, `$3` position, `$4` hash. */
export const sameFileThere = `
  SELECT e.id, e.bytes FROM evidence e
  WHERE ${there} AND e.item = $2 AND e.position = $3 AND e.sha256 = $4`;

/** `$1` the report, `$2` item, `$3` position. */
export const filesThere = `
  SELECT count(*)::int AS report, (count(*) FILTER (WHERE e.item = $2 AND e.position = $3))::int AS place
  FROM evidence e WHERE ${there}`;

/** `$1` the organization, `$2` the hash. */
export const fileByHash = `
  SELECT f.id, f.bytes FROM evidence_file f WHERE f.organization_id = $1::uuid AND f.sha256 = $2`;

/** `$1` organizations, `$2` the upload. */
export const ownUpload = `
  SELECT e.id, e.bytes, e.received, coalesce(f.state, e.state) AS state, coalesce(f.refused, e.refused) AS refused
  FROM evidence e JOIN report r ON r.id = e.report_id LEFT JOIN evidence_file f ON f.id = e.file_id
  WHERE e.id = $2 AND e.removed_at IS NULL AND ${mayWorkOn}`;

export const uploadState = `SELECT bytes, received FROM evidence WHERE id = $1 AND removed_at IS NULL`;

/** Holds only while the part is the next one. `$1` the upload, `$2` where the part begins, `$3` where it ends, `$4` where it lies. */
export const appendPart = `
  UPDATE evidence SET received = $3::int, parts = parts || to_jsonb($4::text),
    state = CASE WHEN $3::int = bytes THEN 'pending' ELSE state END
  WHERE id = $1::uuid AND received = $2::int AND state = 'arriving' AND removed_at IS NULL AND $3::int <= bytes
  RETURNING state = 'pending' AS "isWhole"`;
