import { owedIn } from "@evenhand/case/owed-in";
import { SettlementState } from "@evenhand/shared/settlement";
import type { CaseParty } from "@evenhand/shared/http/cases";
import { maySeeComparison } from "../../platform/access/row-access.ts";
import { literals } from "../../platform/database/literals.ts";
import {
  decisionState,
  isPublished,
  notBlind,
  ofCase,
  seesOrder,
  seesQuestion,
  visitRows,
} from "./case-rows.ts";

function statesOf(party: CaseParty): SettlementState[] {
  return SettlementState.options.filter((state) => owedIn(state)?.of === party);
}

const MOST_QUESTIONS = 200;

const questions = (by: CaseParty) => `coalesce((SELECT json_agg(json_build_object('id', q.id, 'item', q.item,
    'position', q.position, 'text', q.text,
    'state', CASE WHEN q.state = 'answered' AND ${isPublished} THEN 'published' ELSE q.state END,
    'at', instant(coalesce(q.asked_at, q.created_at))) ORDER BY q.id DESC)
  FROM (SELECT * FROM question q WHERE ${ofCase("q")} AND ${seesQuestion[by]} ORDER BY q.id DESC LIMIT ${MOST_QUESTIONS}) q), '[]')`;

const visits = (by: CaseParty) => `coalesce((SELECT json_agg(json_build_object('appointment', one.appointment,
    'order', one."order", 'state', one.state, 'hour', CASE WHEN one.starts_at IS NOT NULL THEN json_build_object(
      'start', instant(one.starts_at), 'end', instant(one.ends_at), 'zone', one.zone) END,
    'until', instant(one.deadline), 'inspector', one.inspector, 'askedAt', instant(one.asked_at), 'report', one.report)
    ORDER BY one.asked_at DESC)
  FROM (${visitRows(by)}) one), '[]')`;

/** Sealed versions of one's own orders' reports, each with what came of comparing it, where that is one's to read. */
const inspections = (
  by: CaseParty,
) => `coalesce((SELECT json_agg(json_build_object('id', b.id, 'version', b.number,
    'sealedAt', instant(b.sealed_at), 'comparison', (
      SELECT k.id FROM comparison k JOIN report_version a ON a.id = k.a_id
      WHERE k.b_id = b.id AND k.a_id = io.statement_id AND ${maySeeComparison("a", "b", "v")} ORDER BY k.id DESC LIMIT 1))
    ORDER BY b.sealed_at DESC, b.number DESC)
  FROM inspection_order io JOIN report_version b ON b.order_id = io.id AND b.kind = 'inspection'
  WHERE ${ofCase("io")} AND ${seesOrder[by]}), '[]')`;

/** How many lines are with whom, and how many ended how. */
const countsOf = {
  waiting: statesOf("dealer"),
  withBuyer: statesOf("buyer"),
  withInspector: statesOf("inspector"),
  accepted: ["accepted"],
  findingStands: ["finding-stands"],
  statementStands: ["statement-stands"],
  settled: ["settled"],
  leftOpen: ["left-open"],
} as const;
const released = `(SELECT json_build_object(${Object.entries(countsOf)
  .map(([name, states]) => `'${name}', count(*) FILTER (WHERE r.state IN (${literals(states)}))`)
  .join(", ")}) FROM release r WHERE ${ofCase("r")} AND ${notBlind})`;
const noneReleased = `json_build_object(${Object.keys(countsOf)
  .map((name) => `'${name}', 0`)
  .join(", ")})`;

const summaries = `coalesce((SELECT json_agg(json_build_object('id', s.id, 'createdAt', instant(s.created_at),
    'decision', CASE WHEN d.id IS NOT NULL THEN ${decisionState} END) ORDER BY s.id DESC)
  FROM summary s LEFT JOIN decision d ON d.summary_id = s.id WHERE ${ofCase("s")} AND ${notBlind}), '[]')`;

const decisions = `coalesce((SELECT json_agg(json_build_object('id', d.id, 'state', ${decisionState},
    'at', instant(d.decided_at)) ORDER BY d.id DESC) FROM decision d WHERE ${ofCase("d")} AND ${notBlind}), '[]')`;

/** JSON of `CaseParts`, each as this party may know it. `v` is the car. */
export const caseParts = (by: CaseParty): string => {
  const inspects = by === "inspector";
  return `json_build_object('questions', ${inspects ? "'[]'::json" : questions(by)}, 'visits', ${visits(by)},
    'inspections', ${by === "dealer" ? "'[]'::json" : inspections(by)},
    'released', ${inspects ? noneReleased : released},
    'summaries', ${by === "buyer" ? summaries : "'[]'::json"},
    'decisions', ${inspects ? "'[]'::json" : decisions})`;
};
