import { noteShown } from "../../platform/access/exposure.ts";
import { maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";

const role = (organization: string) =>
  `CASE ${organization}.kind WHEN 'inspector' THEN 'inspector' ELSE 'dealer' END`;

const findings = (select: string) => `coalesce((
  SELECT jsonb_agg(${select} ORDER BY f.item COLLATE "C", f.position COLLATE "C")
  FROM report_finding f WHERE f.report_id = r.id AND f.body IS NOT NULL), '[]')`;

/** Of the last appointment the inspection was ordered with. */
const appointmentOf = (select: string) =>
  `(SELECT ${select} FROM appointment_car c WHERE c.order_id = r.order_id ORDER BY c.appointment_id DESC LIMIT 1)`;

const reader = { account: "$3", now: "$4" };
const whole = "'' AS item, '' AS position";
const mayWorkOn = `r.id = $2 AND r.organization_id = ANY($1::uuid[])
    AND (r.kind = 'inspection' OR NOT ${mustBeBlind("r.vehicle_id")})`;

/** What a draft of a statement says is noted as shown: `$1` organizations, `$2` the report, `$3` the account, `$4` now. */
export const noteDraftShown = noteShown(
  "draft",
  `SELECT r.vehicle_id, NULL::uuid AS version_id, ${whole} FROM report r WHERE ${mayWorkOn} AND r.kind <> 'inspection'`,
  reader,
);

/** `$1` organizations, `$2` the report, `$3` the account, `$4` now. Who must be blind gets no statement this way either. */
export const reportDraft = `
  WITH noted AS (${noteDraftShown})
  SELECT r.revision, json_build_object(
    'id', r.id, 'revision', r.revision, 'vehicle', r.vehicle_id, 'order', r.order_id, 'drafting', r.drafting,
    'secondLook', r.second_look,
    'visit', ${appointmentOf("c.appointment_id")}, 'brief', ${appointmentOf("c.brief")},
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
  WHERE ${mayWorkOn}`;

/** The same condition, and what whoever works on a report needs of it. */
export const reportToRead = `
  SELECT r.id, r.vehicle_id AS "vehicleId", r.organization_id AS "organizationId", o.name AS "organizationName",
    r.order_id AS "orderId", r.kind::text AS kind, r.revision, r.drafting,
    r.second_look AS "secondLook", r.header, v.document AS vehicle
  FROM report r JOIN vehicle v ON v.id = r.vehicle_id JOIN organization o ON o.id = r.organization_id
  WHERE ${mayWorkOn}`;

/** The same, held until the transaction ends. */
export const reportToLock = `${reportToRead} FOR UPDATE OF r`;

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

/**
 * The seal of the sealed bytes, and whether this person gets only some of the places. Where they get all of a statement, that is
 * noted in the same breath: `$1` organizations, `$2` the version, `$3` the account, `$4` now.
 */
export const versionSeal = `
  WITH seen AS MATERIALIZED (
    SELECT rv.id, rv.seal, rv.kind, rv.vehicle_id, ${withheld} AS withheld
    FROM ${version} WHERE rv.id = $2 AND ${maySeeVersion("rv", "v")}),
  noted AS (${noteShown(
    "statement",
    `SELECT seen.vehicle_id, seen.id AS version_id, ${whole} FROM seen WHERE NOT seen.withheld AND seen.kind <> 'inspection'`,
    reader,
  )})
  SELECT seal, vehicle_id::text AS vehicle, withheld FROM seen`;

/**
 * Notes places of a version that are about to be shown: `$1` organizations, `$2` the version, `$3` the account, `$4` now, then
 * the car, the items and the positions.
 */
export const notePlacesShown = noteShown(
  "statement",
  `SELECT $5::uuid AS vehicle_id, $2::uuid AS version_id, open.item, open.position
   FROM unnest($6::text[], $7::text[]) AS open (item, position)`,
  reader,
);

/** `$1` the version. */
export const versionDocument = "SELECT document FROM report_version WHERE id = $1";
