import { notBlind, ofCase } from "./case-rows.ts";

/** `$1` a comparison that may be read: its answer's hash, what of it lies before the dealer, and what approving it answered for. */
export const mattersSettled = `SELECT json_build_object('answerHash', k.answer_hash,
    'released', coalesce((SELECT json_agg(json_build_object('entry', r.entry_index, 'state', r.state))
      FROM release r WHERE r.comparison_id = k.id), '[]'),
    'answers', (SELECT CASE d.decision WHEN 'approve' THEN d.acknowledgements END
      FROM decision d JOIN summary s ON s.id = d.summary_id WHERE s.comparison_id = k.id
      ORDER BY d.decided_at DESC, d.id DESC LIMIT 1)) AS body
  FROM comparison k WHERE k.id = $1`;

/** `$1` all organizations of the person, `$2` those that deal, `$3` the case: what was laid before them in it. */
export const releasedOfCase = `SELECT coalesce(json_agg(json_build_object('comparison', r.comparison_id,
    'entry', r.entry_index, 'state', r.state, 'matter', r.matter) ORDER BY r.id), '[]') AS body
  FROM buyer_case c JOIN release r ON ${ofCase("r")}
  WHERE c.id = $3 AND r.dealer_id = ANY($2::uuid[]) AND ${notBlind}`;
