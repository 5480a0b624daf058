import { noteShown } from "../../platform/access/exposure.ts";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import { pageStatement } from "../../platform/database/page.ts";

const money = (price: string) => `CASE WHEN ${price}_minor IS NOT NULL
  THEN json_build_object('minor', ${price}_minor, 'currency', ${price}_currency) END`;

const offerBack = (row: string) => `CASE WHEN ${row}.answer = 'counter' THEN json_build_object(
  'price', ${money(`${row}.back_price`)}, 'conditions', ${row}.back_conditions, 'until', instant(${row}.back_until)) END`;

/** JSON of a decision for the person in `$1`: the dealer gets neither the summary nor what the buyer acknowledged. */
const decisionJson = (row: string) => `json_build_object(
  'id', ${row}.id, 'revision', ${row}.revision, 'vehicle', ${row}.vehicle_id,
  'summary', CASE WHEN ${row}.buyer_id = ANY($1::uuid[]) THEN ${row}.summary_id END,
  'decision', ${row}.decision, 'hash', ${row}.hash,
  'acknowledgements', CASE WHEN ${row}.buyer_id = ANY($1::uuid[]) THEN ${row}.acknowledgements ELSE '[]'::jsonb END,
  'price', ${money(`${row}.price`)}, 'conditions', ${row}.conditions, 'until', instant(${row}.stands_until), 'decidedAt', instant(${row}.decided_at),
  'answer', CASE WHEN ${row}.answer IS NOT NULL THEN json_build_object('answer', ${row}.answer,
    'note', ${row}.answer_note, 'answeredAt', instant(${row}.answered_at), 'offer', ${offerBack(row)}) END,
  'reply', CASE WHEN ${row}.reply IS NOT NULL THEN json_build_object('reply', ${row}.reply, 'repliedAt', instant(${row}.replied_at)) END,
  'ended', CASE WHEN ${row}.ended IS NOT NULL THEN json_build_object('how', ${row}.ended, 'at', instant(${row}.ended_at)) END)`;

/** What was agreed rests on what was stated: nobody's who must be blind to the car. */
const maySeeDecision = (row: string) =>
  `((${row}.buyer_id = ANY($1::uuid[]) OR ${row}.dealer_id = ANY($1::uuid[]))
    AND NOT ${mustBeBlind(`${row}.vehicle_id`)})`;
const maySeeSummary = (row: string) =>
  `(${row}.buyer_id = ANY($1::uuid[]) AND NOT ${mustBeBlind(`${row}.vehicle_id`)})`;

/** `$1` organizations, `$2` cursor, `$3` limit, `$4` vehicle or null. */
export const decisionList = pageStatement(
  `SELECT d.* FROM decision d WHERE ${maySeeDecision("d")} AND d.id < $2 AND ($4::uuid IS NULL OR d.vehicle_id = $4)
   ORDER BY d.id DESC LIMIT $3 + 1`,
  decisionJson("page"),
  "$3",
);

/** `$1` organizations, `$2` the decision. */
export const decisionDetail = `SELECT ${decisionJson("d")}::text AS body, d.revision
  FROM decision d WHERE d.id = $2 AND ${maySeeDecision("d")}`;

/** `$1` organizations, `$2` cursor, `$3` limit, `$4` comparison or null, `$5` vehicle or null. */
export const summaryList = pageStatement(
  `SELECT s.id, s.comparison_id, s.vehicle_id, s.hash, s.created_at, d.decision
   FROM summary s LEFT JOIN decision d ON d.summary_id = s.id
   WHERE ${maySeeSummary("s")} AND s.id < $2 AND ($4::uuid IS NULL OR s.comparison_id = $4)
     AND ($5::uuid IS NULL OR s.vehicle_id = $5) ORDER BY s.id DESC LIMIT $3 + 1`,
  `json_build_object('id', page.id, 'comparison', page.comparison_id, 'vehicle', page.vehicle_id, 'hash', page.hash,
    'createdAt', instant(page.created_at), 'decision', page.decision)`,
  "$3",
);

/** `$1` organizations, `$2` the summary, `$3` the account, `$4` now. It shows what was stated, which is noted in the same breath. */
export const summaryDocument = `
  WITH seen AS MATERIALIZED (SELECT s.* FROM summary s WHERE s.id = $2 AND ${maySeeSummary("s")}),
  noted AS (${noteShown(
    "summary",
    `SELECT seen.vehicle_id, c.a_id AS version_id, '' AS item, '' AS position
     FROM seen JOIN comparison c ON c.id = seen.comparison_id`,
    { account: "$3", now: "$4" },
  )})
  SELECT document, hash FROM seen`;

/** The decision on a summary, as the buyer sees it: `$1` organizations, `$2` the summary. */
export const decisionOfSummary = `SELECT ${decisionJson("d")} AS decision FROM decision d
  WHERE d.summary_id = $2 AND d.buyer_id = ANY($1::uuid[])`;
