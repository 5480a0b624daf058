import { notedRead, type NotedRead } from "../../platform/access/exposure.ts";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import { type NotingPart, pageStatement } from "../../platform/database/page.ts";
import { zoneOfVehicle } from "../sites/index.ts";

export const isParty = (release: string) =>
  `(${release}.buyer_id = ANY($1::uuid[]) OR ${release}.dealer_id = ANY($1::uuid[]))`;

/**
 * The buyer's and the dealer's, and the inspector's once asked about it; nobody's who must be blind to the car, for it shows what
 * was stated.
 */
export const maySeeRelease = (release: string) =>
  `((${isParty(release)} OR (${release}.inspector_id = ANY($1::uuid[]) AND ${release}.asked_at IS NOT NULL))
    AND NOT ${mustBeBlind(`${release}.vehicle_id`)})`;

/** What the inspector has no part in is between buyer and dealer. */
export const forInspector = `('contest', 'ask', 'stand', 'revise', 'look-again', 'uphold', 'clear', 'accept', 'withdraw', 'leave')`;

const thread = (
  release: string,
) => `coalesce((SELECT json_agg(json_build_object('at', instant(m.at), 'by', m.actor,
    'move', m.move, 'from', m.from_state, 'to', m.to_state, 'words', m.words, 'evidence', m.evidence, 'remedy', m.remedy)
    ORDER BY m.id)
  FROM settlement_move m WHERE m.release_id = ${release}.id AND (${isParty(release)} OR m.move IN ${forInspector})), '[]')`;

const seenAs = (release: string) => `CASE WHEN ${release}.buyer_id = ANY($1::uuid[]) THEN 'buyer'
    WHEN ${release}.dealer_id = ANY($1::uuid[]) THEN 'dealer' ELSE 'inspector' END`;

const showingReleases = (
  releases: string,
  [account, now]: [string, string],
  make: (part: NotingPart) => string,
): NotedRead =>
  notedRead(
    "release",
    `SELECT r.vehicle_id, NULL::uuid AS version_id, r.snapshot->'entry'->>'item' AS item,
       coalesce(r.snapshot->'entry'->>'position', '') AS position FROM ${releases} r`,
    { account, now },
    make,
  );

const releaseJson = (release: string) => `json_build_object(
  'id', ${release}.id, 'revision', ${release}.revision, 'as', ${seenAs(release)}, 'vehicle', ${release}.vehicle_id,
  'comparison', ${release}.comparison_id, 'entryIndex', ${release}.entry_index,
  'standsIn', CASE WHEN ${release}.buyer_id = ANY($1::uuid[]) THEN json_build_object(
    'comparison', ${release}.at_comparison_id, 'entryIndex', ${release}.at_entry_index) END,
  'entry', ${release}.snapshot->'entry', 'a', ${release}.snapshot->'a', 'b', ${release}.snapshot->'b',
  'looked', ${release}.looked, 'matter', ${release}.matter, 'deadline', instant(${release}.deadline),
  'zone', ${zoneOfVehicle(`${release}.vehicle_id`)},
  'thread', ${thread(release)}, 'state', ${release}.state, 'reason', ${release}.reason, 'releasedAt', instant(${release}.released_at),
  'answeredAt', instant(${release}.answered_at))`;

/** `$1` organizations, `$2` cursor, `$3` limit, then vehicle, comparison and state, each or null, `$7` the account, `$8` now. */
export const releaseList = showingReleases("shown_page", ["$7", "$8"], (part) =>
  pageStatement(
    `SELECT r.* FROM release r WHERE ${maySeeRelease("r")} AND r.id < $2
   AND ($4::uuid IS NULL OR r.vehicle_id = $4) AND ($5::uuid IS NULL OR r.at_comparison_id = $5)
   AND ($6::text IS NULL OR r.state = $6) ORDER BY r.id DESC LIMIT $3 + 1`,
    releaseJson("page"),
    "$3",
    part,
  ),
);

/** `$1` organizations, `$2` the release, `$3` the account, `$4` now. */
export const releaseDetail = showingReleases(
  "seen",
  ["$3", "$4"],
  ({ noted, column }) => `
  WITH seen AS MATERIALIZED (SELECT r.* FROM release r WHERE r.id = $2 AND ${maySeeRelease("r")}),
  noted AS (${noted})
  SELECT ${releaseJson("seen")}::text AS body, seen.revision, ${column} FROM seen`,
);
