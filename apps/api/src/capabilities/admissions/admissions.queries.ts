import { pageStatement } from "../../platform/database/page.ts";

/** Firms and inspectors in one list. `$1` organizations, `$2` is the person an operator, `$3` cursor, `$4` limit, `$5` state or null. */
export const admissionList = pageStatement(
  `SELECT a.* FROM (
     SELECT o.id, coalesce(f.revision, 0) AS revision, 'firm' AS kind, o.name, o.id AS firm,
       coalesce(f.state, 'admitted') AS state, f.reason, o.created_at, f.decided_at
     FROM organization o LEFT JOIN firm_admission f ON f.organization_id = o.id WHERE o.kind = 'inspector'
     UNION ALL
     SELECT c.id, c.admission_revision, 'inspector', c.name, c.organization_id, c.admission, c.admission_reason,
       c.created_at, c.decided_at
     FROM inspector_calendar c) a
   WHERE (a.firm = ANY($1::uuid[]) OR $2) AND a.id < $3 AND ($5::text IS NULL OR a.state = $5)
   ORDER BY a.id DESC LIMIT $4 + 1`,
  `json_build_object('id', page.id, 'revision', page.revision, 'kind', page.kind, 'name', page.name,
    'firm', (SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = page.firm),
    'state', page.state, 'reason', page.reason, 'appliedAt', instant(page.created_at),
    'decidedAt', instant(page.decided_at))`,
  "$4",
);
