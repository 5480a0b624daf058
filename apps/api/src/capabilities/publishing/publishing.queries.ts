import { noteShown } from "../../platform/access/exposure.ts";
import {
  isBeingInspected,
  maySeeVehicle,
  maySeeVersion,
  mustBeBlind,
} from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

const sealed = `json_build_object('id', rv.id, 'version', rv.number, 'seal', rv.seal, 'sealedAt', instant(rv.sealed_at))`;

const own = `(v.organization_id = ANY($1::uuid[]) AND NOT ${mustBeBlind("v.id")})`;

/** `$1` organizations, `$2` the car. The reason of a withdrawal is the dealer's own, unless they must be blind to the car. */
export const listing = `SELECT v.revision, ${own} AS own, json_build_object(
    'vehicle', v.id, 'revision', v.revision, 'listed', v.listed,
    'statement', (SELECT ${sealed} FROM report_version rv WHERE rv.vehicle_id = v.id AND rv.kind = 'statement'
      AND ${maySeeVersion("rv", "v")} ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1),
    'history', coalesce((SELECT json_agg(json_build_object('at', instant(l.at), 'listed', l.listed, 'cause', l.cause,
        'reason', CASE WHEN ${own} THEN l.reason END) ORDER BY l.at, l.id)
      FROM listing_change l WHERE l.vehicle_id = v.id), '[]')) AS body
  FROM vehicle v WHERE v.id = $2 AND ${maySeeVehicle("v")}`;

/** `$1` the car, `$2` cursor, `$3` limit. */
export const shareLinks = pageStatement(
  "SELECT s.* FROM share_link s WHERE s.vehicle_id = $1 AND s.id < $2 ORDER BY s.id DESC LIMIT $3 + 1",
  `json_build_object('id', page.id, 'name', page.name, 'createdAt', instant(page.created_at),
    'expires', instant(page.expires_at), 'revokedAt', instant(page.revoked_at), 'reads', page.reads,
    'lastReadAt', instant(page.last_read_at))`,
  "$3",
);

/** A car's link that holds: whether its reader must be blind, and whether nobody knows them while an inspection firm is at work. */
const link = `link AS MATERIALIZED (
    SELECT s.id, s.vehicle_id, ${mustBeBlind("v.id")} AS blind,
      ($3::uuid IS NULL AND ${isBeingInspected("v.id")}) AS unknown
    FROM share_link s JOIN vehicle v ON v.id = s.vehicle_id
    WHERE s.token_hash = $2 AND s.revoked_at IS NULL AND s.expires_at > $4 AND v.listed)`;
/** The newest sealed statement of it, for whoever may read that now. */
const shown = `shown AS MATERIALIZED (
    SELECT link.id, link.vehicle_id, rv.id AS version_id FROM link JOIN LATERAL (
      SELECT newest.id FROM report_version newest
      WHERE newest.vehicle_id = link.vehicle_id AND newest.kind = 'statement'
      ORDER BY newest.sealed_at DESC, newest.number DESC LIMIT 1) rv ON true
    WHERE NOT link.blind AND NOT link.unknown)`;

/** Photographs sealed in a version. */
const sealedPictures = (version: string) => `FROM evidence e JOIN evidence_file f ON f.id = e.file_id
    WHERE e.report_id = ${version}.report_id AND e.sealed_in <= ${version}.number AND f.copies <> '[]'`;

/**
 * What is at a secret, while the link holds and the car is listed: the newest sealed statement. Counted and noted as shown in the
 * same breath, and neither where it is not shown: to whoever must be blind, and to a reader nobody knows while an inspection firm
 * is at work on the car. `$1` organizations, `$2` hash, `$3` the account or null, `$4` now.
 */
export const sharedStatement = `
  WITH ${link},
  ${shown},
  counted AS (
    UPDATE share_link s SET reads = reads + 1, last_read_at = $4 FROM shown WHERE s.id = shown.id),
  noted AS (${noteShown(
    "share-link",
    `SELECT shown.vehicle_id, shown.version_id, '' AS item, '' AS position, shown.id AS share_link_id FROM shown`,
    { account: "$3", now: "$4" },
  )})
  SELECT link.blind, link.unknown, rv.document, json_build_object('vehicle', v.document,
    'dealer', (SELECT json_build_object('name', o.name) FROM organization o WHERE o.id = v.organization_id),
    'statement', ${sealed},
    'pictures', coalesce((SELECT json_agg(json_build_object('id', e.id, 'item', e.item, 'position', e.position, 'caption', e.caption,
        'width', f.width, 'height', f.height, 'placeholder', f.placeholder) ORDER BY e.item, e.position, e.id)
      ${sealedPictures("rv")}), '[]'))::text AS body
  FROM link JOIN vehicle v ON v.id = link.vehicle_id
  LEFT JOIN shown ON true LEFT JOIN report_version rv ON rv.id = shown.version_id
  WHERE link.blind OR link.unknown OR shown.id IS NOT NULL`;

/** One of its photographs, under the same conditions; the reading of the page is what counts and is noted. `$5` its id, else the same. */
export const sharedPicture = `
  WITH ${link},
  ${shown}
  SELECT f.id AS file FROM shown JOIN report_version rv ON rv.id = shown.version_id
    CROSS JOIN LATERAL (SELECT f.id ${sealedPictures("rv")} AND e.id = $5::uuid) f`;
