import { LIVE_STATES } from "@evenhand/booking/appointment";
import { endOf } from "@evenhand/case/settlement";
import { SettlementState } from "@evenhand/shared/settlement";
import type { CaseParty } from "@evenhand/shared/http/cases";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import { literals } from "../../platform/database/literals.ts";

/**
 * What each party may know of a case, as SQL over `c`, a row of `buyer_case`. `$1` all organizations of the person, for blindness
 * asks for all of them; `$2` those of the one kind as which they look.
 */

export const live = literals(LIVE_STATES);

/** In which a line laid before the dealer is not settled yet. */
export const openStates = literals(SettlementState.options.filter((state) => endOf(state) === null));

/** Of this case: its buyer's, of its car. */
export const ofCase = (row: string): string =>
  `${row}.vehicle_id = c.vehicle_id AND ${row}.buyer_id = c.buyer_id`;

/** Nothing a statement says, and nothing that rests on it. */
export const notBlind = `NOT ${mustBeBlind("c.vehicle_id")}`;

/** The buyer's own; the inspector's once asked for, the dealer's once the inspector has accepted. */
export const seesAppointment: Readonly<Record<CaseParty, string>> = {
  buyer: "true",
  inspector: "a.firm_id = ANY($2::uuid[]) AND a.requested_at IS NOT NULL",
  dealer: "a.dealer_id = ANY($2::uuid[]) AND a.declared_at IS NOT NULL",
};

/** A dealer learns of a visit by its hour. */
export const seesOrder: Readonly<Record<CaseParty, string>> = {
  buyer: "true",
  inspector: "io.inspector_id = ANY($2::uuid[])",
  dealer: "false",
};

export const isPublished = `EXISTS (
  SELECT 1 FROM report_version said WHERE said.report_id = q.report_id AND said.number = q.version)`;

export const seesQuestion: Readonly<Record<CaseParty, string>> = {
  buyer: notBlind,
  inspector: "false",
  dealer: `q.state <> 'drafted' AND q.asked_at IS NOT NULL AND ${notBlind}`,
};

export const decisionState = `CASE d.decision WHEN 'approve' THEN 'approved' WHEN 'decline' THEN 'declined' ELSE
  CASE WHEN d.ended IS NOT NULL THEN 'counter-' || d.ended
    WHEN coalesce(d.reply, d.answer) = 'accept' THEN 'counter-accepted'
    WHEN coalesce(d.reply, d.answer) = 'refuse' THEN 'counter-refused'
    WHEN d.answer = 'counter' THEN 'countered-back' ELSE 'countered' END END`;

/** Until when the offer of `d` stands that waits for an answer. */
export const offerUntil = "CASE WHEN d.answer = 'counter' THEN d.back_until ELSE d.stands_until END";

const named = (column: string) =>
  `(SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = ${column})`;

/** To the inspector once an order or an hour of the firm's is accepted, to the dealer never. */
const buyer: Readonly<Record<CaseParty, string>> = {
  buyer: named("c.buyer_id"),
  inspector: `CASE WHEN EXISTS (SELECT 1 FROM inspection_order io WHERE ${ofCase("io")} AND ${seesOrder.inspector}
      AND io.accepted_at IS NOT NULL)
    OR EXISTS (SELECT 1 FROM appointment a JOIN appointment_car ac ON ac.appointment_id = a.id
      WHERE ac.vehicle_id = c.vehicle_id AND a.buyer_id = c.buyer_id AND ${seesAppointment.inspector}
        AND a.declared_at IS NOT NULL)
    THEN ${named("c.buyer_id")} END`,
  dealer: "NULL",
};

/** `v` is the car. */
export const caseCar = `json_build_object('id', v.id, 'make', v.make, 'model', v.model, 'modelYear', v.model_year,
    'identification', v.identification)`;

/** The names of a case; `v` is its car. */
export const caseNames = (by: CaseParty): string => `'id', c.id, 'as', '${by}',
  'car', ${caseCar}, 'cover', ${by === "inspector" ? "NULL" : "v.cover_id"},
  'dealer', ${named("c.dealer_id")}, 'buyer', ${buyer[by]}, 'openedAt', instant(c.opened_at)`;

/** The draft of an order's report: its inspector's alone. */
const draft = (order: string, by: CaseParty) =>
  by === "inspector"
    ? `(SELECT r.id FROM report r WHERE r.order_id = ${order} AND r.drafting AND r.organization_id = ANY($2::uuid[]))`
    : "NULL::uuid";
const report = (order: string, by: CaseParty) =>
  by === "inspector"
    ? `(SELECT r.id FROM report r WHERE r.order_id = ${order} AND r.organization_id = ANY($2::uuid[]))`
    : "NULL::uuid";

const hours = (by: CaseParty) => `
  SELECT a.id AS appointment, ac.order_id AS "order", a.state, a.starts_at, a.ends_at, a.deadline, a.created_at AS asked_at,
    (SELECT s.hours->>'zone' FROM site s WHERE s.id = a.site_id) AS zone,
    (SELECT i.name FROM inspector_calendar i WHERE i.id = a.inspector_id) AS inspector,
    ${draft("ac.order_id", by)} AS draft, ${report("ac.order_id", by)} AS report,
    ${by === "dealer" ? "false" : "ac.proposed IS NOT NULL"} AS proposed
  FROM appointment_car ac JOIN appointment a ON a.id = ac.appointment_id
  WHERE ac.vehicle_id = c.vehicle_id AND a.buyer_id = c.buyer_id AND ${seesAppointment[by]}`;

/** An order whose hour is gone still stands where findings were begun; one that ended with its hour is that visit. */
const withoutHour = (by: CaseParty) => `
  SELECT NULL::uuid, io.id, CASE io.state WHEN 'ordered' THEN 'asked-for' WHEN 'accepted' THEN 'taken-on' ELSE io.state::text END,
    NULL, NULL, NULL, io.ordered_at, NULL, (SELECT o.name FROM organization o WHERE o.id = io.inspector_id),
    ${draft("io.id", by)}, ${report("io.id", by)}, false
  FROM inspection_order io WHERE ${ofCase("io")} AND ${seesOrder[by]} AND NOT EXISTS (
    SELECT 1 FROM appointment_car ac JOIN appointment a ON a.id = ac.appointment_id
    WHERE ac.order_id = io.id AND (a.state IN (${live}, 'reported') OR io.state IN ('declined', 'cancelled')))`;

/** Visits with an hour and without, one kind of row. */
export const visitRows = (by: CaseParty): string =>
  by === "dealer" ? hours(by) : `${hours(by)} UNION ALL ${withoutHour(by)}`;
