import { live } from "./case-rows.ts";

/** Whose turn a visit in each live state is. */
const turn = `CASE state WHEN 'held' THEN 'buyer' WHEN 'accepted' THEN 'dealer' ELSE 'inspector' END`;

/** Whoever asks to be let in, firm or inspector. */
const applying = `SELECT f.organization_id AS id, o.name, f.decided_at AS since FROM firm_admission f
    JOIN organization o ON o.id = f.organization_id WHERE f.state = 'applied'
  UNION ALL SELECT i.id, i.name, i.created_at FROM inspector_calendar i WHERE i.admission = 'applied'`;

/** What waits for an operator, and who owes what: states and counts, never contents. `$1` now. */
export const operatorDesk = `
  WITH task AS MATERIALIZED (
    SELECT 'answer-complaint' AS kind, c.id, c.received_at AS since, c.state, NULL::text AS name
      FROM complaint c WHERE c.state <> 'answered'
    UNION ALL SELECT 'decide-admission', a.id, a.since, NULL, a.name FROM (${applying}) a),
  owed AS (SELECT state, ${turn} AS of, count(*) AS count, min(coalesce(deadline, starts_at)) AS until
    FROM appointment WHERE state IN (${live}) GROUP BY state),
  past AS (SELECT state, count(*) AS count FROM appointment
    WHERE state NOT IN (${live}) AND ends_at > $1::timestamptz - interval '30 days' AND requested_at IS NOT NULL GROUP BY state)
  SELECT json_build_object(
    'tasks', coalesce((SELECT json_agg(json_build_object('kind', kind, 'id', id, 'since', instant(since), 'state', state,
      'name', name) ORDER BY since, id) FROM (SELECT * FROM task ORDER BY since, id LIMIT 100) first), '[]'),
    'waiting', (SELECT count(*) FROM task),
    'owed', coalesce((SELECT json_agg(json_build_object('state', state, 'of', of, 'count', count, 'until', instant(until))
      ORDER BY until) FROM owed), '[]'),
    'rest', coalesce((SELECT json_agg(json_build_object('state', state, 'count', count) ORDER BY state) FROM past), '[]'))::text AS body`;
