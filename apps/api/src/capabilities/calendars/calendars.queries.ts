import { pageStatement } from "../../platform/database/page.ts";

const interests = (calendar: string) => `coalesce((
  SELECT json_agg(json_build_object('id', i.id, 'kind', i.kind, 'dealer', i.dealer_id, 'dealerName', d.name, 'holder', i.holder,
    'since', instant(i.since), 'endedAt', instant(i.ended_at), 'note', i.note) ORDER BY i.id)
  FROM inspector_interest i JOIN organization d ON d.id = i.dealer_id WHERE i.calendar_id = ${calendar}.id), '[]')`;

const dealings = (calendar: string) => `coalesce((
  SELECT json_agg(json_build_object('id', d.id, 'vehicle', d.vehicle_id, 'dealing', d.dealing, 'note', d.note) ORDER BY d.id)
  FROM inspector_dealing d WHERE d.calendar_id = ${calendar}.id), '[]')`;

const calendarJson = (c: string) => `json_build_object(
  'id', ${c}.id, 'revision', ${c}.revision,
  'firm', (SELECT json_build_object('id', o.id, 'name', o.name) FROM organization o WHERE o.id = ${c}.organization_id),
  'name', ${c}.name, 'account', ${c}.account_id, 'accepting', ${c}.accepting, 'admission', ${c}.admission,
  'hours', ${c}.hours, 'base', json_build_object('latitude', ${c}.latitude, 'longitude', ${c}.longitude),
  'radius', ${c}.radius, 'speed', ${c}.speed, 'notice', ${c}.notice,
  'fees', json_build_object('currency', ${c}.currency, 'perVisit', ${c}.per_visit, 'perExtraCar', ${c}.per_extra_car,
    'perMile', ${c}.per_mile),
  'skills', ${c}.skills, 'interests', ${interests(c)}, 'dealings', ${dealings(c)})`;

/** `$1` organizations, `$2` is the person an operator, `$3` cursor, `$4` limit. */
export const calendarList = pageStatement(
  `SELECT c.* FROM inspector_calendar c WHERE (c.organization_id = ANY($1::uuid[]) OR $2) AND c.id < $3
   ORDER BY c.id DESC LIMIT $4 + 1`,
  calendarJson("page"),
  "$4",
);

/** `$1` organizations, `$2` is the person an operator, `$3` the calendar. */
export const calendarDetail = `SELECT ${calendarJson("c")}::text AS body, c.revision FROM inspector_calendar c
  WHERE c.id = $3 AND (c.organization_id = ANY($1::uuid[]) OR $2)`;
