/**
 * The decision by which the car of a case is bought, `NULL` while it is not; SQL over `c`, a row of `buyer_case`. It is the case's
 * last decision: an approval, or a price that the other side took. One that was withdrawn or has lapsed buys nothing, nor does an
 * earlier one that a later one replaced. A car that a carrier has collected stays bought, whatever is decided afterwards: by the
 * decision it was collected on.
 */
export const bought = `coalesce(
  (SELECT d.id FROM decision d WHERE d.id = (
      SELECT last.id FROM decision last WHERE last.vehicle_id = c.vehicle_id AND last.buyer_id = c.buyer_id
      ORDER BY last.decided_at DESC, last.id DESC LIMIT 1)
    AND (d.decision = 'approve'
      OR (d.decision = 'counter' AND d.ended IS NULL AND coalesce(d.reply, d.answer) = 'accept'))),
  (SELECT h.decision_id FROM hand_over h WHERE h.case_id = c.id AND h.state NOT IN ('arranged', 'called-off')
    ORDER BY h.id DESC LIMIT 1))`;
