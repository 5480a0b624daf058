import { pageStatement } from "../../platform/database/page.ts";

/** `$1` organizations, `$2` is the person an operator. The inspector once asked, the dealer once the inspector has accepted. */
const maySee = (a: string): string => `(${a}.buyer_id = ANY($1::uuid[]) OR $2
  OR (${a}.firm_id = ANY($1::uuid[]) AND ${a}.requested_at IS NOT NULL)
  OR (${a}.dealer_id = ANY($1::uuid[]) AND ${a}.declared_at IS NOT NULL))`;

const named = (column: string) =>
  `(SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = ${column})`;

/** The buyer's name: the buyer's own, and the inspector's once accepted. */
const buyer = (a: string) => `CASE WHEN ${a}.buyer_id = ANY($1::uuid[])
  OR (${a}.firm_id = ANY($1::uuid[]) AND ${a}.declared_at IS NOT NULL) THEN ${named(`${a}.buyer_id`)} END`;

const site = (a: string) => `(SELECT json_build_object('id', s.id, 'name', s.name, 'address', s.address,
  'place', json_build_object('latitude', s.latitude, 'longitude', s.longitude)) FROM site s WHERE s.id = ${a}.site_id)`;

const cars = (a: string) => `(SELECT json_agg(json_build_object('id', v.id, 'make', v.make, 'model', v.model,
    'modelYear', v.model_year, 'identification', v.identification) ORDER BY c.place)
  FROM appointment_car c JOIN vehicle v ON v.id = c.vehicle_id WHERE c.appointment_id = ${a}.id)`;

const rowFields = (a: string) => `'id', ${a}.id, 'revision', ${a}.revision, 'state', ${a}.state,
  'start', instant(${a}.starts_at), 'end', instant(${a}.ends_at),
  'zone', (SELECT s.hours->>'zone' FROM site s WHERE s.id = ${a}.site_id), 'deadline', instant(${a}.deadline),
  'site', ${site(a)}, 'dealer', ${named(`${a}.dealer_id`)}, 'buyer', ${buyer(a)},
  'inspector', (SELECT json_build_object('id', c.id, 'name', c.name, 'firm', ${named(`${a}.firm_id`)})
    FROM inspector_calendar c WHERE c.id = ${a}.inspector_id),
  'cars', ${cars(a)}`;

/** `$3` cursor, `$4` limit, then state, vehicle, from and until, each or null. */
export const appointmentList = pageStatement(
  `SELECT a.* FROM appointment a WHERE ${maySee("a")} AND a.id < $3 AND ($5::text IS NULL OR a.state = $5)
   AND ($6::uuid IS NULL OR EXISTS (SELECT 1 FROM appointment_car c WHERE c.appointment_id = a.id AND c.vehicle_id = $6))
   AND ($7::timestamptz IS NULL OR a.ends_at > $7) AND ($8::timestamptz IS NULL OR a.starts_at < $8)
   ORDER BY a.id DESC LIMIT $4 + 1`,
  `json_build_object(${rowFields("page")})`,
  "$4",
);

const visits = `(SELECT json_agg(json_build_object('vehicle', c.vehicle_id, 'order', c.order_id,
    'statement', (SELECT json_build_object('id', rv.id, 'version', rv.number) FROM inspection_order io
      JOIN report_version rv ON rv.id = io.statement_id WHERE io.id = c.order_id),
    'version', c.brief_version, 'items', c.brief, 'proposed', c.proposed) ORDER BY c.place)
  FROM appointment_car c WHERE c.appointment_id = a.id)`;

const bays = `coalesce((SELECT json_agg(json_build_object('car', b.vehicle_id,
    'bay', (SELECT json_build_object('id', bay.id, 'name', bay.name) FROM bay WHERE bay.id = b.bay_id),
    'start', instant(b.starts_at), 'end', instant(b.ends_at)) ORDER BY b.spell)
  FROM appointment_bay b WHERE b.appointment_id = a.id), '[]')`;

const history = `(SELECT json_agg(json_build_object('at', instant(m.at), 'actor', m.actor, 'move', m.move, 'to', m.state,
    'start', instant(m.starts_at), 'end', instant(m.ends_at), 'cause', m.cause, 'note', m.note) ORDER BY m.number)
  FROM appointment_move m WHERE m.appointment_id = a.id)`;

const payments = `coalesce((SELECT json_agg(json_build_object('id', p.id, 'kind', p.kind, 'party', p.party,
    'amount', json_build_object('minor', p.minor, 'currency', p.currency), 'at', instant(p.at))
    ORDER BY p.at, array_position(ARRAY['authorized', 'captured', 'released', 'refunded', 'claimed', 'paid-out'], p.kind), p.id)
  FROM payment_entry p WHERE p.appointment_id = a.id), '[]')`;

const interests = `coalesce((SELECT json_agg(json_build_object('id', i.id, 'kind', i.kind, 'dealer', i.dealer_id,
    'dealerName', d.name, 'holder', i.holder, 'since', instant(i.since), 'endedAt', instant(i.ended_at), 'note', i.note) ORDER BY i.id)
  FROM inspector_interest i JOIN organization d ON d.id = i.dealer_id JOIN inspector_calendar own ON own.id = i.calendar_id
  WHERE i.dealer_id = a.dealer_id
    AND (i.calendar_id = a.inspector_id OR (i.holder = 'firm' AND own.organization_id = a.firm_id))), '[]')`;

/** Everything of one appointment; what of it which party sees is decided by who they are. `$3` the appointment. */
export const appointmentDetail = `SELECT json_build_object(${rowFields("a")}, 'visits', ${visits}, 'bays', ${bays},
    'history', ${history}, 'payments', ${payments}, 'interests', ${interests}, 'plan', a.plan, 'travel', a.travel,
    'cost', a.cost, 'terms', a.terms, 'permissions', a.permissions, 'road', a.road, 'settlement', a.settlement,
    'heldFromSaleUntil', instant(a.held_from_sale_until), 'declaredAt', instant(a.declared_at),
    'requestedAt', instant(a.requested_at), 'paid', a.paid, 'carriedShare', a.carried_share, 'sequence', a.sequence,
    'parties', json_build_object('buyer', a.buyer_id, 'firm', a.firm_id, 'dealer', a.dealer_id)) AS body
  FROM appointment a WHERE a.id = $3 AND ${maySee("a")}`;

export const appointmentCounts = `SELECT json_build_object('counts', coalesce(json_agg(
    json_build_object('state', state, 'count', count) ORDER BY state), '[]'))::text AS body
  FROM (SELECT state, count(*) FROM appointment GROUP BY state) counted`;
