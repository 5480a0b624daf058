import { maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";

const role = (organization: string) =>
  `CASE ${organization}.kind WHEN 'inspector' THEN 'inspector' ELSE 'dealer' END`;

const findings = (select: string) => `coalesce((
  SELECT jsonb_agg(${select} ORDER BY f.item COLLATE "C", f.position COLLATE "C")
  FROM report_finding f WHERE f.report_id = r.id AND f.body IS NOT NULL), '[]')`;

/** `$1` organizations, `$2` the report. Who must be blind gets no statement this way either. */
export const reportDraft = `
  SELECT r.revision, json_build_object(
    'id', r.id, 'revision', r.revision, 'vehicle', r.vehicle_id, 'order', r.order_id, 'drafting', r.drafting,
    'visit', (SELECT c.appointment_id FROM appointment_car c WHERE c.order_id = r.order_id
      ORDER BY c.appointment_id DESC LIMIT 1),
    'report', r.header || jsonb_build_object(
      'format', 'evenhand-report', 'version', 1, 'kind', r.kind, 'vehicle', v.document,
      'author', jsonb_build_object('organization', o.name, 'role', ${role("o")}),
      'findings', ${findings("f.body")}),
    'handbook', coalesce((SELECT own.document FROM firm_handbook own
      WHERE own.organization_id = r.organization_id), '{"limits": {}, "makers": []}'),
    'findings', ${findings("jsonb_build_object('item', f.item, 'position', f.position, 'revision', f.revision)")},
    'versions', coalesce((
      SELECT json_agg(json_build_object('id', rv.id, 'version', rv.number, 'seal', rv.seal,
        'sealedAt', instant(rv.sealed_at)) ORDER BY rv.number DESC)
      FROM report_version rv WHERE rv.report_id = r.id), '[]')
  )::text AS body
  FROM report r JOIN vehicle v ON v.id = r.vehicle_id JOIN organization o ON o.id = r.organization_id
  WHERE r.id = $2 AND r.organization_id = ANY($1::uuid[])
    AND (r.kind = 'inspection' OR NOT ${mustBeBlind("r.vehicle_id")})`;

const version = `report_version rv JOIN vehicle v ON v.id = rv.vehicle_id`;
const withheld = `(rv.kind <> 'inspection' AND ${mustBeBlind("rv.vehicle_id")})`;

/** `$1` organizations, `$2` the version. */
export const versionMeta = `
  SELECT json_build_object(
    'id', rv.id, 'report', rv.report_id, 'vehicle', rv.vehicle_id, 'order', rv.order_id, 'kind', rv.kind,
    'version', rv.number, 'seal', rv.seal, 'sealedAt', instant(rv.sealed_at),
    'organization', (SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = rv.organization_id),
    'withheld', ${withheld})::text AS body
  FROM ${version} WHERE rv.id = $2 AND ${maySeeVersion("rv", "v")}`;

/** The seal of the sealed bytes, and whether this person gets only the places. */
export const versionSeal = `
  SELECT rv.seal, rv.kind::text AS kind, rv.vehicle_id::text AS vehicle, ${withheld} AS withheld
  FROM ${version} WHERE rv.id = $2 AND ${maySeeVersion("rv", "v")}`;

/** `$1` the version. */
export const versionDocument = "SELECT document FROM report_version WHERE id = $1";

/** Places the person's firm has committed in its open inspections of the car: `$1` organizations, `$2` the car. */
export const committedPlaces = `
  SELECT f.item, f.position FROM report_finding f JOIN report r ON r.id = f.report_id
  JOIN inspection_order o ON o.id = r.order_id
  WHERE o.vehicle_id = $2 AND o.inspector_id = ANY($1::uuid[]) AND o.state = 'accepted' AND f.body IS NOT NULL`;
