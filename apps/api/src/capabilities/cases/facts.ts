import type { CaseParty } from "@evenhand/shared/http/cases";
import { carriedFacts, carriedSource } from "./carried.ts";
import {
  decisionState,
  isPublished,
  notBlind,
  ofCase,
  offerUntil,
  openStates,
  seesQuestion,
  visitRows,
} from "./case-rows.ts";

/** How many, and the oldest. */
const counted = (
  condition: string,
  first = "q.id",
) => `CASE WHEN bool_or(${condition}) THEN json_build_object(
  'count', count(*) FILTER (WHERE ${condition}), 'first', min(${first}::text) FILTER (WHERE ${condition})) END`;

const answered = (published: boolean) => `q.state = 'answered' AND ${published ? "" : "NOT "}${isPublished}`;

/** An answer that is not sealed yet waits in the dealer's own report, of which nobody else hears. */
const questions = (by: CaseParty) =>
  by === "inspector"
    ? `json_build_object('drafted', NULL, 'asked', NULL, 'answered', NULL, 'published', NULL)`
    : `(SELECT json_build_object('drafted', ${counted("q.state = 'drafted'")}, 'asked', ${counted("q.state = 'asked'")},
        'answered', ${counted(answered(false), by === "dealer" ? "q.report_id" : "q.id")},
        'published', ${counted(answered(true))})
      FROM question q WHERE ${ofCase("q")} AND ${seesQuestion[by]})`;

const visits = (by: CaseParty) => `coalesce((SELECT json_agg(json_build_object('state', one.state,
    'appointment', one.appointment, 'order', one."order", 'deadline', instant(one.deadline),
    'start', instant(one.starts_at), 'draft', one.draft, 'proposed', one.proposed))
  FROM (${visitRows(by)}) one), '[]')`;

/** The newest sealed inspection of the case against the statement it was ordered on. */
const newest = `LEFT JOIN LATERAL (
  SELECT k.id, k.b_id FROM inspection_order io
    JOIN report_version rv ON rv.order_id = io.id AND rv.kind = 'inspection'
    JOIN comparison k ON k.b_id = rv.id AND k.a_id = io.statement_id
  WHERE ${ofCase("io")} AND ${notBlind} ORDER BY rv.sealed_at DESC, k.id DESC LIMIT 1) newest ON true`;

/** The last decision, with the inspection it rests on. */
const decided = `LEFT JOIN LATERAL (
  SELECT d.id, d.decided_at, ${decisionState} AS state, ${offerUntil} AS until, k.b_id FROM decision d
    JOIN summary s ON s.id = d.summary_id JOIN comparison k ON k.id = s.comparison_id
  WHERE ${ofCase("d")} AND ${notBlind} ORDER BY d.decided_at DESC, d.id DESC LIMIT 1) decided ON true`;

const settled = (open: boolean) => `r.state ${open ? "" : "NOT "}IN (${openStates})`;

/** To the inspector what they are asked about. */
const settling = (
  by: CaseParty,
) => `coalesce((SELECT json_agg(json_build_object('state', one.state, 'count', one.count,
    'until', instant(one.until)) ORDER BY one.state)
  FROM (SELECT r.state, count(*) AS count, min(r.deadline) AS until FROM release r
    WHERE ${ofCase("r")} AND ${settled(true)} AND ${notBlind}
      ${by === "inspector" ? "AND r.inspector_id = ANY($2::uuid[]) AND r.state IN ('asked', 'revising')" : ""}
    GROUP BY r.state) one), '[]')`;
const ended = (
  by: CaseParty,
) => `(SELECT count(*) FROM release r JOIN comparison k ON k.id = r.at_comparison_id
  WHERE ${ofCase("r")} AND ${settled(false)} AND ${notBlind} ${by === "buyer" ? "AND k.b_id = newest.b_id" : ""})`;

/** Made since the last decision, of the newest inspection. */
const summary = `(SELECT s.id FROM summary s JOIN comparison k ON k.id = s.comparison_id
  WHERE ${ofCase("s")} AND k.b_id = newest.b_id AND s.created_at > coalesce(decided.decided_at, '-infinity')
  ORDER BY s.id DESC LIMIT 1)`;

const decision = (by: CaseParty) => `CASE WHEN decided.id IS NOT NULL THEN json_build_object('id', decided.id,
  'state', decided.state, 'until', instant(decided.until), 'inspection', ${by === "buyer" ? "decided.b_id" : "NULL"}) END`;

const briefed = `EXISTS (SELECT 1 FROM brief b WHERE ${ofCase("b")})`;

/** What the facts of `c` are joined from; inspectors have nothing of it. */
export const factSources = (by: CaseParty): string => {
  if (by === "inspector") return "";
  return `${by === "buyer" ? newest : ""} ${decided} ${carriedSource(by)}`;
};

/** JSON of `CaseFacts`: what this party may know, and nothing else. `v` is the car. */
export const caseFacts = (by: CaseParty): string => {
  const buys = by === "buyer";
  const inspects = by === "inspector";
  return `json_build_object('by', '${by}', 'vehicle', c.vehicle_id, 'listed', v.listed,
    'briefed', ${buys ? briefed : "false"}, 'questions', ${questions(by)}, 'visits', ${visits(by)},
    'comparison', ${buys ? "CASE WHEN newest.id IS NOT NULL THEN json_build_object('id', newest.id, 'inspection', newest.b_id) END" : "NULL"},
    'releases', json_build_object('open', ${settling(by)}, 'ended', ${inspects ? "0" : ended(by)}),
    'summary', ${buys ? summary : "NULL"}, 'decision', ${inspects ? "NULL" : decision(by)}, 'handOver', ${carriedFacts(by)})`;
};
