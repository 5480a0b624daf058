/** `$1` the firm. */
export const newestTable = `SELECT hash, document, instant(made_at) AS "madeAt" FROM history_table
  WHERE organization_id = $1::uuid ORDER BY id DESC LIMIT 1`;

/**
 * Comparisons with an inspection, by another house, that were not read out yet: `$1` how many at most. Whom it was read against is a dealer, or the
 * inspector of the other report.
 */
export const unread = `
  SELECT c.id, c.document, b.document AS inspection, b.report_id AS "reportId", b.number, b.organization_id AS firm,
    b.sealed_by AS inspector, CASE WHEN a.kind = 'inspection' THEN a.sealed_by ELSE a.organization_id END AS against
  FROM comparison c JOIN report_version a ON a.id = c.a_id JOIN report_version b ON b.id = c.b_id
  WHERE b.kind = 'inspection' AND a.kind IN ('statement', 'inspection') AND a.organization_id <> b.organization_id
    AND NOT EXISTS (SELECT 1 FROM past_pair p WHERE p.comparison_id = c.id)
  ORDER BY c.id LIMIT $1`;

/** One row a report and whom it was read against: of its first version, which was made before anybody answered it. */
export const pastPairs = `
  SELECT DISTINCT ON (report_id, against_id) organization_id AS firm, inspector_id AS inspector, against_id AS against,
    readings
  FROM past_pair ORDER BY report_id, against_id, number, comparison_id`;

/** Firms that have a table, with the hash of the newest. */
export const newestHashes = `SELECT DISTINCT ON (organization_id) organization_id AS firm, hash FROM history_table
  ORDER BY organization_id, id DESC`;
