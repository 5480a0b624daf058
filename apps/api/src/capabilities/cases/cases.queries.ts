import type { CaseParty } from "@evenhand/shared/http/cases";
import { siteOfVehicle } from "../sites/index.ts";
import { hasArrived, stillMoves } from "./carried.ts";
import { matterSources, readComparison } from "./case-matters.queries.ts";
import {
  caseCar,
  caseNames,
  isPublished,
  live,
  ofCase,
  openStates,
  seesAppointment,
  seesOrder,
} from "./case-rows.ts";
import { caseFacts, factSources } from "./facts.ts";
import { partOf } from "./of-part.ts";
import { caseParts } from "./parts.ts";

/** Open cases on the first page; of more the oldest. */
export const MOST_OPEN = 200;

const appointments = (by: CaseParty, condition: string) => `
  SELECT ac.vehicle_id, a.buyer_id FROM appointment a JOIN appointment_car ac ON ac.appointment_id = a.id
  WHERE ${seesAppointment[by]} AND ${condition}`;

/** On its way from the dealer: the few that are, by the index of those that live. */
const leaving = `SELECT h.vehicle_id, h.buyer_id FROM hand_over h
  WHERE h.dealer_id = ANY($2::uuid[]) AND h.state IN ('arranged', 'collected')`;

const ofDealer = (asked: string, released: string, decided: string, visited: string) => `
  ${leaving} UNION
  SELECT q.vehicle_id, q.buyer_id FROM question q WHERE q.dealer_id = ANY($2::uuid[]) AND q.asked_at IS NOT NULL
    AND q.state <> 'drafted' AND ${asked}
  UNION SELECT r.vehicle_id, r.buyer_id FROM release r WHERE r.dealer_id = ANY($2::uuid[]) AND ${released}
  UNION SELECT d.vehicle_id, d.buyer_id FROM decision d WHERE d.dealer_id = ANY($2::uuid[]) AND ${decided}
  UNION ${appointments("dealer", visited)}`;

const ofInspector = (ordered: string, visited: string) => `
  SELECT r.vehicle_id, r.buyer_id FROM release r WHERE r.inspector_id = ANY($2::uuid[]) AND r.state IN ('asked', 'revising')
  UNION
  SELECT io.vehicle_id, io.buyer_id FROM inspection_order io WHERE ${seesOrder.inspector} AND ${ordered}
  UNION ${appointments("inspector", visited)}`;

/** Cars and buyers of the cases this party knows of. */
const known = {
  dealer: ofDealer("true", "true", "true", "true"),
  inspector: ofInspector("true", "true"),
} as const;

/**
 * Those of them in which something may be open. It may name too many, which are then found to be at rest; never too few. A buyer's
 * is open until it is decided, and again when anything comes after that.
 */
const open = {
  dealer: ofDealer(
    `(q.state = 'asked' OR (q.state = 'answered' AND NOT ${isPublished}))`,
    `r.state IN (${openStates})`,
    "d.decision = 'counter' AND d.answer IS NULL AND d.ended IS NULL",
    `a.state IN (${live})`,
  ),
  inspector: ofInspector(
    `(io.state IN ('ordered', 'accepted')
      OR EXISTS (SELECT 1 FROM report r WHERE r.order_id = io.id AND r.drafting))`,
    `a.state IN (${live})`,
  ),
  buyer: `SELECT c.vehicle_id, c.buyer_id FROM buyer_case c WHERE c.buyer_id = ANY($2::uuid[]) AND NOT EXISTS (
    SELECT 1 FROM decision d WHERE ${ofCase("d")} AND (d.decision <> 'counter' OR d.answer = 'accept' OR d.reply = 'accept')
      AND (d.decision = 'decline' OR EXISTS (SELECT 1 FROM hand_over h WHERE h.case_id = c.id AND ${hasArrived("h")}))
      AND NOT EXISTS (SELECT 1 FROM hand_over h WHERE h.case_id = c.id AND ${stillMoves("h")})
      AND NOT EXISTS (SELECT 1 FROM question q WHERE ${ofCase("q")} AND (q.state IN ('drafted', 'asked')
        OR (q.state = 'answered' AND NOT ${isPublished})))
      AND NOT EXISTS (SELECT 1 FROM inspection_order io WHERE ${ofCase("io")} AND io.state IN ('ordered', 'accepted'))
      AND NOT EXISTS (${appointments("buyer", `ac.vehicle_id = c.vehicle_id AND a.buyer_id = c.buyer_id AND a.state IN (${live})`)})
      AND NOT EXISTS (SELECT 1 FROM release r WHERE ${ofCase("r")} AND r.state IN (${openStates}))
      AND NOT EXISTS (SELECT 1 FROM summary s WHERE ${ofCase("s")} AND s.created_at > d.decided_at)
      AND NOT EXISTS (SELECT 1 FROM report_version rv WHERE rv.vehicle_id = c.vehicle_id AND rv.buyer_id = c.buyer_id
        AND rv.sealed_at > d.decided_at))`,
} as const;

/** Which rows of `buyer_case` are this party's to know of. */
const mine: Readonly<Record<CaseParty, string>> = {
  buyer: "c.buyer_id = ANY($2::uuid[])",
  dealer: `c.dealer_id = ANY($2::uuid[]) AND (c.vehicle_id, c.buyer_id) IN (${known.dealer})`,
  inspector: `(c.vehicle_id, c.buyer_id) IN (${known.inspector})`,
};

const rowJson = (by: CaseParty) => `json_build_object(${caseNames(by)}, 'facts', ${caseFacts(by)})`;
const sources = (by: CaseParty) => `JOIN vehicle v ON v.id = c.vehicle_id ${factSources(by)}`;

/** Nobody looks as an organization that is not theirs. */
const asOneOfOwn = "$2::uuid[] <@ $1::uuid[]";

/** Reports begun and not sealed on the first page; of more those worked on last. */
const MOST_DRAFTS = 50;

/** A dealer's own, of no order. */
const unsealed =
  "FROM report r WHERE $5 AND r.drafting AND r.order_id IS NULL AND r.organization_id = ANY($2::uuid[])";
const drafts = `coalesce((SELECT json_agg(json_build_object('id', r.id, 'kind', r.kind, 'car', ${caseCar},
    'version', (SELECT max(rv.number) FROM report_version rv WHERE rv.report_id = r.id), 'changedAt', instant(r.updated_at))
    ORDER BY r.updated_at DESC, r.id DESC)
  FROM (SELECT r.* ${unsealed} ORDER BY r.updated_at DESC, r.id DESC LIMIT ${MOST_DRAFTS}) r
  JOIN vehicle v ON v.id = r.vehicle_id), '[]')`;
const draftsOf = (by: CaseParty): string =>
  by === "dealer"
    ? `'drafts', ${drafts}, 'drafting', (SELECT count(*) ${unsealed})`
    : "'drafts', '[]'::json, 'drafting', 0";

/** `$3` cursor, `$4` limit, `$5` is it the first page: then every open case too, and how many there are. */
const homeOf = (by: CaseParty): string => `
  WITH open AS MATERIALIZED (SELECT DISTINCT one.vehicle_id, one.buyer_id FROM (${open[by]}) one),
  c AS MATERIALIZED (
    (SELECT c.*, true AS is_open FROM buyer_case c
      WHERE $5 AND ${asOneOfOwn} AND (c.vehicle_id, c.buyer_id) IN (SELECT * FROM open) ORDER BY c.id LIMIT ${MOST_OPEN})
    UNION ALL
    (SELECT c.*, false FROM buyer_case c WHERE ${mine[by]} AND c.id < $3
      AND (c.vehicle_id, c.buyer_id) NOT IN (SELECT * FROM open) ORDER BY c.id DESC LIMIT $4 + 1))
  SELECT json_build_object('open', (SELECT count(*) FROM open), ${draftsOf(by)},
    'items', coalesce(json_agg(json_build_object('open', c.is_open, 'row', ${rowJson(by)}) ORDER BY c.id DESC), '[]'))::text AS body
  FROM c ${sources(by)}`;

/** `$3` the case. */
const detailOf = (
  by: CaseParty,
): string => `SELECT json_build_object('row', ${rowJson(by)}, 'parts', ${caseParts(by)},
  'zone', (SELECT s.hours->>'zone' FROM site s WHERE s.id = ${siteOfVehicle("v")}),
  'dealerFirst', ${by === "buyer" ? "c.lays_at_seal_by IS NOT NULL" : "NULL"}, ${matterSources(by)})::text AS body
  FROM buyer_case c ${sources(by)} ${readComparison(by)} WHERE c.id = $3 AND ${mine[by]}`;

/** `$3` the case. */
const carOf = (by: CaseParty): string =>
  `SELECT c.vehicle_id AS vehicle, c.buyer_id AS buyer FROM buyer_case c WHERE c.id = $3 AND ${mine[by]} AND ${asOneOfOwn}`;

/** `$3` a part of a case. */
const partCasesOf = (by: CaseParty): string => `
  SELECT json_build_object('id', c.id, 'as', '${by}', 'car', ${caseCar}, 'openedAt', instant(c.opened_at)) AS item
  FROM buyer_case c JOIN vehicle v ON v.id = c.vehicle_id
  WHERE (c.vehicle_id, c.buyer_id) IN (${partOf[by]}) AND ${mine[by]} AND ${asOneOfOwn} ORDER BY c.id`;

const each = (make: (by: CaseParty) => string): Readonly<Record<CaseParty, string>> => ({
  buyer: make("buyer"),
  dealer: make("dealer"),
  inspector: make("inspector"),
});

/** One statement for each kind of people: `$1` all organizations of the person, `$2` those of that kind. */
export const caseHomes = each(homeOf);
export const caseDetails = each(detailOf);
export const carOfCase = each(carOf);
export const partCases = each(partCasesOf);
