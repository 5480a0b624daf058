import { noteShown } from "../../platform/access/exposure.ts";
import { maySeeVehicle, maySeeVersion, mustBeBlind } from "../../platform/access/row-access.ts";
import { isReleased, notWithheld, pictureFacts } from "./picture-facts.queries.ts";
import { mayWorkOn } from "./uploads.queries.ts";

const reader = { account: "$3", now: "$4" };

const seenFields = `'id', e.id, 'item', e.item, 'position', e.position, 'caption', e.caption, 'kind', f.kind, 'sha256', e.sha256,
    'bytes', e.bytes, 'width', f.width, 'height', f.height, 'placeholder', f.placeholder, 'copies', coalesce(f.copies, '[]'), 'marks', e.marks, 'facts', ${pictureFacts}`;

/** Everything of one's own report, from its first byte on. `$1` organizations, `$2` the report, `$3` the account, `$4` now. */
export const evidenceOfReport = `
  WITH mine AS (SELECT r.id, r.kind, r.vehicle_id FROM report r WHERE r.id = $2 AND ${mayWorkOn}),
  listed AS (
    SELECT e.*, mine.kind AS report_kind, mine.vehicle_id FROM evidence e JOIN mine ON mine.id = e.report_id
    WHERE e.removed_at IS NULL OR e.sealed_in IS NULL),
  noted AS (${noteShown(
    "draft",
    `SELECT listed.vehicle_id, NULL::uuid AS version_id, listed.item, listed.position FROM listed
     WHERE listed.report_kind <> 'inspection' GROUP BY 1, 2, 3, 4`,
    reader,
  )})
  SELECT json_build_object('items', coalesce((
    SELECT json_agg(json_build_object(${seenFields}, 'name', e.name, 'received', e.received,
      'state', coalesce(f.state, e.state), 'refused', coalesce(f.refused, e.refused), 'capture', f.capture, 'quality', f.quality,
      'sealedIn', e.sealed_in, 'removedAt', instant(e.removed_at)) ORDER BY e.item, e.position, e.id)
    FROM listed e LEFT JOIN evidence_file f ON f.id = e.file_id), '[]')) AS body FROM mine`;

/** The newest sealed version with this file in it that the person may see. */
const seenVersion = `LEFT JOIN LATERAL (
    SELECT rv.id FROM report_version rv WHERE rv.report_id = r.id AND rv.number >= e.sealed_in AND ${maySeeVersion("rv", "v")}
    ORDER BY rv.number DESC LIMIT 1) version ON true`;

const isOwn = "e.organization_id = ANY($1::uuid[])";

/**
 * A file the person may see a copy of, which is noted as shown where it is of a statement: `$1` organizations, `$2` the file's id at
 * its place, `$3` the account, `$4` now.
 */
export const evidenceToShow = `
  WITH seen AS MATERIALIZED (
    SELECT e.file_id, e.item, e.position, r.kind, r.vehicle_id, version.id AS version_id
    FROM evidence e JOIN report r ON r.id = e.report_id JOIN vehicle v ON v.id = r.vehicle_id
      JOIN evidence_file f ON f.id = e.file_id ${seenVersion}
    WHERE e.id = $2 AND e.removed_at IS NULL AND f.state = 'ready' AND ${notWithheld("r")}
      AND (${isOwn} OR version.id IS NOT NULL OR (e.sealed_in IS NOT NULL AND ${isReleased("e", "r")}))),
  noted AS (${noteShown(
    "statement",
    "SELECT seen.vehicle_id, seen.version_id, seen.item, seen.position FROM seen WHERE seen.kind <> 'inspection'",
    reader,
  )})
  SELECT file_id::text AS id FROM seen`;

/** Notes as shown what is `listed` of a statement, each place once. */
const notedListed = `noted AS (${noteShown(
  "statement",
  `SELECT listed.vehicle_id, listed.version_id, listed.item, listed.position FROM listed
   WHERE listed.report_kind <> 'inspection' GROUP BY 1, 2, 3, 4`,
  reader,
)})`;

/** `$1` organizations, `$2` the version, `$3` the account, `$4` now. Whoever must be blind finds no statement here. */
export const evidenceOfVersion = `
  WITH seen AS MATERIALIZED (
    SELECT rv.id, rv.report_id, rv.number, rv.kind, rv.vehicle_id FROM report_version rv JOIN vehicle v ON v.id = rv.vehicle_id
    WHERE rv.id = $2 AND ${maySeeVersion("rv", "v")} AND (rv.kind = 'inspection' OR NOT ${mustBeBlind("rv.vehicle_id")})),
  listed AS (
    SELECT e.*, seen.id AS version_id, seen.kind AS report_kind, seen.vehicle_id
    FROM evidence e JOIN seen ON seen.report_id = e.report_id AND e.sealed_in <= seen.number),
  ${notedListed}
  SELECT json_build_object('items', coalesce((
    SELECT json_agg(json_build_object(${seenFields}) ORDER BY e.item, e.position, e.id)
    FROM listed e JOIN evidence_file f ON f.id = e.file_id), '[]')) AS body FROM seen`;

/**
 * What is sealed about a car by both sides, as far as the person may see it: `$1` organizations, `$2` the car, `$3` the account, `$4`
 * now, `$5` the buyer whose inspections are meant, none for all of them. Whoever must be blind finds no statement here.
 */
export const evidenceOfVehicle = `
  WITH car AS MATERIALIZED (SELECT v.* FROM vehicle v WHERE v.id = $2 AND ${maySeeVehicle("v")}),
  listed AS MATERIALIZED (
    SELECT e.*, r.kind AS report_kind, v.id AS vehicle_id, version.id AS version_id
    FROM car v JOIN report r ON r.vehicle_id = v.id AND r.kind IN ('statement', 'inspection')
      JOIN evidence e ON e.report_id = r.id AND e.sealed_in IS NOT NULL
      LEFT JOIN inspection_order io ON io.id = r.order_id ${seenVersion}
    WHERE ${notWithheld("r")} AND (version.id IS NOT NULL OR ${isReleased("e", "r")})
      AND ($5::uuid IS NULL OR r.kind = 'statement' OR io.buyer_id = $5::uuid)),
  ${notedListed}
  SELECT json_build_object('items', coalesce((
    SELECT json_agg(json_build_object(${seenFields}, 'side', e.report_kind, 'version', e.version_id, 'report', e.report_id)
      ORDER BY e.item, e.position, e.report_kind DESC, e.id)
    FROM listed e JOIN evidence_file f ON f.id = e.file_id), '[]')) AS body FROM car`;

/** One's own, kept original. `$1` organizations, `$2` the file's id at its place. */
export const ownOriginal = `
  SELECT e.organization_id AS organization, e.sha256, f.kind
  FROM evidence e JOIN report r ON r.id = e.report_id JOIN evidence_file f ON f.id = e.file_id
  WHERE e.id = $2 AND e.removed_at IS NULL AND f.state IN ('checked', 'ready') AND ${mayWorkOn}`;

/** One's own, in a draft or sealed, held until the transaction ends. */
export const ownToMove = `
  SELECT r.drafting, e.sealed_in AS "sealedIn"
  FROM evidence e JOIN report r ON r.id = e.report_id WHERE e.id = $2 AND ${mayWorkOn} FOR UPDATE OF e, r`;

/** What stands in the way of a seal: `$1` the report. */
export const unfinishedOf = `
  SELECT e.name FROM evidence e LEFT JOIN evidence_file f ON f.id = e.file_id
  WHERE e.report_id = $1::uuid AND e.removed_at IS NULL AND coalesce(f.state, e.state) IN ('arriving', 'pending', 'checked')
  ORDER BY e.id LIMIT 20`;

/** What is sealed: `$1` the report. */
export const readyOf = `
  SELECT e.item, e.position, f.kind, f.sha256, f.copies, e.marks FROM evidence e JOIN evidence_file f ON f.id = e.file_id
  WHERE e.report_id = $1::uuid AND e.removed_at IS NULL AND f.state = 'ready' ORDER BY e.item COLLATE "C", e.position COLLATE "C", e.id`;

/** `$1` the report, `$2` the version's number. */
export const markSealed = `
  UPDATE evidence SET sealed_in = $2::int WHERE report_id = $1::uuid AND removed_at IS NULL AND sealed_in IS NULL
    AND EXISTS (SELECT 1 FROM evidence_file f WHERE f.id = evidence.file_id AND f.state = 'ready')`;

/** The photograph that stands for a car: of its statement the first of the whole car, else the first. `$1` the report, which is held with its car. */
export const chooseCover = `
  UPDATE vehicle v SET cover_id = (
    SELECT e.id FROM evidence e JOIN evidence_file f ON f.id = e.file_id
    WHERE e.report_id = r.id AND e.sealed_in IS NOT NULL AND e.removed_at IS NULL AND f.copies <> '[]'
    ORDER BY e.item <> '', e.sealed_in, e.id LIMIT 1)
  FROM report r WHERE r.id = $1::uuid AND r.kind = 'statement' AND v.id = r.vehicle_id`;
