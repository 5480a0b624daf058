import { LIVE_STATES } from "@evenhand/booking/appointment";
import { Money } from "@evenhand/shared/identifier";
import { z } from "zod";
import { mustBeBlind } from "../../platform/access/row-access.ts";
import { literals } from "../../platform/database/literals.ts";

const Visit = z.object({ minor: z.number(), currency: z.string(), cars: z.number() });

/** What the record has on a case's money, as its buyer may know it. */
export const CaseMoney = z.object({
  asking: Money.nullable(),
  /** The newest price offered by either, that was not turned down and has not lapsed. */
  offer: z
    .object({ amount: Money, agreed: z.boolean(), by: z.enum(["buyer", "dealer"]), at: z.string() })
    .nullable(),
  comparison: z.string().nullable(),
  visits: z.array(Visit),
});
export type CaseMoney = z.infer<typeof CaseMoney>;
export const CaseMoneyRow = z.object({ money: CaseMoney });

export const ofCase = (row: string): string =>
  `${row}.vehicle_id = c.vehicle_id AND ${row}.buyer_id = c.buyer_id`;
const notBlind = `NOT ${mustBeBlind("c.vehicle_id")}`;
const money = (minor: string, currency: string): string =>
  `CASE WHEN ${minor} IS NOT NULL THEN json_build_object('minor', ${minor}, 'currency', ${currency}) END`;

const offer = `(SELECT json_build_object(
    'amount', CASE WHEN d.back_price_minor IS NOT NULL THEN ${money("d.back_price_minor", "d.back_price_currency")}
      ELSE ${money("d.price_minor", "d.price_currency")} END,
    'agreed', coalesce(d.reply, d.answer) IS NOT DISTINCT FROM 'accept', 'by', CASE WHEN d.answer = 'counter' THEN 'dealer' ELSE 'buyer' END,
    'at', instant(coalesce(d.replied_at, d.answered_at, d.decided_at)))
  FROM decision d WHERE ${ofCase("d")} AND d.decision = 'counter' AND d.ended IS NULL
    AND coalesce(d.back_price_minor, d.price_minor) IS NOT NULL
    AND coalesce(d.reply, d.answer) IS DISTINCT FROM 'refuse' AND ${notBlind} ORDER BY d.decided_at DESC LIMIT 1)`;

/** Of the newest sealed inspection, against the statement it was ordered on. */
export const comparison = `(SELECT k.id FROM inspection_order io
    JOIN report_version rv ON rv.order_id = io.id AND rv.kind = 'inspection'
    JOIN comparison k ON k.b_id = rv.id AND k.a_id = io.statement_id
  WHERE ${ofCase("io")} AND ${notBlind} ORDER BY rv.sealed_at DESC, k.id DESC LIMIT 1)`;

/** What the buyer pays for a visit that was asked for: as settled where it has ended, else as booked. */
const live = literals(LIVE_STATES);
const visits = `coalesce((SELECT json_agg(json_build_object(
    'minor', coalesce((a.settlement->>'buyerPays')::bigint, (a.cost->>'total')::bigint),
    'currency', a.cost->>'currency',
    'cars', (SELECT count(*) FROM appointment_car other WHERE other.appointment_id = a.id)))
  FROM appointment a JOIN appointment_car ac ON ac.appointment_id = a.id
  WHERE ac.vehicle_id = c.vehicle_id AND a.buyer_id = c.buyer_id AND a.requested_at IS NOT NULL
    AND (a.settlement IS NOT NULL OR a.state = 'reported' OR a.state IN (${live}))), '[]')`;

/** `$1` organizations, `$2` the case, which is the person's own. */
export const caseMoney = `SELECT json_build_object(
    'asking', CASE WHEN ${notBlind} THEN ${money("v.asking_minor", "v.asking_currency")} END,
    'offer', ${offer}, 'comparison', ${comparison}, 'visits', ${visits}) AS money
  FROM buyer_case c JOIN vehicle v ON v.id = c.vehicle_id WHERE c.id = $2::uuid`;
