import { maySeeVehicle } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

const sealed = `json_build_object('id', rv.id, 'version', rv.number, 'seal', rv.seal, 'sealedAt', instant(rv.sealed_at))`;

/** `$1` organizations, `$2` the car. The reason of a withdrawal is the dealer's own. */
export const listing = `SELECT v.revision, v.organization_id = ANY($1::uuid[]) AS own, json_build_object(
    'vehicle', v.id, 'revision', v.revision, 'listed', v.listed,
    'statement', (SELECT ${sealed} FROM report_version rv WHERE rv.vehicle_id = v.id AND rv.kind = 'statement'
      ORDER BY rv.sealed_at DESC, rv.number DESC LIMIT 1),
    'history', coalesce((SELECT json_agg(json_build_object('at', instant(l.at), 'listed', l.listed, 'cause', l.cause,
        'reason', CASE WHEN v.organization_id = ANY($1::uuid[]) THEN l.reason END) ORDER BY l.at, l.id)
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

/** What is at a secret, while the link holds and the car is listed: the newest sealed statement. `$1` hash, `$2` now. */
export const sharedStatement = `WITH link AS (
    UPDATE share_link s SET reads = reads + 1, last_read_at = $2 FROM vehicle v
    WHERE s.token_hash = $1 AND s.revoked_at IS NULL AND s.expires_at > $2 AND v.id = s.vehicle_id AND v.listed
    RETURNING s.vehicle_id)
  SELECT rv.document, rv.vehicle_id AS vehicle, json_build_object('vehicle', v.document,
    'dealer', (SELECT json_build_object('name', o.name) FROM organization o WHERE o.id = v.organization_id),
    'statement', ${sealed}) AS body
  FROM link JOIN vehicle v ON v.id = link.vehicle_id JOIN LATERAL (
    SELECT * FROM report_version newest WHERE newest.vehicle_id = v.id AND newest.kind = 'statement'
    ORDER BY newest.sealed_at DESC, newest.number DESC LIMIT 1) rv ON true`;
