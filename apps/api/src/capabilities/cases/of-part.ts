import type { CaseParty } from "@evenhand/shared/http/cases";
import { seesAppointment, seesOrder } from "./case-rows.ts";

const appointments = (by: CaseParty) => `
  SELECT ac.vehicle_id, a.buyer_id FROM appointment a JOIN appointment_car ac ON ac.appointment_id = a.id
  WHERE a.id = $3 AND ${seesAppointment[by]}`;

const inspections = `
  SELECT rv.vehicle_id, rv.buyer_id FROM report_version rv WHERE rv.id = $3
  UNION ALL SELECT k.vehicle_id, b.buyer_id FROM comparison k JOIN report_version b ON b.id = k.b_id WHERE k.id = $3`;

const orders = (by: CaseParty) => `
  SELECT io.vehicle_id, io.buyer_id FROM inspection_order io WHERE io.id = $3 AND ${seesOrder[by]}`;

const ofRow = (table: string, condition = "true") =>
  `SELECT one.vehicle_id, one.buyer_id FROM ${table} one WHERE one.id = $3 AND ${condition}`;
const asked = "one.state <> 'drafted' AND one.asked_at IS NOT NULL";

/**
 * Car and buyer of what `$3` names, whatever it is, of the kinds that this party has pages of. Whose it is, is asked of the case.
 */
export const partOf: Readonly<Record<CaseParty, string>> = {
  buyer: [
    ofRow("question"),
    ofRow("release"),
    ofRow("summary"),
    ofRow("decision"),
    orders("buyer"),
    inspections,
    appointments("buyer"),
  ].join(" UNION ALL "),
  dealer: [ofRow("question", asked), ofRow("release"), ofRow("decision"), appointments("dealer")].join(
    " UNION ALL ",
  ),
  inspector: [orders("inspector"), inspections, appointments("inspector")].join(" UNION ALL "),
};
