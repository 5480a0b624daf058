import { beforeMoneyLines } from "@evenhand/decision/before-money";
import { HandOverKind, isHandOverDiscrepancy } from "@evenhand/shared/hand-over";
import type { CaseParty } from "@evenhand/shared/http/cases";
import { literals } from "../../platform/database/literals.ts";

/** What a bought car waits for, as SQL over `c`, a row of `buyer_case`, and `decided`, its last decision. */

const lines = literals(beforeMoneyLines.flatMap((one) => (one.onlyWithMatters === true ? [] : [one.line])));
const kinds = literals(HandOverKind.options.filter((kind) => isHandOverDiscrepancy({ kind })));

/** Whether the car of `h` did not arrive as it left. */
const differs = (h: string): string => `EXISTS (
  SELECT 1 FROM jsonb_array_elements(${h}.comparison->'lines') line WHERE line->>'kind' IN (${kinds}))`;

/** Of `h`: somebody has yet to do something once the car has left. */
export const stillMoves = (h: string): string =>
  `(${h}.state IN ('collected', 'claim-open') OR (${h}.state = 'delivered' AND ${differs(h)}))`;

/** Of `h`: the car has arrived, and nobody has anything to do about it. */
export const hasArrived = (h: string): string =>
  `(${h}.state IN ('signed-off', 'claim-closed') OR (${h}.state = 'delivered' AND NOT ${differs(h)}))`;

/** To the dealer while the car is on its way; where it arrived, and how, is the buyer's. */
const stands: Readonly<Record<"buyer" | "dealer", string>> = {
  buyer: "h.state <> 'called-off'",
  dealer: "h.state IN ('arranged', 'collected')",
};

export const carriedSource = (by: "buyer" | "dealer"): string => `LEFT JOIN LATERAL (
  SELECT h.id, h.state, h.comparison, CASE WHEN h.state IN ('arranged', 'collected') THEN h.link_expires_at
      WHEN h.state = 'delivered' THEN (h.terms->'claimDeadline'->>'until')::timestamptz END AS until
  FROM hand_over h WHERE decided.id IS NOT NULL AND h.case_id = c.id AND ${stands[by]}
  ORDER BY h.id DESC LIMIT 1) carried ON true`;

const unanswered = `(SELECT count(*) FROM unnest(ARRAY[${lines}]) line WHERE NOT coalesce(
  (SELECT kept.document->'lines' FROM case_document_version kept WHERE kept.case_id = c.id AND kept.kind = 'before-money'
    ORDER BY kept.revision DESC LIMIT 1), '{}'::jsonb) ? line)`;

/** JSON of what `CaseFacts` says of it. */
export const carriedFacts = (by: CaseParty): string =>
  by === "inspector"
    ? "NULL"
    : `CASE WHEN carried.id IS NOT NULL OR decided.state IN ('approved', 'counter-accepted') THEN json_build_object(
    'case', c.id, 'unanswered', ${by === "buyer" ? unanswered : "0"},
    'carried', CASE WHEN carried.id IS NOT NULL THEN json_build_object('id', carried.id, 'state', carried.state,
      'until', ${by === "buyer" ? "instant(carried.until)" : "NULL"}, 'differs', ${differs("carried")}) END) END`;
