import { forInspector, isParty, maySeeRelease } from "./releases.queries.ts";

const refused = `CASE WHEN f.state = 'refused' THEN f.refused END`;

/** `$1` organizations, `$2` the line. What waits there to be named, the first first. */
export const waitingPictures = `SELECT p.id, f.sha256, f.bytes, f.state, ${refused} AS refused,
    instant(p.created_at) AS "receivedAt"
  FROM release_picture p JOIN evidence_file f ON f.id = p.file_id JOIN release r ON r.id = p.release_id
  WHERE p.release_id = $2 AND p.organization_id = ANY($1::uuid[]) AND p.sent_at IS NULL AND ${maySeeRelease("r")}
  ORDER BY p.id`;

/** A move on a line of the same case that names the picture, and that the person may read. */
const namedIn = `SELECT 1 FROM settlement_move m JOIN release n ON n.id = m.release_id
  WHERE n.vehicle_id = r.vehicle_id AND n.buyer_id = r.buyer_id
    AND m.evidence @> jsonb_build_array(jsonb_build_object('kind', 'photograph', 'id', p.id))
    AND ${maySeeRelease("n")} AND (${isParty("n")} OR m.move IN ${forInspector})`;

/** `$1` organizations, `$2` the picture: one's own, or one that a move names. */
export const releasePicture = `SELECT f.id AS file, f.organization_id AS organization, f.sha256, f.kind,
    p.organization_id = ANY($1::uuid[]) AS own
  FROM release_picture p JOIN evidence_file f ON f.id = p.file_id JOIN release r ON r.id = p.release_id
  WHERE p.id = $2 AND ((p.organization_id = ANY($1::uuid[]) AND ${maySeeRelease("r")}) OR EXISTS (${namedIn}))`;

/** `$1` organizations, `$2` pictures, `$3` car, `$4` buyer: those of them that are the person's and of a line of this case. */
export const ownPictures = `SELECT p.id, f.sha256, f.state
  FROM release_picture p JOIN evidence_file f ON f.id = p.file_id JOIN release r ON r.id = p.release_id
  WHERE p.id = ANY($2::uuid[]) AND p.organization_id = ANY($1::uuid[]) AND r.vehicle_id = $3::uuid AND r.buyer_id = $4::uuid`;
