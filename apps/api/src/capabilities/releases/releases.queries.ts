import { noteShown } from "../../platform/access/exposure.ts";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

/** The buyer's and the dealer's; nobody's who must be blind to the car, for it shows what was stated. */
const maySeeRelease = (release: string) =>
  `((${release}.buyer_id = ANY($1::uuid[]) OR ${release}.dealer_id = ANY($1::uuid[]))
    AND NOT ${mustBeBlind(`${release}.vehicle_id`)})`;

const noteReleases = (releases: string, account: string, now: string) =>
  noteShown(
    "release",
    `SELECT r.vehicle_id, NULL::uuid AS version_id, r.snapshot->'entry'->>'item' AS item,
       coalesce(r.snapshot->'entry'->>'position', '') AS position FROM ${releases} r`,
    { account, now },
  );

const releaseJson = (release: string) => `json_build_object(
  'id', ${release}.id, 'revision', ${release}.revision, 'vehicle', ${release}.vehicle_id,
  'comparison', ${release}.comparison_id, 'entryIndex', ${release}.entry_index,
  'entry', ${release}.snapshot->'entry', 'a', ${release}.snapshot->'a', 'b', ${release}.snapshot->'b',
  'matter', ${release}.matter,
  'state', ${release}.state, 'reason', ${release}.reason, 'releasedAt', instant(${release}.released_at),
  'answeredAt', instant(${release}.answered_at))`;

/** `$1` organizations, `$2` cursor, `$3` limit, then vehicle, comparison and state, each or null, `$7` the account, `$8` now. */
export const releaseList = pageStatement(
  `SELECT r.* FROM release r WHERE ${maySeeRelease("r")} AND r.id < $2
   AND ($4::uuid IS NULL OR r.vehicle_id = $4) AND ($5::uuid IS NULL OR r.comparison_id = $5)
   AND ($6::release_state IS NULL OR r.state = $6) ORDER BY r.id DESC LIMIT $3 + 1`,
  releaseJson("page"),
  "$3",
  noteReleases("shown_page", "$7", "$8"),
);

/** `$1` organizations, `$2` the release, `$3` the account, `$4` now. */
export const releaseDetail = `
  WITH seen AS MATERIALIZED (SELECT r.* FROM release r WHERE r.id = $2 AND ${maySeeRelease("r")}),
  noted AS (${noteReleases("seen", "$3", "$4")})
  SELECT ${releaseJson("seen")}::text AS body, seen.revision FROM seen`;

/** The dealer's, held until the transaction ends: `$1` organizations, `$2` those of them that deal, `$3` the release. */
export const releaseToLock = `
  SELECT r.state::text AS state, r.revision, r.vehicle_id AS "vehicleId", r.buyer_id AS "buyerId",
    r.dealer_id AS "dealerId" FROM release r
  WHERE r.id = $3::uuid AND r.dealer_id = ANY($2::uuid[]) AND NOT ${mustBeBlind("r.vehicle_id")} FOR UPDATE OF r`;
