/** `$1` the organization. */
export const dealer = "SELECT id, name FROM organization WHERE id = $1 AND kind = 'dealer'";

/** Another text as soon as there is another comparison or another count: they are added and counted, never changed. */
export const stateOfCounts =
  "SELECT concat_ws(' ', count(*), count(held_up_counts), max(id::text)) AS state FROM comparison";

/**
 * Every car a dealer stated and somebody inspected, with what became of the statement: of its latest inspection, against the
 * statement that inspection was ordered on, by the newest engine. Other pairs that somebody had compared do not count, or
 * whoever compares could choose.
 */
export const inspectedCars = `SELECT DISTINCT ON (c.vehicle_id) v.organization_id AS dealer, c.vehicle_id AS car,
    c.id AS comparison, c.held_up_counts AS counts
  FROM comparison c
    JOIN report_version a ON a.id = c.a_id AND a.kind = 'statement'
    JOIN report_version b ON b.id = c.b_id AND b.kind = 'inspection'
    JOIN inspection_order o ON o.id = b.order_id AND o.statement_id = a.id
    JOIN vehicle v ON v.id = c.vehicle_id
  ORDER BY c.vehicle_id, b.sealed_at DESC, b.number DESC, c.created_at DESC, c.id DESC`;
