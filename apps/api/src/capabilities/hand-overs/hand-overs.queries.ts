import { mustBeBlind } from "../../platform/access/row-access.ts";
import { bought } from "../summaries/index.ts";

const notBlind = `NOT ${mustBeBlind("h.vehicle_id")}`;

/** Its buyer, and the dealer who sells: `$1` all organizations of the person, `$2` as buyers, `$3` as dealers. */
const mine = `(h.buyer_id = ANY($2::uuid[]) OR h.dealer_id = ANY($3::uuid[])) AND ${notBlind}`;

const signedAt = (stage: string) =>
  `(SELECT instant(r.signed_at) FROM hand_over_report r WHERE r.hand_over_id = h.id AND r.stage = '${stage}')`;

const reports = `coalesce((SELECT json_agg(json_build_object('stage', r.stage, 'seal', r.seal, 'paper', r.paper,
    'document', convert_from(r.document, 'UTF8'), 'signatures', r.signatures, 'signedAt', instant(r.signed_at)))
  FROM hand_over_report r WHERE r.hand_over_id = h.id), '[]')`;

const moves = `coalesce((SELECT json_agg(json_build_object('move', m.move, 'at', instant(m.at), 'note', m.note) ORDER BY m.id)
  FROM hand_over_move m WHERE m.hand_over_id = h.id), '[]')`;

const pictures = `coalesce((SELECT json_agg(json_build_object('id', p.id, 'stage', p.stage, 'item', p.item, 'position', p.position,
    'sha256', f.sha256, 'bytes', f.bytes, 'state', f.state, 'refused', f.refused, 'receivedAt', instant(p.created_at), 'file', f.id)
    ORDER BY p.id)
  FROM hand_over_picture p JOIN evidence_file f ON f.id = p.file_id WHERE p.hand_over_id = h.id), '[]')`;

const whole = `h.id, h.revision, h.case_id AS "caseId", h.vehicle_id AS "vehicleId", h.buyer_id AS "buyerId",
  h.dealer_id AS "dealerId", h.carrier, h.state, h.terms, h.comparison, instant(h.created_at) AS "arrangedAt",
  instant(h.link_expires_at) AS "linkExpires", v.document AS vehicle,
  (SELECT o.name FROM organization o WHERE o.id = h.dealer_id) AS dealer, ${reports} AS reports, ${moves} AS moves,
  ${pictures} AS pictures
  FROM hand_over h JOIN vehicle v ON v.id = h.vehicle_id`;

/** `$4` the hand-over. */
export const handOverDetail = `SELECT h.buyer_id = ANY($2::uuid[]) AS buys, ${whole} WHERE h.id = $4 AND ${mine}`;

/** `$4` the photograph: to its buyer, and of collection to the dealer too. */
export const handOverPicture = `SELECT f.id AS file, f.organization_id AS organization, f.sha256, f.kind
  FROM hand_over_picture p JOIN hand_over h ON h.id = p.hand_over_id JOIN evidence_file f ON f.id = p.file_id
  WHERE p.id = $4 AND ${mine} AND (h.buyer_id = ANY($2::uuid[]) OR p.stage = 'collection')`;

/** `$1` the hash of the link's secret, `$2` now: while it holds and there is something left to sign. */
export const carriedHandOver = `SELECT false AS buys, ${whole}
  WHERE h.token_hash = $1 AND h.link_expires_at > $2 AND h.state IN ('arranged', 'collected')`;

/** `$1` the hand-over, whatever its state: asked by whoever holds it locked. */
export const lockedHandOver = `SELECT false AS buys, ${whole} WHERE h.id = $1::uuid`;

const live = `EXISTS (SELECT 1 FROM hand_over l WHERE l.case_id = c.id AND l.state IN ('arranged', 'collected'))`;

/** What became of it after delivery is the buyer's business, also that it never arrived. */
const shownState = `CASE WHEN h.buyer_id = ANY($2::uuid[]) OR h.state NOT IN ('signed-off', 'claim-open', 'claim-closed') THEN h.state
  WHEN ${signedAt("delivery")} IS NULL THEN 'collected' ELSE 'delivered' END`;

/** `$4` the case. A dealer hears of a case once it is bought; before that it is nobody's but the buyer's. */
export const handOversOfCase = `SELECT json_build_object(
    'mayArrange', c.buyer_id = ANY($2::uuid[]) AND ${bought} IS NOT NULL AND NOT ${live},
    'items', coalesce((SELECT json_agg(json_build_object('id', h.id, 'carrier', h.carrier, 'state', ${shownState},
        'arrangedAt', instant(h.created_at), 'collectedAt', ${signedAt("collection")},
        'deliveredAt', ${signedAt("delivery")}) ORDER BY h.id DESC)
      FROM hand_over h WHERE h.case_id = c.id AND ${mine}), '[]'))::text AS body
  FROM buyer_case c WHERE c.id = $4 AND (c.buyer_id = ANY($2::uuid[])
    OR (c.dealer_id = ANY($3::uuid[]) AND ${bought} IS NOT NULL)) AND NOT ${mustBeBlind("c.vehicle_id")}`;
