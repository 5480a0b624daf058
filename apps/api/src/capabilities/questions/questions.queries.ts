import { notedRead, type NotedRead } from "../../platform/access/exposure.ts";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import { type NotingPart, pageStatement } from "../../platform/database/page.ts";

const isAsked = (q: string) => `${q}.state <> 'drafted' AND ${q}.asked_at IS NOT NULL`;
/** The buyer's own; the dealer's once asked; nobody's who must be blind to the car, for an answer is a claim. */
const maySee = (q: string) =>
  `((${q}.buyer_id = ANY($1::uuid[]) OR (${q}.dealer_id = ANY($1::uuid[]) AND ${isAsked(q)}))
    AND NOT ${mustBeBlind(`${q}.vehicle_id`)})`;

const showingAnswers = (
  questions: string,
  [account, now]: [string, string],
  make: (part: NotingPart) => string,
): NotedRead =>
  notedRead(
    "question",
    `SELECT q.vehicle_id, NULL::uuid AS version_id, q.item, q.position FROM ${questions} q WHERE q.state = 'answered'`,
    { account, now },
    make,
  );

/** The sealed version that first says the answer. */
const version = (q: string) => `SELECT rv.id, rv.number, rv.document FROM report_version rv
  WHERE rv.report_id = ${q}.report_id AND rv.number = ${q}.version`;
const isPublished = (q: string) => `(${q}.state = 'answered' AND EXISTS (${version(q)}))`;

/** From the sealed document where there is one; before that from the draft, and to the dealer alone. */
const finding = (q: string) => `CASE WHEN ${isPublished(q)} THEN (
    SELECT f.value FROM (${version(q)}) sealed,
      json_array_elements(convert_from(sealed.document, 'UTF8')::json->'findings') f
    WHERE f.value->>'item' = ${q}.item AND coalesce(f.value->>'position', '') = ${q}.position LIMIT 1)
  WHEN ${q}.state = 'answered' AND ${q}.dealer_id = ANY($1::uuid[]) THEN (
    SELECT rf.body::json FROM report_finding rf
    WHERE rf.report_id = ${q}.report_id AND rf.item = ${q}.item AND rf.position = ${q}.position) END`;

const questionJson = (
  q: string,
) => `json_build_object('id', ${q}.id, 'revision', ${q}.revision, 'vehicle', ${q}.vehicle_id,
  'item', ${q}.item, 'position', ${q}.position, 'text', ${q}.text,
  'state', CASE WHEN ${isPublished(q)} THEN 'published' ELSE ${q}.state END,
  'createdAt', instant(${q}.created_at), 'askedAt', instant(${q}.asked_at), 'answeredAt', instant(${q}.answered_at),
  'finding', ${finding(q)},
  'statement', (SELECT json_build_object('id', sealed.id, 'version', sealed.number) FROM (${version(q)}) sealed
    WHERE ${q}.state = 'answered'))`;

/** `$1` organizations, `$2` cursor, `$3` limit, then vehicle and state, each or null, `$6` the account, `$7` now. */
export const questionList = showingAnswers("shown_page", ["$6", "$7"], (part) =>
  pageStatement(
    `SELECT q.* FROM question q WHERE ${maySee("q")} AND q.id < $2 AND ($4::uuid IS NULL OR q.vehicle_id = $4)
   AND ($5::text IS NULL OR (CASE WHEN ${isPublished("q")} THEN 'published' ELSE q.state END) = $5)
   ORDER BY q.id DESC LIMIT $3 + 1`,
    questionJson("page"),
    "$3",
    part,
  ),
);

/** `$1` organizations, `$2` the question, `$3` the account, `$4` now. */
export const questionDetail = showingAnswers(
  "seen",
  ["$3", "$4"],
  ({ noted, column }) => `
  WITH seen AS MATERIALIZED (SELECT q.* FROM question q WHERE q.id = $2 AND ${maySee("q")}),
  noted AS (${noted})
  SELECT ${questionJson("seen")}::text AS body, seen.revision, ${column} FROM seen`,
);
