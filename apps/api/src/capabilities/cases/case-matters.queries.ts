import type { CaseParty } from "@evenhand/shared/http/cases";
import { maySeeComparison } from "../../platform/access/row-access.ts";
import { notBlind, ofCase, seesOrder } from "./case-rows.ts";

/** What lies before the dealer, and what approving answered for: between buyer and dealer, so that an inspector has none of it. */
const settled: Readonly<Record<CaseParty, string>> = {
  buyer: `'released', coalesce((SELECT json_agg(json_build_object('entry', r.at_entry_index, 'state', r.state, 'deadline', instant(r.deadline)))
      FROM release r WHERE r.at_comparison_id = read.id), '[]'),
    'answers', (SELECT CASE d.decision WHEN 'approve' THEN d.acknowledgements END
      FROM decision d JOIN summary s ON s.id = d.summary_id WHERE s.comparison_id = read.id
      ORDER BY d.decided_at DESC, d.id DESC LIMIT 1)`,
  inspector: `'released', '[]'::json, 'answers', NULL`,
  dealer: `'released', '[]'::json, 'answers', NULL`,
};

/** The newest inspection that may be read, compared: `read`, beside the case `c` and its car `v`. */
export const readComparison = (by: CaseParty): string =>
  by === "dealer"
    ? ""
    : `LEFT JOIN LATERAL (
  SELECT k.id, k.answer_hash FROM inspection_order io
    JOIN report_version b ON b.order_id = io.id AND b.kind = 'inspection'
    JOIN comparison k ON k.b_id = b.id AND k.a_id = io.statement_id
    JOIN report_version a ON a.id = k.a_id
  WHERE ${ofCase("io")} AND ${seesOrder[by]} AND ${maySeeComparison("a", "b", "v")}
  ORDER BY b.sealed_at DESC, b.number DESC, k.id DESC LIMIT 1) read ON true`;

/** What the matters of the case are put together from: of the answer read, or to a dealer of what was laid before them. */
export const matterSources = (by: CaseParty): string =>
  by === "dealer"
    ? `'read', NULL, 'laid', coalesce((SELECT json_agg(json_build_object('comparison', r.at_comparison_id,
    'entry', r.at_entry_index, 'state', r.state, 'deadline', instant(r.deadline), 'matter', r.matter) ORDER BY r.id)
  FROM release r WHERE ${ofCase("r")} AND r.dealer_id = ANY($2::uuid[]) AND ${notBlind}), '[]')`
    : `'read', CASE WHEN read.id IS NOT NULL THEN json_build_object('comparison', read.id,
    'answerHash', read.answer_hash, ${settled[by]}) END, 'laid', '[]'::json`;
