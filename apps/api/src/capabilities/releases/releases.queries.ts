import { pageStatement } from "../../platform/database/page.ts";

const maySeeRelease = (release: string) =>
  `(${release}.buyer_id = ANY($1::uuid[]) OR ${release}.dealer_id = ANY($1::uuid[]))`;

const releaseJson = (release: string) => `json_build_object(
  'id', ${release}.id, 'revision', ${release}.revision, 'vehicle', ${release}.vehicle_id,
  'comparison', ${release}.comparison_id, 'entryIndex', ${release}.entry_index,
  'entry', ${release}.snapshot->'entry', 'a', ${release}.snapshot->'a', 'b', ${release}.snapshot->'b',
  'state', ${release}.state, 'reason', ${release}.reason, 'releasedAt', instant(${release}.released_at),
  'answeredAt', instant(${release}.answered_at))`;

/** `$1` organizations, `$2` cursor, `$3` limit, then vehicle, comparison and state, each or null. */
export const releaseList = pageStatement(
  `SELECT r.* FROM release r WHERE ${maySeeRelease("r")} AND r.id < $2
   AND ($4::uuid IS NULL OR r.vehicle_id = $4) AND ($5::uuid IS NULL OR r.comparison_id = $5)
   AND ($6::release_state IS NULL OR r.state = $6) ORDER BY r.id DESC LIMIT $3 + 1`,
  releaseJson("page"),
  "$3",
);

/** `$1` organizations, `$2` the release. */
export const releaseDetail = `SELECT ${releaseJson("r")}::text AS body, r.revision
  FROM release r WHERE r.id = $2 AND ${maySeeRelease("r")}`;
