import { pageStatement } from "../../platform/database/page.ts";

/** Contents: to those who complained, and to the very operator who has opened it and said why. `$2` the person's account. */
const mayRead = (c: string) => `(${c}.organization_id = ANY($1::uuid[]) OR EXISTS (
  SELECT 1 FROM complaint_opening mine WHERE mine.complaint_id = ${c}.id AND mine.account_id = $2))`;
const contents = (c: string, value: string) => `CASE WHEN ${mayRead(c)} THEN ${value} END`;

const complaintJson = (
  c: string,
) => `json_build_object('id', ${c}.id, 'revision', ${c}.revision, 'state', ${c}.state,
  'from', ${contents(c, `(SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = ${c}.organization_id)`)},
  'about', ${contents(c, `json_build_object('kind', ${c}.about_kind, 'id', ${c}.about_id)`)},
  'text', ${contents(c, `${c}.text`)}, 'reply', ${contents(c, `${c}.reply`)},
  'receivedAt', instant(${c}.received_at), 'answeredAt', instant(${c}.answered_at),
  'openings', coalesce((SELECT json_agg(json_build_object('at', instant(o.at), 'by', a.name, 'reason', o.reason) ORDER BY o.at, o.id)
    FROM complaint_opening o JOIN account a ON a.id = o.account_id WHERE o.complaint_id = ${c}.id), '[]'))`;

/** `$1` organizations, `$2` account, `$3` is the person an operator, `$4` cursor, `$5` limit, `$6` state or null. */
export const complaintList = pageStatement(
  `SELECT c.* FROM complaint c WHERE (c.organization_id = ANY($1::uuid[]) OR $3) AND c.id < $4
   AND ($6::text IS NULL OR c.state = $6) ORDER BY c.id DESC LIMIT $5 + 1`,
  complaintJson("page"),
  "$5",
);

/** `$4` the complaint. */
export const complaintDetail = `SELECT ${complaintJson("c")}::text AS body, c.revision FROM complaint c
  WHERE c.id = $4 AND (c.organization_id = ANY($1::uuid[]) OR $3)`;

export const complaintCounts = `SELECT json_build_object(
    'counts', coalesce((SELECT json_agg(json_build_object('state', state, 'count', count) ORDER BY state)
      FROM (SELECT state, count(*) FROM complaint GROUP BY state) counted), '[]'),
    'oldestWaiting', (SELECT instant(min(received_at)) FROM complaint WHERE state <> 'answered'))::text AS body`;
