/** `$1` the organization. */
export const dealer = "SELECT id, name FROM organization WHERE id = $1 AND kind = 'dealer'";

/**
 * Another text as soon as there is another comparison, another count, or another end of a dispute: the first two are added and
 * counted, never changed, and what was upheld stays so.
 */
export const stateOfCounts = `SELECT concat_ws(' ', count(*), count(statement_counts), max(id::text),
  (SELECT count(*) FROM release WHERE upheld_at IS NOT NULL)) AS state FROM comparison`;

/**
 * Every car a dealer stated and somebody inspected, with what became of the statement: of its latest inspection, against the
 * statement that inspection was ordered on, by the newest engine. Other pairs that somebody had compared do not count, or
 * whoever compares could choose. Beside it what was upheld of that statement, in whichever comparison: the dealer accepted it, or the dispute ended so. In one order,
 * so that sums are the same to the last digit.
 */
export const inspectedCars = `WITH latest AS (
  SELECT DISTINCT ON (c.vehicle_id) v.organization_id AS dealer, c.vehicle_id AS car, c.a_id,
    c.id AS comparison, c.statement_counts AS counts
  FROM comparison c
    JOIN report_version a ON a.id = c.a_id AND a.kind = 'statement'
    JOIN report_version b ON b.id = c.b_id AND b.kind = 'inspection'
    JOIN inspection_order o ON o.id = b.order_id AND o.statement_id = a.id
    JOIN vehicle v ON v.id = c.vehicle_id
  ORDER BY c.vehicle_id, b.sealed_at DESC, b.number DESC, c.created_at DESC, c.id DESC),
accepted AS (
  SELECT c.a_id, json_agg(r.snapshot->'entry') AS entries
  FROM release r JOIN comparison c ON c.id = r.comparison_id WHERE r.upheld_at IS NOT NULL GROUP BY c.a_id)
SELECT latest.dealer, latest.car, latest.comparison, latest.counts, coalesce(accepted.entries, '[]') AS accepted
FROM latest LEFT JOIN accepted USING (a_id) ORDER BY latest.car`;
